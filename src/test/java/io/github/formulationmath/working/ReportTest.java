package io.github.formulationmath.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Headings, paragraphs and tables as plain text, Markdown and HTML. */
class ReportTest {

    private static final Report REPORT = Report.titled("Trial & error")
            .heading("Masses")
            .paragraph("All within 1 %.")
            .table(List.of("line", "mass"), List.of(List.of("Wax", "40 g"), List.of("Oil", "159 g")));

    @Test
    void plain_text_reads_from_top_to_bottom() {
        assertThat(REPORT.text())
                .startsWith("Trial & error\n")
                .containsSubsequence(
                        "Masses\n", "All within 1 %.\n", "Wax\n", "mass: 40 g\n", "Oil\n", "mass: 159 g\n");
        assertThat(REPORT).hasToString(REPORT.text());
        assertThat(Report.titled("Alone").text()).isEqualTo("Alone\n");
    }

    @Test
    void markdown_marks_title_heading_and_table() {
        assertThat(REPORT.markdown())
                .startsWith("# Trial &amp; error\n")
                .containsSubsequence("## Masses", "All within 1 %", "| line | mass |", "| Wax | 40 g |");
    }

    @Test
    void html_is_a_whole_page_with_its_signs_escaped() {
        assertThat(REPORT.html(Wording.english()))
                .startsWith("<!DOCTYPE html>")
                .contains("lang=\"en\"")
                .containsSubsequence(
                        "<title>Trial &amp; error</title>",
                        "<h1>Trial &amp; error</h1>",
                        "<h2>Masses</h2>",
                        "<p>All within 1 %.</p>",
                        "<table",
                        "Wax",
                        "40 g")
                .endsWith("</html>\n");
    }

    @Test
    void a_row_has_as_many_cells_as_there_are_columns() {
        assertThatThrownBy(() -> REPORT.table(List.of("a", "b"), List.of(List.of("only one"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has 1 cells for 2 columns");
        assertThat(REPORT.table(List.of("a"), List.of()).text()).startsWith(REPORT.text());
    }
}
