package io.github.formulationmath.reckoning;

import static io.github.formulationmath.support.HtmlChecks.assertAccessible;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.reckoning.Style.Depth;
import io.github.formulationmath.support.Workings;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlPageTest {

    @Tag("long")
    @ParameterizedTest
    @EnumSource(Depth.class)
    void pages_can_be_read_by_everybody(Depth depth) {
        Style style = Style.steps().with(depth);
        assertAccessible(Workings.lineMass().document(style).print(Format.HTML));
        assertAccessible(Workings.everything().document(style).print(Format.HTML));
        assertAccessible(Workings.total(60).document(style).print(Format.HTML));
        assertAccessible(Workings.hostile().document(style).print(Format.HTML));
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
    void the_check_finds_what_is_wrong(String change) {
        String[] parts = change.split(",", 2);
        String page = Workings.lineMass().document().print(Format.HTML).replace(parts[0], parts[1]);
        assertThatThrownBy(() -> assertAccessible(page)).isInstanceOf(AssertionError.class);
    }
}
