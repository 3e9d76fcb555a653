package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;

/** Where a simulation begins, ends and breaks off. */
class MonteCarloEdgesTest {

    private static final List<InputQuantity<Dimensionless>> INPUTS = List.of(Plain.normal(0, 1));

    private static MonteCarlo<Dimensionless> simulation(ToDoubleFunction<double[]> model) {
        return Plain.simulation(INPUTS, model);
    }

    private static List<Long> heard(MonteCarlo<Dimensionless> simulation) throws InterruptedException {
        List<Long> heard = new ArrayList<>();
        simulation.run((done, most) -> heard.add(done));
        return heard;
    }

    @Test
    void the_last_block_that_fits_is_run() throws InterruptedException {
        MonteCarlo<Dimensionless> unsettled = simulation(x -> x[0]).withSignificantDigits(4);
        assertThat(heard(unsettled.withMostTrials(30_000))).containsExactly(10_000L, 20_000L, 30_000L);
        assertThat(heard(unsettled.withMostTrials(29_999))).containsExactly(10_000L, 20_000L);
    }

    /** JCGM 101:2008, 7.9.4 b): blocks of 100 / (1 - p) trials if that is more than 10 000. */
    @Test
    void a_high_probability_takes_larger_blocks() throws InterruptedException {
        List<Long> heard = heard(simulation(x -> x[0]).withProbability(0.9975).withMostTrials(80_010));
        assertThat(heard.get(0)).isBetween(40_000L, 40_001L);
        assertThat(heard).hasSize(2);
    }

    /** 100 / (1 - p) is 51 200 exactly, and two such blocks are needed. */
    @Test
    void two_blocks_must_fit() throws InterruptedException {
        MonteCarlo<Dimensionless> rare = simulation(x -> x[0]).withProbability(1 - 1.0 / 512);
        assertThat(heard(rare.withMostTrials(102_400))).containsExactly(51_200L, 102_400L);
        MonteCarlo<Dimensionless> tooFew = rare.withMostTrials(102_399);
        assertThatThrownBy(tooFew::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("51200")
                .hasMessageContaining("102399");
    }

    @Test
    void bounds_of_the_settings_are_served_and_what_lies_beyond_is_refused() {
        MonteCarlo<Dimensionless> any = simulation(x -> x[0]);
        assertThatCode(() -> any.withMostTrials(20_000)).doesNotThrowAnyException();
        assertThatThrownBy(() -> any.withMostTrials(19_999)).hasMessageContaining("newMost is 19999");
        assertThatCode(() -> any.withMostTrials(MonteCarlo.TRIALS_LIMIT)).doesNotThrowAnyException();
        assertThatThrownBy(() -> any.withMostTrials(MonteCarlo.TRIALS_LIMIT + 1))
                .hasMessageContaining("newMost");
        assertThatThrownBy(() -> any.withProbability(0)).hasMessageContaining("newProbability is 0");
        assertThatCode(() -> any.withSignificantDigits(1)).doesNotThrowAnyException();
        assertThatThrownBy(() -> any.withSignificantDigits(5)).hasMessageContaining("newDigits is 5");
    }

    @Test
    void a_simulation_on_other_threads_reports_and_passes_on_what_went_wrong() throws InterruptedException {
        ExecutorService executor = Executors.newFixedThreadPool(2);
        try {
            List<Long> heard = new ArrayList<>();
            simulation(x -> x[0])
                    .withSignificantDigits(4)
                    .withMostTrials(30_000)
                    .run(executor, 2, (done, most) -> heard.add(done));
            assertThat(heard).containsExactly(10_000L, 20_000L, 30_000L);
            assertThatThrownBy(() -> simulation(x -> Double.NaN).run(executor, 1, (done, most) -> {}))
                    .isInstanceOf(ArithmeticException.class);
            assertThatThrownBy(() -> simulation(x -> {
                                throw new AssertionError("from the model");
                            })
                            .run(executor, 1, (done, most) -> {}))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("from the model");
            assertThatThrownBy(() -> simulation(x -> x[0]).run(executor, 0, (done, most) -> {}))
                    .hasMessageContaining("blocksAtOnce is 0");
        } finally {
            executor.shutdownNow();
        }
    }

    /** As many blocks at a time as were asked for, and no more work than that at once. */
    @Test
    void blocks_are_handed_over_in_waves() throws InterruptedException {
        List<Integer> waves = new ArrayList<>();
        ExecutorService executor = new ThreadPoolExecutor(2, 2, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>()) {
            @Override
            public <T> List<Future<T>> invokeAll(Collection<? extends Callable<T>> tasks) throws InterruptedException {
                waves.add(tasks.size());
                return super.invokeAll(tasks);
            }
        };
        try {
            simulation(x -> x[0])
                    .withSignificantDigits(4)
                    .withMostTrials(50_000)
                    .run(executor, 3, (done, most) -> {});
        } finally {
            executor.shutdownNow();
        }
        assertThat(waves).containsExactly(3, 3);
    }

    @Test
    void an_interrupted_thread_draws_nothing() {
        AtomicInteger calls = new AtomicInteger();
        MonteCarlo<Dimensionless> counted = simulation(x -> calls.incrementAndGet());
        Thread.currentThread().interrupt();
        assertThatThrownBy(counted::run).isInstanceOf(InterruptedException.class);
        assertThat(calls).hasValue(0);
    }

    @Test
    void an_interruption_is_noticed_within_a_block() {
        AtomicInteger calls = new AtomicInteger();
        MonteCarlo<Dimensionless> interrupted = simulation(x -> {
            if (calls.incrementAndGet() == 10) {
                Thread.currentThread().interrupt();
            }
            return x[0];
        });
        assertThatThrownBy(interrupted::run).isInstanceOf(InterruptedException.class);
        assertThat(calls.get()).isBetween(10, 9_999);
        assertThat(Thread.interrupted()).isFalse();
    }
}
