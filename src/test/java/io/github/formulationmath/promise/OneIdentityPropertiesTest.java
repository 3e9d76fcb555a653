package io.github.formulationmath.promise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.json.Json;
import io.github.formulationmath.label.IngredientList;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.GroupMember;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.size.CapTarget;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;

/**
 * One substance in random disguises on random lines: its total is worked out here in whole numbers, by line and not by
 * name, and everything that counts it must come to that total.
 */
class OneIdentityPropertiesTest {

    private static final Balance TENTH = Balance.of("0.1 g", "20 kg");
    private static final String CAS = "122-99-6";
    private static final String NAME = "Ph\u00e9noxy-Ethanol";
    private static final String OTHER_NAME = "Rose ether";
    private static final String[] OTHERS = {
        "Ph\u00e9noxy-Ethanole", "Phenoxy-Ethanol", "Ph\u00e9noxy-Propanol", "Glycerin", "Glycerine", "Rose ethers"
    };

    /** A formula and, line by line, how many percent of the material are the substance. */
    private static final class Case {

        final Random random;
        final List<Integer> millionths = new ArrayList<>();
        final List<Integer> percents = new ArrayList<>();
        final List<String> restNames = new ArrayList<>();
        final Formula formula;

        Case(long seed) {
            random = new Random(seed);
            FormulaBuilder draft = Formula.inPercent("F");
            int lines = 2 + random.nextInt(6);
            draft.quantitySufficient("Aqua");
            millionths.add(1_000_000);
            percents.add(0);
            restNames.add("Aqua");
            for (int i = 1; i <= lines; i++) {
                int share = 1 + random.nextInt(20_000);
                int percent = i == 1 ? 100 : random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(100);
                String rest = OTHERS[random.nextInt(OTHERS.length)];
                millionths.add(share);
                millionths.set(0, millionths.get(0) - share);
                percents.add(percent);
                restNames.add(rest);
                draft.line(
                        material("Material " + i, i == 1 ? anchor() : disguised(), percent, rest),
                        MassFraction.of(Ratio.of(share, 1_000_000)));
            }
            formula = draft.build();
        }

        private static Ingredient material(String name, Substance substance, int percent, String rest) {
            if (percent == 0) {
                return Ingredient.of(name, Substance.of(rest));
            }
            if (percent == 100) {
                return Ingredient.of(name, substance);
            }
            return Ingredient.blend(name)
                    .part(substance, MassFraction.of(Ratio.of(percent, 100)))
                    .rest(rest);
        }

        /** The line that ties name and number together, as somebody must. */
        private Substance anchor() {
            return Substance.of(spelt(NAME)).withCas(CAS);
        }

        private Substance disguised() {
            return switch (random.nextInt(5)) {
                case 0 -> Substance.of(spelt(NAME));
                case 1 -> Substance.of(spelt(NAME)).withCas(CAS);
                case 2 -> Substance.of(spelt(OTHER_NAME)).withCas(CAS);
                case 3 -> Substance.of("Material of ours").withSynonyms("Something", spelt(NAME));
                default -> Substance.of(spelt(CAS));
            };
        }

        private String spelt(String name) {
            String text = random.nextBoolean() ? name : Normalizer.normalize(name, Normalizer.Form.NFD);
            text = switch (random.nextInt(3)) {
                case 0 -> text.toUpperCase(Locale.ROOT);
                case 1 -> text.toLowerCase(Locale.ROOT);
                default -> text;
            };
            String[] unseen = {"\u200b", "\u200d", "\u2060", "\u00ad", "\ufeff", "\u200e"};
            if (random.nextBoolean()) {
                int at = 1 + random.nextInt(text.length() - 1);
                text = text.substring(0, at) + unseen[random.nextInt(unseen.length)] + text.substring(at);
            }
            String[] spaces = {"", " ", "\u00a0", "\t", "\u2003 "};
            text = text.replace(" ", random.nextBoolean() ? " " : "\u00a0 ");
            text = text.replace("-", random.nextBoolean() ? "-" : " \u2011 ");
            return spaces[random.nextInt(spaces.length)] + text + spaces[random.nextInt(spaces.length)];
        }

        /** The share of the substance in hundred-millionths. */
        int total() {
            int sum = 0;
            for (int i = 0; i < millionths.size(); i++) {
                sum += millionths.get(i) * percents.get(i);
            }
            return sum;
        }

        /** A cap near the total, on either side or on it. */
        int cap() {
            return Math.max(1, total() + (random.nextInt(5) - 2) * random.nextInt(200_000));
        }
    }

    private static MassFraction hundredMillionths(int count) {
        return MassFraction.of(Ratio.of(count, 100_000_000));
    }

    @Property(tries = 250)
    void compositions_count_every_disguise(@ForAll long seed) {
        checkComposition(new Case(seed));
    }

    private static void checkComposition(Case c) {
        SubstanceShare share = c.formula.composition().shareOf(c.disguised()).orElseThrow();
        assertThat(share.share()).isEqualTo(hundredMillionths(c.total()));
        // Nothing else was drawn in: every other name has what its lines bring, and stays a substance of its own.
        long others = c.formula.lines().stream()
                .flatMap(line -> line.ingredient().parts().keySet().stream())
                .map(Substance::name)
                .filter(name -> List.of(OTHERS).contains(name) || name.equals("Aqua"))
                .distinct()
                .count();
        assertThat(c.formula.composition().shares()).hasSize((int) others + 1);
        for (String other : OTHERS) {
            int sum = 0;
            for (int i = 0; i < c.millionths.size(); i++) {
                sum += c.restNames.get(i).equals(other) ? c.millionths.get(i) * (100 - c.percents.get(i)) : 0;
            }
            Ratio counted = c.formula
                    .composition()
                    .shareOf(Substance.of(other))
                    .map(one -> one.share().fraction())
                    .orElse(Ratio.ZERO);
            assertThat(counted).as(other).isEqualTo(Ratio.of(sum, 100_000_000));
        }
    }

    @Property(tries = 250)
    void caps_count_every_disguise(@ForAll long seed) {
        checkCaps(new Case(seed));
    }

    private static void checkCaps(Case c) {
        int cap = c.cap();
        Substance asked = c.disguised();
        MinimumBatch smallest = MinimumBatch.of(
                c.formula, TENTH, Criterion.capKept(asked, hundredMillionths(cap), WeighingMethod.TARE_EACH));
        assertThat(smallest instanceof MinimumBatch.Found)
                .as("%s, cap %d, total %d", asked, cap, c.total())
                .isEqualTo(c.total() < cap);
        CapTarget target = CapTarget.of(
                Batch.of(c.formula, BatchSize.ofMass("200 g")),
                TENTH,
                asked,
                hundredMillionths(cap),
                WeighingMethod.TARE_EACH);
        // C - 0.15 g/200 g · Σ |c − C|, a display of 0.1 g being off by 0.15 g at most for a tared addition.
        long against = 0;
        for (int percent : c.percents) {
            against += Math.abs(percent * 1_000_000L - cap);
        }
        assertThat(target.origin().number()).isEqualTo(Ratio.of(4_000L * cap - 3 * against, 400_000_000_000L));
    }

    @Property(tries = 100)
    void corrections_count_every_disguise(@ForAll long seed) {
        checkCorrection(new Case(seed));
    }

    private static void checkCorrection(Case c) {
        if (c.millionths.stream().anyMatch(share -> share < 16)) {
            // Read up to one and a half tenths too high, such a line may be off by 99.9 % and ask for a correction of
            // its own.
            return;
        }
        WeighingPlan plan =
                WeighingPlan.of(Batch.of(c.formula, BatchSize.ofMass("10 kg")), Bench.of(Balance.of("0.1 g", "20 kg")));
        List<Reading> readings = new ArrayList<>();
        long whole = 0;
        long there = 0;
        for (int i = 0; i < c.millionths.size(); i++) {
            FormulaLine line = plan.batch().formula().lines().get(i);
            int tenths = 1 + (c.millionths.get(i) + 5) / 10;
            readings.add(Reading.of(line, tenths / 10 + "." + tenths % 10 + " g"));
            whole += tenths;
            there += (long) tenths * c.percents.get(i);
        }
        MadeBatch made = MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        int cap = Math.max(1, (int) (there * 1_000_000 / whole) + c.random.nextInt(3) * 50_000 - 50_000);
        boolean kept = there * 1_000_000 <= cap * whole;
        Correction correction = Correction.smallest(
                made, CorrectionRules.within(Tolerances.of("99.9 %")).withCap(c.disguised(), hundredMillionths(cap)));
        assertThat(correction.outcome() == Correction.Outcome.NOTHING_TO_DO)
                .as("%d of %d, cap %d", there, whole, cap)
                .isEqualTo(kept);
    }

    @Property(tries = 250)
    void limits_and_labels_count_every_disguise(@ForAll long seed) {
        checkLimitsAndLabel(new Case(seed));
    }

    private static void checkLimitsAndLabel(Case c) {
        int cap = c.cap();
        Substance inTable = c.random.nextBoolean()
                ? c.disguised()
                : Substance.of("As printed").withSynonyms(c.spelt(NAME));
        LimitTable table = LimitTable.of(
                "house",
                List.of(UsageLimit.of(
                        "L",
                        SubstanceGroup.of("group", List.of(GroupMember.of(inTable))),
                        LimitKind.MAXIMUM,
                        hundredMillionths(cap))));
        Verdict verdict = LimitChecker.of(table, Product.leaveOn(), DecisionRule.simpleAcceptance())
                .check(c.formula)
                .verdict("L")
                .orElseThrow();
        assertThat(verdict.share().canonical()).isEqualTo(Ratio.of(c.total(), 100_000_000));
        assertThat(verdict.conformity()).isEqualTo(c.total() > cap ? Conformity.EXCEEDS : Conformity.WITHIN);
        List<IngredientList.ListedIngredient> listed =
                Label.of(LabelRule.eu()).list(c.formula).all();
        assertThat(listed).hasSameSizeAs(c.formula.composition().shares());
        String first =
                c.formula.composition().shareOf(c.disguised()).orElseThrow().name();
        assertThat(listed.stream()
                        .filter(one -> one.name().equalsIgnoreCase(first))
                        .map(one -> one.share().fraction()))
                .containsExactly(Ratio.of(c.total(), 100_000_000));
    }

    @Property(tries = 250)
    void a_second_number_is_refused_wherever_it_hides(@ForAll long seed) {
        Case c = new Case(seed);
        FormulaBuilder draft = Formula.inPercent("G").quantitySufficient("Base");
        c.formula.lines().forEach(line -> draft.line(line.ingredient(), MassFraction.parse("1 %")));
        Substance wrong = c.random.nextBoolean()
                ? Substance.of(c.spelt(NAME)).withCas("56-81-5")
                : Substance.of("Chain").withSynonyms(c.spelt(CAS)).withCas("56-81-5");
        draft.line(Ingredient.of("Wrong number", wrong), MassFraction.parse("1 %"));
        assertThatThrownBy(draft::build)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(CAS)
                .hasMessageContaining("56-81-5")
                .hasMessageContaining("\"Wrong number\"")
                .hasMessageContaining("\"Material ");
    }

    @Property(tries = 100)
    void documents_keep_every_spelling(@ForAll long seed) {
        Formula formula = new Case(seed).formula;
        assertThat(Json.formulas().read(Json.formulas().write(formula)).value()).isEqualTo(formula);
    }

    @Tag("many")
    @Property(tries = 20_000)
    void all_of_it_at_length(@ForAll long seed) {
        checkComposition(new Case(seed));
        checkCaps(new Case(seed));
        checkLimitsAndLabel(new Case(seed));
    }

    @Property(tries = 1)
    void the_pot_that_was_called_kept() {
        Ingredient blend = Ingredient.blend("Preservative PX")
                .part(Substance.of("Phenoxyethanol").withCas(CAS), MassFraction.parse("65 %"))
                .rest("Glycerin");
        Formula formula = Formula.inPercent("Lotion")
                .quantitySufficient("Aqua")
                .line(blend, "0.9 %")
                .line("Phenoxyethanol", "0.6 %")
                .build();
        for (Substance asked : List.of(
                Substance.of("Phenoxyethanol"), Substance.of("Phenoxyethanol").withCas(CAS))) {
            MinimumBatch smallest = MinimumBatch.of(
                    formula, TENTH, Criterion.capKept(asked, MassFraction.parse("1 %"), WeighingMethod.TARE_EACH));
            assertThat(smallest).isNotInstanceOf(MinimumBatch.Found.class);
        }
    }
}
