package io.github.formulationmath.json;

import static io.github.formulationmath.support.Lots.SHELF;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.ValueContract;
import org.junit.jupiter.api.Test;

/** A shelf through a file. */
final class JsonShelvesTest {

    @Test
    void a_shelf_comes_back_whole() throws Exception {
        assertThat(Json.shelves().read(Json.shelves().write(SHELF)).value()).isEqualTo(SHELF);
        assertThat(ValueContract.copy(SHELF)).isEqualTo(SHELF);
        assertThat(org.assertj.core.api.Assertions.catchThrowableOfType(
                                RecordFormatException.class,
                                () -> Json.shelves()
                                        .read(Json.shelves().write(SHELF).replace("2026-12-31", "31 December")))
                        .getMessage())
                .contains("/lots/3/useBy");
    }
}
