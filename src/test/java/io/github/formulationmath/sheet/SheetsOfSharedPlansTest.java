package io.github.formulationmath.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.plan.WeighingPlan;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A plan that many threads or languages share prints one sheet. */
class SheetsOfSharedPlansTest {

    private static final String SHEET = BatchSheet.of(BatchSheetExample.plan()).print(Format.TEXT);

    @Test
    void shared_values_may_be_read_by_many_threads() throws InterruptedException {
        WeighingPlan plan = BatchSheetExample.plan();
        ExecutorService threads = Executors.newFixedThreadPool(16);
        var sheets = IntStream.range(0, 64)
                .mapToObj(i -> threads.submit(() -> BatchSheet.of(plan).print(Format.TEXT)))
                .toList();
        threads.shutdown();
        assertThat(threads.awaitTermination(1, TimeUnit.MINUTES)).isTrue();
        assertThat(sheets).allSatisfy(sheet -> assertThat(sheet.get()).isEqualTo(SHEET));
    }

    @Test
    @Tag("locale")
    void the_locale_changes_nothing() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "fr-FR", "ar-EG", "hi-IN-u-nu-deva", "tr-TR"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(BatchSheet.of(BatchSheetExample.plan()).print(Format.TEXT))
                        .as(tag)
                        .isEqualTo(SHEET)
                        .contains("289.842 g");
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
