package io.github.formulationmath.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Draws every picture, and finds the numbers under it unchanged since the picture in the documentation was drawn. */
class FiguresTest {

    private static final Path DRAWN = Path.of("target", "figures");
    private static final Path DOCUMENTED = Path.of("docs", "figures");

    @BeforeAll
    static void withoutAScreen() {
        System.setProperty("java.awt.headless", "true");
    }

    @ParameterizedTest
    @MethodSource("io.github.formulationmath.figures.Figures#all")
    void the_picture_in_the_documentation_shows_today_s_numbers(Figure figure) throws IOException {
        Figures.writeNumbers(figure, DRAWN);
        assertThat(DOCUMENTED.resolve(figure.name() + ".csv"))
                .as("draw the figures again with the class Figures if the change is meant")
                .hasSameTextualContentAs(DRAWN.resolve(figure.name() + ".csv"));
        assertThat(DOCUMENTED.resolve(figure.name() + ".vl.json"))
                .hasSameTextualContentAs(DRAWN.resolve(figure.name() + ".vl.json"));
        assertThat(DOCUMENTED.resolve(figure.name() + ".svg"))
                .content(StandardCharsets.UTF_8)
                .contains("viewBox=", "<title>" + figure.title() + "</title>", "<desc>");
        assertThat(DOCUMENTED.resolve(figure.name() + ".png")).isNotEmptyFile();
    }

    @ParameterizedTest
    @MethodSource("io.github.formulationmath.figures.Figures#all")
    void the_picture_can_be_drawn(Figure figure) throws IOException {
        assumeTrue(canWrite(), "this machine has no fonts to draw with");
        Figures.write(figure, DRAWN);
        var picture = ImageIO.read(DRAWN.resolve(figure.name() + ".png").toFile());
        assertThat(picture.getWidth()).isEqualTo(figure.width());
        assertThat(Files.readString(DRAWN.resolve(figure.name() + ".svg")))
                .contains("<svg", "<title>", "<desc>", "</svg>");
    }

    /** Each column that is drawn is one of the table, and each picture says what it draws. */
    @ParameterizedTest
    @MethodSource("io.github.formulationmath.figures.Figures#all")
    void the_picture_as_data_names_columns_of_its_table(Figure figure) throws IOException {
        JsonNode all = new ObjectMapper().readTree(figure.grammar().json(figure));
        List<String> drawn = all.findValuesAsText("field");

        assertThat(all.get("$schema").asText()).endsWith("/vega-lite/v5.json");
        assertThat(all.get("layer")).isNotEmpty();
        assertThat(drawn).isNotEmpty();
        assertThat(figure.columns().split(","))
                .containsAll(
                        drawn.stream().map(field -> field.replace("\\.", ".")).toList());
        assertThat(figure.subtitles()).isNotEmpty();
        assertThat(figure.description()).hasSizeGreaterThan(100);
    }

    /** A machine without a font library, as many servers are, makes Java fail in one of these ways. */
    private static boolean canWrite() {
        try {
            return new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
                            .createGraphics()
                            .getFontMetrics()
                            .stringWidth("g")
                    > 0;
        } catch (LinkageError | InternalError | RuntimeException e) {
            return false;
        }
    }
}
