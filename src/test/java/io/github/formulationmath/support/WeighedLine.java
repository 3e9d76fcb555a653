package io.github.formulationmath.support;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;

/** The working of a reading, {@code m = w · M}, {@code x = m / d}, {@code n = round(x)}, {@code r = n · d}. */
public final class WeighedLine {

    public static final Symbol DIVISIONS = Symbol.of("x", "target-divisions", Kind.NUMBER);
    public static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    public static final Subject SUBJECT = Subject.of("5", "Cetearyl Alcohol");

    private WeighedLine() {}

    public static Working of(String share, String batch, String readability) {
        return Working.of(Phrase.of("question.reading", SUBJECT.name()), r -> reading(r, share, batch, readability));
    }

    public static Term reading(Reckoning<Term> r, String share, String batch, String readability) {
        Term w = r.given(Workings.SHARE, SUBJECT, Ratio.parse(share), Source.user());
        Term whole = r.given(Workings.BATCH, Ratio.parse(batch), Source.user());
        Term m = r.named(Workings.LINE, SUBJECT, r.product(w, whole));
        Term d = r.given(Workings.STEP, Ratio.parse(readability), Source.user());
        Term x = r.named(DIVISIONS, SUBJECT, r.quotient(m, d));
        Term n = r.named(SHOWN, SUBJECT, r.rounded(x, Rounding.toDecimalPlaces(0)));
        return r.named(Workings.READING, SUBJECT, r.product(n, d));
    }
}
