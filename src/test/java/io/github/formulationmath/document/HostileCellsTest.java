package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.support.Cells;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells and sentences of any letters. */
class HostileCellsTest {

    /** A guard on numbers would make texts of them. */
    @ParameterizedTest
    @ValueSource(strings = {"-2", "-2 g", "+0.5 %", "+≈ 0.066667 g", "-1/3 g", "− 2 %"})
    void numbers_in_columns_of_numbers_stay_as_they_are(String number) throws IOException {
        assertThat(column(number)).isEqualTo(number);
        assertThat(column("-2+A1")).isEqualTo("'-2+A1");
    }

    private static String column(String number) throws IOException {
        Document document = Document.titled("t", "en")
                .table(List.of(Column.number("x"), Column.text("y")), List.of(List.of(number, "a")));
        return Cells.read(document.print(Format.CSV)).get(1).get(0);
    }

    @Test
    void sentences_are_wrapped_by_what_letters_take() {
        Document document =
                Document.titled("t", "zh").paragraph("水".repeat(15).concat(" ").repeat(9));
        assertThat(document.print(Format.TEXT).lines()).allMatch(line -> Cells.columnsByHand(line) <= 80);
    }

    @Test
    void a_title_that_would_end_the_style_does_not() {
        String page = Document.titled("</style>\"}<script>", "en").print(Format.HTML);

        assertThat(page.split("</style>", -1)).hasSize(2);
        assertThat(page).contains("content: \"\\00003c\\00002f\\000073").doesNotContain("<script>");
    }
}
