package io.github.formulationmath.working;

import static io.github.formulationmath.support.HtmlChecks.assertAccessible;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlPageTest {

    @Tag("long")
    @ParameterizedTest
    @EnumSource(Depth.class)
    void pagesCanBeReadByEverybody(Depth depth) {
        WorkingFormat format = WorkingFormat.htmlPage().with(depth);
        assertAccessible(format.format(Workings.lineMass()));
        assertAccessible(format.format(Workings.everything()));
        assertAccessible(format.format(Workings.total(60)));
        assertAccessible(format.format(Workings.hostile()));
    }

    @Tag("long")
    @ParameterizedTest
    @ValueSource(
            strings = {
                "<html lang=\"en\">,<html>",
                "h2>,h3>",
                "<title>How much of Glycerin goes into the batch?</title>,<title></title>",
                "scope=\"row\",",
                "math { font-size,h1 { color: #999; font-size",
                "<main>,<main><img src=\"x.png\"/>",
                "<mn>,<mn bgcolor='x'>",
                "</h1>,</h1><script>1</script>"
            })
    void theCheckFindsWhatIsWrong(String change) {
        String[] parts = change.split(",", 2);
        String page = WorkingFormat.htmlPage().format(Workings.lineMass()).replace(parts[0], parts[1]);
        assertThatThrownBy(() -> assertAccessible(page)).isInstanceOf(AssertionError.class);
    }
}
