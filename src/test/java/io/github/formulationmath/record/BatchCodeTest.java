package io.github.formulationmath.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

final class BatchCodeTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** GRid, the Global Release Identifier, which uses ISO 7064 MOD 37,36: A1-2425G-ABC1234002-M (from memory). */
    @Test
    void the_check_character_of_a_published_example() {
        assertThat(CheckCharacter.of("A12425GABC1234002")).isEqualTo('M');
    }

    @Test
    void a_code_is_read_back() {
        BatchCode code = BatchCode.of("OATLOT", DAY, 1);
        assertThat(code.toString()).matches("OATLOT-20261125-01-[0-9A-Z]");
        assertThat(BatchCode.parse(code.toString())).isEqualTo(code).hasSameHashCodeAs(code);
        assertThat(BatchCode.of("X", DAY, 123).toString()).startsWith("X-20261125-123-");
        assertThat(code).isLessThan(BatchCode.of("OATLOT", DAY, 2));
    }

    @Test
    void every_single_wrong_character_and_every_exchange_of_neighbours_is_found() {
        String body = "OATLOT2026112501";
        String alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
        char check = CheckCharacter.of(body);
        int missed = 0;
        for (int i = 0; i < body.length(); i++) {
            for (char c : alphabet.toCharArray()) {
                if (c != body.charAt(i)) {
                    String wrong = body.substring(0, i) + c + body.substring(i + 1);
                    assertThat(CheckCharacter.of(wrong)).isNotEqualTo(check);
                }
            }
            if (i > 0 && body.charAt(i) != body.charAt(i - 1)) {
                String exchanged =
                        body.substring(0, i - 1) + body.charAt(i) + body.charAt(i - 1) + body.substring(i + 1);
                missed += CheckCharacter.of(exchanged) == check ? 1 : 0;
            }
        }
        assertThat(missed).isZero();
    }

    @Test
    void what_is_no_code_is_refused() {
        String right = BatchCode.of("OATLOT", DAY, 1).toString();
        char wrong = right.charAt(right.length() - 1) == 'A' ? 'B' : 'A';
        assertThatThrownBy(() -> BatchCode.parse(right.substring(0, right.length() - 1) + wrong))
                .hasMessageContaining("check character would be " + right.charAt(right.length() - 1));
        assertThatThrownBy(() -> BatchCode.parse("oatlot-20261125-01-A")).hasMessageContaining("looks like");
        assertThatThrownBy(() -> BatchCode.parse("OATLOT-20261325-01-A")).hasMessageContaining("no day 20261325");
        assertThatThrownBy(() -> BatchCode.parse("x".repeat(100_000))).hasMessageContaining("…");
        assertThatThrownBy(() -> BatchCode.of("OAT LOT", DAY, 1)).hasMessageContaining("OAT LOT");
        assertThatThrownBy(() -> BatchCode.of("", DAY, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BatchCode.of("OAT", DAY, 0)).hasMessageContaining("0");
        assertThatThrownBy(() -> BatchCode.of("OAT", LocalDate.of(999, 1, 1), 1))
                .hasMessageContaining("0999");
        assertThatThrownBy(() -> BatchCode.of("Ö", DAY, 1)).hasMessageContaining("Ö");
    }
}
