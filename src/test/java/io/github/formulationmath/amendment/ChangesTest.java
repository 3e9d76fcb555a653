package io.github.formulationmath.amendment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.formula.Substance;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A file of changes is read strictly. */
class ChangesTest {

    @Test
    void a_file_of_changes_is_read_strictly() throws IOException {
        String head = "act,later,kind,tag,placed_until,available_until,entries,names,cas_numbers,what\n";
        Amendments own = Amendments.read(Amendments.FILE.read(
                "mine",
                new StringReader(head + "House rule,yes,restricted,SEEN,2025-01-31,2025-02-28,,Water,,less\n")));
        assertThat(own.of(Substance.of("WATER"))).hasSize(1);
        for (String wrong : List.of(
                "House,maybe,restricted,SEEN,2025-01-31,2025-02-28,,Water,,less\n",
                "House,yes,restricted,HEARD,2025-01-31,2025-02-28,,Water,,less\n",
                "House,yes,restricted,SEEN,,2025-02-28,,Water,,less\n",
                "House,yes,restricted,SEEN,2025-03-31,2025-02-28,,Water,,less\n",
                "House,yes,restricted,SEEN,2025-01-31,2025-02-28,,,,less\n")) {
            assertThatThrownBy(() -> Amendments.read(Amendments.FILE.read("mine", new StringReader(head + wrong))))
                    .as(wrong)
                    .isInstanceOf(CsvException.class)
                    .hasMessageContaining("mine");
        }
    }
}
