package io.github.formulationmath.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** What every document keeps. */
final class JsonChecks {

    private JsonChecks() {}

    /** Equal, with nothing that is not known, and to the letter when it is written again. */
    static <T> T comesBack(Json<T> json, T value) {
        String text = json.write(value);
        Json.Read<T> read = json.read(text);
        assertThat(read.value()).isEqualTo(value);
        assertThat(read.unknownFields()).isEmpty();
        assertThat(json.write(read.value())).isEqualTo(text);
        return read.value();
    }

    /** For a reason, and in a message that somebody can read. */
    static void refused(Json<?> json, String text, String reason) {
        assertThatThrownBy(() -> json.read(text))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining(reason)
                .satisfies(e -> assertThat(e.getMessage().length()).isLessThan(2000));
    }
}
