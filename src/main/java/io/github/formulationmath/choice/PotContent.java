package io.github.formulationmath.choice;

import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.number.Ratio;
import org.jspecify.annotations.Nullable;

/**
 * What is in a pot so far: its mass in grams, by the exact masses and as the displays read them, and, as long as the densities of all lines are known, its volume in millilitres,
 * as if volumes added up.
 */
record PotContent(Ratio grams, Ratio read, @Nullable Ratio millilitres) {

    static final PotContent EMPTY = new PotContent(Ratio.ZERO, Ratio.ZERO, Ratio.ZERO);

    PotContent plus(BatchLine line, Ratio reading) {
        Ratio own = millilitresOf(line, line.mass().canonical());
        return new PotContent(
                grams.plus(line.mass().canonical()),
                read.plus(reading),
                own == null || millilitres == null ? null : millilitres.plus(own));
    }

    /** The volume of so much of the ingredient of a line, if its density is known. */
    static @Nullable Ratio millilitresOf(BatchLine line, Ratio grams) {
        return line.line()
                .ingredient()
                .density()
                .map(density -> grams.dividedBy(density.gramsPerMillilitre()))
                .orElse(null);
    }
}
