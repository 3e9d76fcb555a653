package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.github.formulationmath.number.NumberTextException;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** In a chain of many lines, the refusal of one names it; and the text that it proposes is taken by that very line. */
class LineTextsTest {

    private static final String NAME = "Cetearyl Alcohol";

    private static final List<Consumer<String>> LINES = List.of(
            text -> Formula.inPercent("F").line(NAME, text),
            text -> Formula.inPercent("F").line(Ingredient.of(NAME), text),
            text -> Formula.inParts("F").line(NAME, text),
            text -> Formula.inMasses("F").line(NAME, text),
            text -> Ingredient.blend("Blend").part(NAME, text));

    @ParameterizedTest
    @ValueSource(
            strings = {"three", "", "0", "101 %", "-5 %", "-5 g", "0 %", "5 gr", "5 mL", "1,5 g", "1,5 %", "2.5.1 %"})
    void a_refusal_names_the_line(String wrong) {
        int refused = 0;
        for (Consumer<String> line : LINES) {
            Throwable thrown = catchThrowable(() -> line.accept(wrong));
            if (thrown == null) {
                continue;
            }
            refused++;
            assertThat(thrown).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(NAME);
            if (thrown instanceof NumberTextException e) {
                assertThat(e.text()).isEqualTo(wrong);
                assertThat(e.reason().toString()).doesNotContain(NAME);
                assertThat(e.remedies()).isNotEmpty();
                e.remedies()
                        .forEach(remedy -> assertThatCode(() -> line.accept(remedy))
                                .as("%s, told by %s", remedy, e.getMessage())
                                .doesNotThrowAnyException());
            }
        }
        assertThat(refused).isGreaterThanOrEqualTo(4);
    }
}
