package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.sheet.BatchSheet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Values survive being written and read, other threads, and other languages. */
class PlanSerializationTest {

    private static final String SHEET = BatchSheet.of(BatchSheetExample.plan()).print(Format.TEXT);

    @Test
    void formula_batch_and_plan_come_back_equal() throws IOException, ClassNotFoundException {
        Formula formula = BatchSheetExample.handCream();
        assertThat(copy(formula)).isEqualTo(formula);
        WeighingPlan plan = BatchSheetExample.plan();
        WeighingPlan back = copy(plan);
        assertThat(BatchSheet.of(back).print(Format.TEXT)).isEqualTo(SHEET);
        assertThat(back).isEqualTo(plan).hasSameHashCodeAs(plan);
        assertThat(back.batch()).isEqualTo(plan.batch());
        assertThat(back.lines()).isEqualTo(plan.lines());
        assertThat(back.batch().lines()).isEqualTo(plan.batch().lines());
        assertThat(back).isNotEqualTo(WeighingPlan.of(plan.batch(), plan.bench().balance()));
        assertThat(back.lines().get(0)).isNotEqualTo(plan.lines().get(1));
        back.lines().forEach(line -> line.working().check());
        double[] divisions = new double[9];
        BulkPlanner planner = copy(BulkPlanner.of(List.of(formula)));
        assertThat(planner.plan(0, plan.bench().balance().divisions(plan.batch().mass()), divisions))
                .isEqualTo(WeighingPlan.of(plan.batch(), plan.bench().balance()).lines().stream()
                        .mapToLong(line -> line.divisions().longNumerator())
                        .sum());
    }

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

    @SuppressWarnings("unchecked")
    private static <T> T copy(T value) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }
}
