package io.github.formulationmath.working;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.List;
import org.junit.jupiter.api.Test;

class SelfCheckingTest {

    static final Symbol SHARE = Symbol.of("w", "share", Kind.SHARE);
    static final Symbol LINE = Symbol.of("m", "line-mass", Kind.MASS);
    static final Symbol BATCH = Symbol.of("M", "batch-mass", Kind.MASS);
    static final Symbol SHOWN = Symbol.of("n", "line-mass", Kind.MASS);

    static Working example() {
        return Working.of(Phrase.of("symbol.line-mass", "Glycerin"), r -> {
            var third = Subject.of("3", "Glycerin");
            Term w = r.given(SHARE, third, Ratio.parse("0.0251"), Source.written("2.510 %"));
            Term bulk = r.given(BATCH, Ratio.parse("400/3"), Source.published("A handbook", "table 2"));
            Term m = r.named(LINE, third, r.product(w, bulk));
            Term n = r.named(SHOWN, third, r.rounded(m, Rounding.toMultipleOf(Ratio.parse("0.1"))));
            r.holds(r.absolute(r.difference(n, m)), Comparison.AT_MOST, r.product(r.literal(Ratio.parse("0.01")), m));
            r.holds(r.root(r.product(n, m)), Comparison.EQUAL, m);
            r.note(() -> Phrase.of("symbol.share", "nothing"));
            return r.named(
                    Symbol.of("q", "line-mass", Kind.NUMBER),
                    r.quotient(
                            r.maximum(List.of(n, m)),
                            r.sum(List.of(r.difference(m, r.sum(n, n)), bulk, r.root(r.product(n, n))))));
        });
    }

    @Test
    void everyPrintedLineIsTrue() {
        assertSelfChecking(example());
    }
}
