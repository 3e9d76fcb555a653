package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.falsefine.ClaimCase.Fault;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.verification.Verification;
import io.github.formulationmath.verification.Verification.Outcome;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;

/** Asks the library whether claims hold. */
final class ClaimJudge {

    private ClaimJudge() {}

    static boolean callsFine(ClaimCase asked) {
        Outcome outcome = Verification.of(claim(asked)).outcome();
        return outcome == Outcome.HOLDS || (outcome == Outcome.HOLDS_BY_HABIT && asked.fault() != Fault.HABIT);
    }

    private static Claim claim(ClaimCase asked) {
        Figures figures = asked.figures();
        var builder = Formula.inPercent("Claimed").quantitySufficient(ClaimText.name(0));
        for (int i = 1; i < figures.size(); i++) {
            builder.line(ClaimText.name(i), ClaimText.share(figures.shares()[i]));
        }
        Claim claim = Claim.about(builder.build(), BatchSize.ofMass(asked.unit().batch(figures.batch())));
        for (int i = 0; i < figures.size(); i++) {
            if (!asked.left().contains(i)) {
                claim = claim.withFigure(ClaimText.name(i), asked.unit().text(figures.shown()[i]));
            }
        }
        return asked.total() < 0 ? claim : claim.withTotal(asked.unit().text(asked.total()));
    }

    /** A claim as a file. */
    static boolean callsFine(String csv) {
        try {
            return Verification.of(Claim.read(new StringReader(csv))).outcome() == Outcome.HOLDS;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
