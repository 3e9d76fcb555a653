package io.github.formulationmath.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Which spellings are one substance, {@code formula} says and nobody else: outside it no code compares substances or names
 * by itself. What bytecode shows is asked of bytecode; type arguments and the receivers of a comparison, of the sources.
 */
@AnalyzeClasses(packages = Ladder.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
final class OneIdentityTest {

    private static final Path SOURCES = Path.of("src/main/java/io/github/formulationmath");

    private static final Pattern CHANGE_OF_CASE = Pattern.compile(
            "toUpperCase|toLowerCase|equalsIgnoreCase|compareToIgnoreCase|regionMatches|CASE_INSENSITIVE|CASE_INSENSITIVE_ORDER|Normalizer");

    /** The words of constants, and of the scopes of limits; no name of a substance comes by here. */
    private static final Set<String> WORDS_OF_CONSTANTS = Set.of(
            "annex/ColorantEntry.java",
            "annex/ProhibitedEntry.java",
            "annex/WordReading.java",
            "document/Document.java", // the direction of a language
            "exercise/Mistake.java",
            "json/ValueDocument.java",
            "label/LabelName.java", // letters as a label prints them
            "limit/Conformity.java",
            "limit/DecisionRule.java",
            "limit/LimitOutcome.java",
            "limit/ProductWords.java",
            "limit/ShortRules.java",
            "number/Rounding.java",
            "quantity/AmountFormat.java",
            "quantity/ShareText.java", // w/v and W/V
            "quantity/TypedText.java", // names of units
            "quantity/UnitNames.java", // names of units
            "reckoning/Formulas.java",
            "soap/AlkaliGradeTable.java",
            "soap/FatTable.java",
            "verification/Figure.java", // names of units
            "verification/FigureCheck.java",
            "verification/LyeSlip.java",
            "verification/Slip.java",
            "verification/Verification.java");

    private static final Pattern KEYED_BY_SUBSTANCE = Pattern.compile("(Map|Set)<Substance\\b");

    /** What lists substances as written, in order, and looks none up. */
    private static final Set<String> LISTS_OF_SUBSTANCES = Set.of(
            "formula/BlendBuilder.java",
            "formula/Ingredient.java",
            "label/LabelDraft.java",
            "limit/CheckIndex.java", // a memory of what was asked, as written
            "limit/LimitCheck.java",
            "limit/LimitReport.java",
            "limit/TableIndex.java",
            "mend/CorrectionRules.java");

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

    @ArchTest
    static final ArchRule strengths_by_the_material_alone_are_asked_by_caps_only = noClasses()
            .that()
            .resideOutsideOfPackage(Ladder.ROOT + ".formula")
            .and()
            .haveNameNotMatching(".*\\.mend\\.PotConstraint\\$Capped") // with all names that the formula has
            .should()
            .callMethod(Ingredient.class, "strengthOf", Substance.class);

    @Test
    void case_is_changed_of_words_of_constants_only() throws IOException {
        Set<String> found = filesWith(CHANGE_OF_CASE);
        assertThat(found).contains("formula/SubstanceName.java");
        found.remove("formula/SubstanceName.java");
        assertThat(found).isEqualTo(new TreeSet<>(WORDS_OF_CONSTANTS));
    }

    @Test
    void substances_are_keys_of_lists_only() throws IOException {
        assertThat(filesWith(KEYED_BY_SUBSTANCE)).isEqualTo(new TreeSet<>(LISTS_OF_SUBSTANCES));
    }

    @Test
    void names_are_compared_nowhere_else() throws IOException {
        assertThat(filesWith(COMPARISON_OF_NAMES)).allMatch(file -> file.startsWith("formula/"));
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
        assertThat(KEYED_BY_SUBSTANCE.matcher("Map<Substance, Ratio> x").find()).isTrue();
        assertThat(CHANGE_OF_CASE.matcher("name.toLowerCase(Locale.ROOT)").find())
                .isTrue();
    }

    private static Set<String> filesWith(Pattern pattern) throws IOException {
        Set<String> found = new TreeSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                if (pattern.matcher(Files.readString(file)).find()) {
                    found.add(SOURCES.relativize(file).toString().replace('\\', '/'));
                }
            }
        }
        return found;
    }
}
