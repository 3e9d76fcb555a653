package io.github.formulationmath.json;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BatchRecordTest;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Instant;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong in a document is told with the place of the one thing that is wrong, not of the document. */
class PlacesInDocumentsTest {

    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private static String document(WeighingMethod method) {
        Readings readings = method == WeighingMethod.CUMULATIVE
                ? Lotion.readings(Lotion.PLAN, method, "316.1", "328.2", "376.3", "396.4", "400.5")
                : Lotion.readings(Lotion.PLAN, method, "316.1", "12.2", "48.3", "20.4", "4.5");
        return Json.records()
                .write(BatchRecord.of(
                                BatchRecordTest.CODE,
                                readings,
                                Tolerances.of("5 %").withPhase("oil", "4 %"))
                        .with(BenchEntry.addition(LineAddition.of(line("Glycerin"), g("1.7")))
                                .at(NOON.plusSeconds(1)))
                        .with(BenchEntry.addition(LineAddition.of(line("Aqua"), g("1.8")))
                                .at(NOON.plusSeconds(2)))
                        .amended(Amendment.of("maker", NOON.plusSeconds(3), "first"))
                        .amended(Amendment.of("maker", NOON.plusSeconds(4), "second")));
    }

    @ParameterizedTest
    @CsvSource({
        "TARE_EACH, 12.2, 12.25, /readings/1",
        "TARE_EACH, 4.5, 4.55, /readings/4",
        "TARE_EACH, 48.3, 1900, /readings/2",
        "FROM_BOAT, 48.3, 3000, /readings/2",
        "CUMULATIVE, 396.4, 376.2, /readings/3",
        "CUMULATIVE, 400.5, 2400.5, /readings/4",
        "TARE_EACH, 1.7, 1.75, /entries/0",
        "TARE_EACH, 1.8, 1.85, /entries/1",
        "TARE_EACH, 1.8, 9000, /entries/1",
        "TARE_EACH, 2026-11-25T12:00:02Z, 2026-11-25T11:00:02Z, /entries/1",
        "TARE_EACH, 2026-11-25T12:00:04Z, 2026-11-25T11:00:04Z, /amendments/1"
    })
    void the_place_is_that_of_what_is_wrong(WeighingMethod method, String right, String wrong, String pointer) {
        String good = document(method);
        assertThat(Json.records().write(Json.records().read(good).value())).isEqualTo(good);
        String bad = good.replaceFirst(Pattern.quote("\"" + right + "\""), "\"" + wrong + "\"");
        Throwable thrown = catchThrowable(() -> Json.records().read(bad));
        assertThat(thrown).isInstanceOf(RecordFormatException.class);
        assertThat(((RecordFormatException) thrown).pointer())
                .as(thrown.getMessage())
                .isEqualTo(pointer);
        assertThat(thrown).hasMessageStartingWith(pointer + ": ");
    }
}
