package io.github.formulationmath.limit;

import static io.github.formulationmath.support.Checkers.FACE_CREAM;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Laws of verdicts, on formulas of substances that the bundled table limits in every way it knows. */
class LimitPropertiesTest {

    private static final LimitChecker CHECKER = Checkers.of(FACE_CREAM);
    private static final List<String> LIMITED = List.of(
            "Phenoxyethanol",
            "Sodium Benzoate",
            "Benzoic Acid",
            "Potassium Sorbate",
            "Methylparaben",
            "Propylparaben",
            "Butylparaben",
            "Salicylic Acid",
            "Linalool",
            "Cetrimonium Chloride",
            "Behentrimonium Chloride",
            "Titanium Dioxide",
            "Glycerin");

    /** A material and its share in millionths. */
    record Part(String name, int millionths) {
        MassFraction share() {
            return MassFraction.of(Ratio.of(millionths, 1_000_000));
        }
    }

    @Provide
    Arbitrary<List<Part>> parts() {
        return Combinators.combine(
                        Arbitraries.of(LIMITED), Arbitraries.integers().between(1, 60_000))
                .as(Part::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(10)
                .uniqueElements(Part::name);
    }

    private static Formula formula(List<Part> parts) {
        FormulaBuilder draft = Formula.inPercent("F");
        draft.phase("water").quantitySufficient("Aqua");
        parts.forEach(part -> draft.line(Ingredient.of(part.name()), part.share()));
        return draft.build();
    }

    private static Map<String, String> verdicts(LimitReport report) {
        Map<String, String> found = new TreeMap<>();
        report.verdicts().forEach(v -> found.put(v.limit().id() + " " + v.counted(), v.conformity() + " " + v.share()));
        return found;
    }

    @Property(tries = 300)
    void raising_an_amount_never_turns_exceeds_into_within(
            @ForAll("parts") List<Part> parts,
            @ForAll @IntRange(max = 9) int which,
            @ForAll @IntRange(min = 1, max = 40_000) int more) {
        int index = which % parts.size();
        List<Part> raised = new ArrayList<>(parts);
        raised.set(index, new Part(parts.get(index).name(), parts.get(index).millionths() + more));
        Map<String, Verdict> after = byKey(CHECKER.check(formula(raised)));
        CHECKER.check(formula(parts)).verdicts().stream()
                .filter(verdict -> verdict.conformity() == Conformity.EXCEEDS)
                .forEach(verdict ->
                        assertThat(after.get(key(verdict)).conformity()).isEqualTo(Conformity.EXCEEDS));
    }

    /** On the balance too: with the same batch mass, more of it never leads back to within. */
    @Property(tries = 100)
    void raising_a_weighed_amount_never_leads_back_to_within(
            @ForAll @IntRange(min = 1_000, max = 20_000) int millionths,
            @ForAll @IntRange(min = 1, max = 20_000) int more) {
        Conformity before = weighed(millionths);
        Conformity after = weighed(millionths + more);
        assertThat(after).isGreaterThanOrEqualTo(before);
    }

    private static Conformity weighed(int millionths) {
        Formula formula = formula(List.of(new Part("Phenoxyethanol", millionths)));
        Weighed weighed = HandWeighed.exactly(formula, "400 g", Balance.of("0.1 g", "2 kg"), WeighingMethod.TARE_EACH);
        return CHECKER.check(weighed).binding().orElseThrow().conformity();
    }

    private static String key(Verdict verdict) {
        return verdict.limit().id() + " " + verdict.counted();
    }

    private static Map<String, Verdict> byKey(LimitReport report) {
        Map<String, Verdict> found = new TreeMap<>();
        report.verdicts().forEach(verdict -> found.put(key(verdict), verdict));
        return found;
    }

    @Property(tries = 200)
    void splitting_a_material_into_two_lines_changes_no_verdict(
            @ForAll("parts") List<Part> parts,
            @ForAll @IntRange(max = 9) int which,
            @ForAll @LongRange(min = 1, max = 99) long percent) {
        Part part = parts.get(which % parts.size());
        FormulaBuilder draft = Formula.inPercent("F");
        draft.phase("water").quantitySufficient("Aqua");
        parts.forEach(each -> draft.line(
                Ingredient.of(each.name()),
                each == part
                        ? MassFraction.of(each.share().fraction().times(percent).dividedBy(100))
                        : each.share()));
        draft.phase("later")
                .line(
                        Ingredient.of(part.name()),
                        MassFraction.of(
                                part.share().fraction().times(100 - percent).dividedBy(100)));
        assertThat(verdicts(CHECKER.check(draft.build()))).isEqualTo(verdicts(CHECKER.check(formula(parts))));
    }

    @Property(tries = 100)
    void the_order_of_lines_and_of_the_table_changes_nothing(@ForAll("parts") List<Part> parts, @ForAll long seed) {
        List<Part> shuffledParts = new ArrayList<>(parts);
        Collections.shuffle(shuffledParts, new Random(seed));
        LimitReport report = CHECKER.check(formula(parts));
        LimitReport other = shuffled(seed).check(formula(shuffledParts));
        assertThat(verdicts(other)).isEqualTo(verdicts(report));
        assertThat(other.verdicts().stream().map(LimitPropertiesTest::key).toList())
                .isEqualTo(
                        report.verdicts().stream().map(LimitPropertiesTest::key).toList());
    }

    private static LimitChecker shuffled(long seed) {
        List<UsageLimit> limits = new ArrayList<>(LimitTable.eu2024February().limits());
        Collections.shuffle(limits, new Random(seed % 3));
        return LimitChecker.of(LimitTable.of("shuffled", limits), FACE_CREAM, DecisionRule.worstCase());
    }

    @Property(tries = 20)
    void a_verdict_does_not_depend_on_the_locale(@ForAll("parts") List<Part> parts) {
        Locale before = Locale.getDefault();
        Map<String, String> here = verdicts(CHECKER.check(formula(parts)));
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(verdicts(CHECKER.check(formula(parts)))).isEqualTo(here);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
