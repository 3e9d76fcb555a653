package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;

/** Claims as tests write them down. */
final class Claims {

    private Claims() {}

    /** A figure for each line in order; an empty text for a line without. */
    static Claim of(Formula formula, String size, String... figures) {
        Claim claim = Claim.about(formula, BatchSize.ofMass(size));
        for (int i = 0; i < figures.length; i++) {
            claim = figures[i].isEmpty()
                    ? claim
                    : claim.withFigure(formula.lines().get(i), Figure.parse(figures[i]));
        }
        return claim;
    }

    static Claim read(String table) {
        try {
            return Claim.read(new StringReader(table));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
