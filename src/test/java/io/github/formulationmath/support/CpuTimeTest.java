package io.github.formulationmath.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class CpuTimeTest {

    private static final Duration SHORT = Duration.ofMillis(200);

    @Test
    void work_that_only_waits_for_its_turn_is_let_be() {
        assertThat(CpuTime.assertWithin(SHORT, () -> {
                    Thread.sleep(400);
                    return "done";
                }))
                .isEqualTo("done");
    }

    @Test
    void work_that_takes_too_much_fails_where_it_is() {
        assertThatThrownBy(() -> CpuTime.assertWithin(SHORT, CpuTimeTest::busy))
                .isInstanceOf(AssertionError.class)
                .hasMessage("not done within PT0.2S of the processor")
                .satisfies(error -> assertThat(error.getStackTrace())
                        .anyMatch(frame -> frame.getMethodName().equals("busy")));
    }

    @Test
    void work_that_waits_for_ever_fails_too() {
        assertThatThrownBy(() -> CpuTime.assertWithin(Duration.ofMillis(50), () -> Thread.sleep(60_000)))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void what_work_throws_is_thrown() {
        assertThatThrownBy(() -> CpuTime.assertWithin(SHORT, () -> {
                    throw new IllegalStateException("no");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no");
        assertThatThrownBy(() -> CpuTime.assertWithin(SHORT, () -> {
                    throw new IOException("no");
                }))
                .hasCauseInstanceOf(IOException.class);
    }

    private static int busy() {
        int count = 0;
        while (!Thread.interrupted()) {
            count++;
        }
        return count;
    }
}
