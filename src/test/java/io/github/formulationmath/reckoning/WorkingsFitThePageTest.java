package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.document.PageWidth;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.RandomWorkings;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.support.Workings;
import java.math.BigInteger;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** A working as plain text fits a page of 80 columns, whatever the names and numbers. */
class WorkingsFitThePageTest {

    @Property(tries = 60)
    void no_line_of_text_is_wider_than80_columns(@ForAll long seed, @ForAll String name) {
        Working named = Working.of(
                Phrase.of("question.line-mass", name),
                r -> r.given(Workings.LINE, Subject.of("1", name), Ratio.ONE, Source.written(name)));
        for (Working working : List.of(RandomWorkings.of(seed), named)) {
            assertThat(working.document(Style.everything()).print(Format.TEXT).split("\n"))
                    .allMatch(line -> PageWidth.of(line) <= 80);
        }
    }

    @Test
    void huge_numbers_fit_the_page() {
        Ratio huge = Ratio.of(
                BigInteger.TEN.pow(400).add(BigInteger.ONE),
                BigInteger.valueOf(7).pow(200));
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(
                        Workings.BATCH,
                        r.product(r.given(Workings.LINE, Subject.of("1", "x"), huge, Source.user()), r.literal(huge))));
        WorkingAssertions.assertSelfChecking(working);
        assertThat(working.document().print(Format.TEXT).split("\n")).allMatch(line -> PageWidth.of(line) <= 80);
    }
}
