package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.verification.Figure;
import io.github.formulationmath.weighing.AccuracyClass;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import java.util.Locale;

/**
 * Two arguments of one kind the wrong way round, or "gr", which is a gram to most who write it.
 *
 * @param small a mass or volume in tenths
 * @param large one that is more than ten times as large
 * @param kind where
 */
record SlipOfThePen(long small, long large, int kind) implements Proven {

    static final int KINDS = 9;

    @Override
    public boolean holds() {
        return small > 0 && large > 10 * small;
    }

    static SlipOfThePen any(Dice dice) {
        long small = dice.between(1L, 100L);
        return new SlipOfThePen(small, small * dice.between(11, 1000), dice.between(0, KINDS - 1));
    }

    /** Takes it without a word. */
    static boolean isTaken(SlipOfThePen slip) {
        String less = Texts.decimal(slip.small, 1);
        String more = Texts.decimal(slip.large, 1);
        Object made = switch (slip.kind) {
            case 0 -> Balance.of(more + " g", less + " g");
            case 1 -> Vessel.of("jar", "10 g").holding(less + " mL", more + " mL");
            case 2 -> ErrorModel.readabilityOnly().withResidue(mass(more), mass(less));
            case 3 -> AccuracyClass.III.permissibleError(mass(less), mass(more));
            case 4 -> Amount.mass(more + " gr");
            case 5 -> BatchSize.ofMass(more + " gr");
            case 6 -> AmountFormat.forLocale(Locale.GERMANY).parseMass(slip.large + " gr");
            case 7 ->
                Formula.inMasses("Oils")
                        .line("Oil", more + " gr")
                        .line("Wax", less + " g")
                        .build();
            default -> Figure.parse(more + " gr");
        };
        return made != null;
    }

    private static Amount<javax.measure.quantity.Mass> mass(String grams) {
        return Amount.mass(grams + " g");
    }
}
