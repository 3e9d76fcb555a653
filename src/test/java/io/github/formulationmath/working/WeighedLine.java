package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;

/** The working of a reading, {@code m = w · M}, {@code x = m / d}, {@code n = round(x)}, {@code r = n · d}. */
final class WeighedLine {

    static final Symbol DIVISIONS = Symbol.of("x", "target-divisions", Kind.NUMBER);
    static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    static final Subject SUBJECT = new NamedSubject("5", "Cetearyl Alcohol");

    private WeighedLine() {}

    static Working of(String share, String batch, String readability) {
        return Working.of(Phrase.of("question.reading", SUBJECT.name()), r -> reading(r, share, batch, readability));
    }

    static Term reading(Reckoning<Term> r, String share, String batch, String readability) {
        Term w = r.given(Workings.SHARE, SUBJECT, Ratio.parse(share), Source.user());
        Term whole = r.given(Workings.BATCH, Ratio.parse(batch), Source.user());
        Term m = r.named(Workings.LINE, SUBJECT, r.product(w, whole));
        Term d = r.given(Workings.STEP, Ratio.parse(readability), Source.user());
        Term x = r.named(DIVISIONS, SUBJECT, r.quotient(m, d));
        Term n = r.named(SHOWN, SUBJECT, r.rounded(x, Rounding.toDecimalPlaces(0)));
        return r.named(Workings.READING, SUBJECT, r.product(n, d));
    }
}
