package io.github.formulationmath.support;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.List;

/** Workings that the tests of this chapter print. */
public final class Workings {

    public static final Symbol SHARE = Symbol.of("w", "share", Kind.SHARE);
    public static final Symbol LINE = Symbol.of("m", "line-mass", Kind.MASS);
    public static final Symbol BATCH = Symbol.of("M", "batch-mass", Kind.MASS);
    public static final Symbol STEP = Symbol.of("d", "readability", Kind.MASS);
    public static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);
    public static final Symbol DENSITY = Symbol.of("ρ", "density", Kind.DENSITY);
    public static final Symbol VOLUME = Symbol.of("V", "volume-to-fill", Kind.VOLUME);
    public static final Symbol FACTOR = Symbol.of("q", "relative-rounding-error", Kind.NUMBER);

    private Workings() {}

    /** 2.5 % of 400 g. */
    public static Working lineMass() {
        return Working.of(
                Phrase.of("question.line-mass", "Glycerin"),
                r -> lineMass(r, "3", "Glycerin", "2.50 %", Ratio.of(400)));
    }

    private static <V> V lineMass(Reckoning<V> r, String line, String name, String written, Ratio batch) {
        Subject subject = Subject.of(line, name);
        Ratio share = Ratio.parse(written.replace(" %", "")).dividedBy(100);
        V w = r.given(SHARE, subject, share, Source.written(written));
        V m = r.given(BATCH, batch, Source.user());
        return r.named(LINE, subject, r.product(w, m));
    }

    /** Every kind of operation, entry and source. */
    public static Working everything() {
        return Working.of(Phrase.of("question.reading", "Glycerin"), r -> {
            Subject third = Subject.of("3", "Glycerin");
            Term rho = r.given(DENSITY, Subject.of("3", "Glycerin"), Ratio.parse("1.26"), handbook());
            Term volume = r.given(VOLUME, Ratio.parse("318/3"), Source.user());
            Term m = lineMass(r, "3", "Glycerin", "2.630 %", Ratio.of(400, 3));
            Term d = r.given(STEP, Ratio.parse("0.1"), Source.written("0.1 g"));
            Term n = r.named(READING, third, r.rounded(m, Rounding.toMultipleOf(Ratio.parse("0.1"))));
            r.holds(r.absolute(r.difference(n, m)), Comparison.AT_MOST, r.product(r.literal(Ratio.parse("0.01")), m));
            r.note(() -> Phrase.of("note.volumes-add-up"));
            Term v = r.named(
                    Symbol.of("v", "volume-to-fill", Kind.VOLUME),
                    r.minimum(List.of(r.quotient(n, rho), volume, r.quotient(r.root(r.product(n, d)), rho))));
            Term q = r.named(
                    FACTOR,
                    third,
                    r.quotient(r.difference(m, r.sum(n, n)), r.sum(List.of(m, r.difference(n, d), r.literal(0)))));
            r.holds(v, Comparison.GREATER, volume);
            return r.named(
                    Symbol.of("r′", "reading", Kind.MASS),
                    third,
                    r.rounded(r.product(r.maximum(List.of(q, r.literal(1))), m), Rounding.toSignificantDigits(3)));
        });
    }

    public static Source handbook() {
        return Source.published("A handbook of our own, 2nd edition", "table 4");
    }

    /** The total of a batch of many lines, one of them 1/7 of a gram. */
    public static Working total(int lines) {
        return Working.of(Phrase.of("question.readings-total"), r -> {
            List<Term> masses = new ArrayList<>();
            for (int i = 1; i <= lines; i++) {
                Subject subject = Subject.of(String.valueOf(i), "ingredient " + i);
                masses.add(r.given(LINE, subject, i == 7 ? Ratio.of(1, 7) : Ratio.of(i, 8), Source.user()));
            }
            return r.named(BATCH, r.sum(masses));
        });
    }

    /** Names that try to get out of their place. */
    public static Working hostile() {
        List<String> names = List.of(
                "<script>alert(1)</script>",
                "a | b || c",
                "under_score *star* `tick` ```fence```",
                "$x$ \\input{secret} #1 %comment ~ ^ { }",
                "two\nlines\r\n\n# heading\n- item",
                "\u202Ereversed\u202C",
                "שלום גליצרין",
                "{0} {1} &amp; &lt;",
                "](javascript:alert(1)) ![x](http://example.org/x.png) www.example.org",
                "long".repeat(60));
        return Working.of(Phrase.of("question.line-mass", names.get(0)), r -> {
            List<Term> masses = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                Subject subject = Subject.of(String.valueOf(i + 1), names.get(i));
                Term m = r.given(LINE, subject, Ratio.of(i + 1), Source.written("1 " + names.get(i)));
                masses.add(r.named(READING, subject, r.rounded(m, Rounding.toMultipleOf(Ratio.of(2)))));
                String name = names.get(i);
                r.note(() -> Phrase.of("question.reading", name));
            }
            return r.named(BATCH, r.sum(masses));
        });
    }
}
