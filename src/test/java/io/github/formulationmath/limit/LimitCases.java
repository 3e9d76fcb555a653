package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Random products and formulas for laws of checks against the bundled table. */
final class LimitCases {

    static final LimitTable EU = LimitTable.eu2024February();

    /** Every substance that the table counts, some that it only leaves out, and some of which it does not speak. */
    static final List<String> NAMES = names();

    private LimitCases() {}

    private static List<String> names() {
        Set<String> names = new TreeSet<>(List.of("Glycerin", "Squalane", "Sodium Fluoride", "Talc", "Hydroquinone"));
        EU.limits().stream()
                .flatMap(limit -> limit.group().members().stream())
                .filter(GroupMember::isCounted)
                .forEach(member -> names.add(member.substance().name()));
        return List.copyOf(names);
    }

    /** Words of a product, to be said with more words or fewer. */
    record Said(boolean leaveOn, List<String> areas, List<String> kinds, List<String> forms) {

        static Said random(Random random) {
            ProductWords words = EU.words();
            return new Said(
                    random.nextBoolean(),
                    some(random, words.areas()),
                    some(random, words.kinds()),
                    some(random, words.forms()));
        }

        Product product() {
            Product product = leaveOn ? Product.leaveOn() : Product.rinseOff();
            product = areas.isEmpty() ? product : product.on(areas.toArray(new String[0]));
            product = kinds.isEmpty() ? product : product.ofKind(kinds.toArray(new String[0]));
            return forms.isEmpty() ? product : product.inForm(forms.toArray(new String[0]));
        }

        Said and(int side, String word) {
            return new Said(
                    leaveOn,
                    side == 0 ? plus(areas, word) : areas,
                    side == 1 ? plus(kinds, word) : kinds,
                    side == 2 ? plus(forms, word) : forms);
        }

        Said only(int side, String word) {
            return new Said(
                    leaveOn,
                    side == 0 ? List.of(word) : areas,
                    side == 1 ? List.of(word) : kinds,
                    side == 2 ? List.of(word) : forms);
        }
    }

    private static List<String> plus(List<String> words, String word) {
        List<String> more = new ArrayList<>(words);
        more.add(word);
        return more;
    }

    private static List<String> some(Random random, Collection<String> words) {
        List<String> all = List.copyOf(words);
        List<String> some = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            some.add(all.get(random.nextInt(all.size())));
        }
        return some;
    }

    /** Millionths of substances of which the table speaks, mostly; below a third of the whole. */
    static Map<String, Integer> shares(Random random) {
        Map<String, Integer> shares = new LinkedHashMap<>();
        for (int i = 1 + random.nextInt(5); i > 0; i--) {
            int digits = random.nextInt(5);
            shares.put(NAMES.get(random.nextInt(NAMES.size())), 1 + random.nextInt((int) Math.pow(10, digits + 1)));
        }
        return shares;
    }

    static Formula formula(Map<String, Integer> shares) {
        FormulaBuilder draft = Formula.inPercent("F");
        draft.quantitySufficient("Aqua");
        shares.forEach((name, millionths) -> draft.line(Ingredient.of(name), millionths(millionths)));
        return draft.build();
    }

    static MassFraction millionths(int number) {
        return MassFraction.of(Ratio.of(number, 1_000_000));
    }

    static LimitReport check(Product product, Formula formula) {
        return LimitChecker.of(EU, product, DecisionRule.worstCase()).check(formula);
    }

    /** What stands against the formula, by limit and what is counted. */
    static Map<String, Conformity> verdicts(LimitReport report) {
        Map<String, Conformity> found = new TreeMap<>();
        report.verdicts()
                .forEach(verdict -> found.put(
                        verdict.limit().id() + " " + verdict.counted() + " "
                                + (verdict.applicability() == Applicability.OUT_OF_SCOPE),
                        verdict.conformity()));
        return found;
    }

    /** Substances that the report tells something of, be it that the table does not speak of them. */
    static Set<Substance> toldOf(LimitReport report) {
        Set<Substance> told = new HashSet<>(report.withoutLimit());
        report.verdicts().forEach(verdict -> told.addAll(verdict.substances()));
        told.addAll(report.amended().keySet());
        report.outOfScope().forEach(finding -> told.add(finding.substance()));
        report.notTranscribed().forEach(finding -> told.add(finding.substance()));
        return told;
    }
}
