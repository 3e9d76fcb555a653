package io.github.formulationmath.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Which spellings are one substance, {@code formula} says and nobody else: outside it no code compares substances or names
 * by itself, but for the members that are listed here. What bytecode shows is asked of bytecode; type arguments, the receivers
 * of a comparison and the flags of a pattern, of the sources.
 */
@AnalyzeClasses(packages = Ladder.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
final class OneIdentityTest {

    private static final String UNNAMED = "without a name";

    private static final Set<String> CASE_OF_A_TEXT = Set.of(
            "toUpperCase",
            "toLowerCase",
            "equalsIgnoreCase",
            "compareToIgnoreCase",
            "regionMatches",
            "CASE_INSENSITIVE_ORDER");

    /** Members that change the case of words, and never of the name of a substance. */
    private static final Set<String> CHANGES_OF_CASE = Set.of(
            "document.Document.isRightToLeft", // a language
            "formula.SubstanceName.normalise", // here it is said
            "formula.SubstanceName.normaliseAny",
            "formula.SubstanceName.withoutAccents",
            "label.LabelName.isCapitals", // letters as a label prints them
            "label.LabelName.isSmall",
            "label.LabelName.printed",
            "label.LabelName.titled",
            "limit.ProductWords.term", // areas, kinds, forms, purposes, users
            "limit.ShortRules.kind", // max, min
            "quantity.ShareText$Basis.saidIn", // w/v and W/V
            "quantity.TypedText.plain", // figures and signs
            "quantity.UnitNames.plain",
            "soap.AlkaliGradeTable.grade", // titles of books
            "soap.AlkaliGradeTable.word", // two hydroxides, as a table spells them
            "soap.FatTable.folded", // titles of books
            "verification.Figure.inDigits");

    /** Patterns blind to case cannot be told from bytecode, where the flag is a number: by file, a piece of their text. */
    private static final Map<String, String> PATTERNS_BLIND_TO_CASE = Map.of(
            "label/LabelName.java", "nano",
            "limit/ShortRules.java", "max|min|declare above|warn above");

    private static final Pattern BLIND_TO_CASE =
            Pattern.compile("[^;]*(?:CASE_INSENSITIVE\\b|\\(\\?[a-zA-Z]*i[a-zA-Z]*[-:)])[^;]*");

    private static final Pattern KEYED_BY_SUBSTANCE =
            Pattern.compile("(?:Map|Set)<Substance\\b(?:[^;=(){}]*?>+ (\\w+))?");

    /** What lists substances as written, in order, and looks none up: by file, the names of what it declares. */
    private static final Map<String, Set<String>> LISTS_OF_SUBSTANCES = Map.of(
            "formula/BlendBuilder.java", Set.of("parts"),
            "formula/Ingredient.java", Set.of("parts", "whole"),
            "label/LabelDraft.java", Set.of("held"),
            "limit/CheckIndex.java", Set.of("known"), // a memory of what was asked, as written
            "limit/LimitCheck.java", Set.of("amended", "conflicts", "readings", "withoutLimit"),
            "limit/LimitReport.java", Set.of("amended", "close", "closestNames", "known", "readings", "suggestions"),
            "limit/TableIndex.java", Set.of("alike", "known"),
            "mend/CorrectionRules.java", Set.of("all", "caps", "counted"));

    private static final Pattern COMPARISON_OF_NAMES = Pattern.compile(
            "(?i)(substance|part|ingredient|line|material|member)s?(\\(\\)|\\.getKey\\(\\))*\\.name\\(\\)"
                    + "\\s*\\.(equals|compareTo|contentEquals|matches|startsWith|contains)\\("
                    + "|equals\\((\\w+\\.)*(substance|part|ingredient|line|material)(\\(\\)|\\.getKey\\(\\))*\\.name\\(\\)");

    @ArchTest
    static final ArchRule substances_are_compared_as_written_in_values_only = classes()
            .should(new ArchCondition<JavaClass>("call Substance.equals from their own equals only") {
                @Override
                public void check(JavaClass caller, ConditionEvents events) {
                    caller.getMethodCallsFromSelf().stream()
                            .filter(call -> call.getTargetOwner().isEquivalentTo(Substance.class))
                            .filter(call -> call.getName().equals("equals"))
                            .filter(call -> !call.getOrigin().getName().equals("equals"))
                            .forEach(call -> events.add(SimpleConditionEvent.violated(caller, call.getDescription())));
                }
            });

    /** Whether a cap is of a line is asked with all names that the formula has for the substance. */
    @ArchTest
    static void strengths_by_the_material_alone_are_asked_by_caps_only(JavaClasses library) {
        assertThat(members(
                        library,
                        access -> access.getTargetOwner().isEquivalentTo(Ingredient.class)
                                && access.getName().equals("strengthOf")))
                .containsExactlyInAnyOrder("mend.PotConstraint$Capped.isIn", "mend.PotConstraint$Capped.strength");
    }

    @ArchTest
    static void case_is_changed_of_words_and_names_of_constants_only(JavaClasses library) {
        assertThat(members(library, access -> changesCase(access) && !isOfAConstant(access)))
                .isEqualTo(new TreeSet<>(CHANGES_OF_CASE));
    }

    @Test
    void patterns_blind_to_case_are_of_words_only() {
        Map<String, Set<String>> found = found(BLIND_TO_CASE, 0);
        assertThat(found.keySet()).isEqualTo(PATTERNS_BLIND_TO_CASE.keySet());
        found.forEach((file, statements) ->
                assertThat(statements).as(file).singleElement().asString().contains(PATTERNS_BLIND_TO_CASE.get(file)));
    }

    @Test
    void substances_are_keys_of_lists_only() {
        assertThat(found(KEYED_BY_SUBSTANCE, 1)).isEqualTo(LISTS_OF_SUBSTANCES);
    }

    /** The builder tells how a material was spelt the first time, if otherwise. */
    @Test
    void names_are_compared_to_tell_a_spelling_only() {
        assertThat(found(COMPARISON_OF_NAMES, 0))
                .isEqualTo(Map.of("formula/FormulaBuilder.java", Set.of("equals(ingredient.name()")));
    }

    @Test
    void the_patterns_find_what_they_are_for() {
        for (String wrong : new String[] {
            "l -> line.name().equals(name)",
            "part.getKey().name().equals(x)",
            "counted.member().substance().name().compareTo(x)",
            "x.equals(line.name())",
            "x.equals(part.getKey().name())"
        }) {
            assertThat(COMPARISON_OF_NAMES.matcher(wrong).find()).as(wrong).isTrue();
        }
        assertThat(found(Map.of("a", "Map<Substance, Set<String>> x; new HashSet<Substance>()"), KEYED_BY_SUBSTANCE, 1))
                .containsExactly(Map.entry("a", Set.of("x", UNNAMED)));
        for (String wrong : new String[] {"compile(name, CASE_INSENSITIVE)", "\"(?i)glycerin\"", "\"(?iu:a)\""}) {
            assertThat(BLIND_TO_CASE.matcher(wrong).find()).as(wrong).isTrue();
        }
        assertThat(BLIND_TO_CASE.matcher("\"(?:in) (?<is>x) (?=it)\"").find()).isFalse();
    }

    @Test
    void a_change_of_case_of_a_name_is_noticed() {
        JavaClasses wrong = new ClassFileImporter().importClasses(Wrong.class);
        assertThat(members(wrong, access -> changesCase(access) && !isOfAConstant(access)))
                .extracting(member -> member.substring(member.lastIndexOf('.') + 1))
                .containsExactly("inALambda", "ofAName", "order", "same");
    }

    /** Looks substances up by itself, but for the last method. */
    private static final class Wrong {

        static String ofAName(Substance substance) {
            return substance.name().toLowerCase(Locale.ROOT);
        }

        static Stream<String> inALambda(Stream<Substance> all) {
            return all.map(Substance::name).map(name -> name.toUpperCase(Locale.ROOT));
        }

        static boolean same(Substance one, Substance other) {
            return one.name().equalsIgnoreCase(other.name());
        }

        static java.util.Comparator<String> order() {
            return String.CASE_INSENSITIVE_ORDER;
        }

        static String ofAConstant(RoundingMode mode) {
            return mode.name().toLowerCase(Locale.ROOT);
        }
    }

    private static boolean changesCase(JavaAccess<?> access) {
        return access.getTargetOwner().isEquivalentTo(Normalizer.class)
                || access.getTargetOwner().isEquivalentTo(String.class) && CASE_OF_A_TEXT.contains(access.getName());
    }

    /** The name of a constant stands on the same line. */
    private static boolean isOfAConstant(JavaAccess<?> access) {
        return access.getOrigin().getMethodCallsFromSelf().stream()
                .anyMatch(call -> call.getName().equals("name")
                        && call.getTargetOwner().isAssignableTo(Enum.class)
                        && call.getLineNumber() == access.getLineNumber());
    }

    private static Set<String> members(JavaClasses classes, Predicate<JavaAccess<?>> wanted) {
        Set<String> members = new TreeSet<>();
        for (JavaClass type : classes) {
            for (JavaAccess<?> access : type.getAccessesFromSelf()) {
                if (wanted.test(access)) {
                    members.add(type.getName().substring(Ladder.ROOT.length() + 1) + "."
                            + access.getOrigin().getName());
                }
            }
        }
        return members;
    }

    private static Map<String, Set<String>> found(Pattern pattern, int group) {
        return found(Sources.code(), pattern, group);
    }

    /** By file, what a group of the pattern finds in it. */
    private static Map<String, Set<String>> found(Map<String, String> sources, Pattern pattern, int group) {
        Map<String, Set<String>> found = new TreeMap<>();
        sources.forEach((file, source) -> pattern.matcher(source)
                .results()
                .forEach(match -> found.computeIfAbsent(file, any -> new TreeSet<>())
                        .add(Objects.requireNonNullElse(match.group(group), UNNAMED))));
        return found;
    }
}
