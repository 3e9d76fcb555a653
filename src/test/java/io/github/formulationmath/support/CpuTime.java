package io.github.formulationmath.support;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.function.ThrowingSupplier;

/**
 * What a piece of work may take, in time of the processor: a machine that has much else to do makes no test fail. By the clock
 * it may take {@value #CLOCK} times as long, so that what waits for ever ends, too.
 */
public final class CpuTime {

    private static final int CLOCK = 20;
    private static final long LOOK = 20;

    private CpuTime() {}

    /**
     * Asserts that work ends before it has used up its time.
     *
     * @param most the time of the processor
     * @param work the work, done in a thread of its own by itself
     */
    public static void assertWithin(Duration most, Executable work) {
        assertWithin(most, () -> {
            work.execute();
            return null;
        });
    }

    /**
     * As {@link #assertWithin(Duration, Executable)}, of work that comes to something.
     *
     * @param most the time of the processor
     * @param work the work, done in a thread of its own by itself
     * @param <T> what it comes to
     * @return what it came to
     */
    public static <T> T assertWithin(Duration most, ThrowingSupplier<T> work) {
        FutureTask<T> task = new FutureTask<>(() -> got(work));
        Thread thread = new Thread(task, "held to " + most);
        thread.setDaemon(true);
        thread.start();
        ThreadMXBean times = ManagementFactory.getThreadMXBean();
        long end = System.nanoTime() + most.multipliedBy(CLOCK).toNanos();
        while (true) {
            try {
                return task.get(LOOK, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                if (times.getThreadCpuTime(thread.getId()) > most.toNanos() || System.nanoTime() > end) {
                    throw tooLong(most, thread);
                }
            } catch (ExecutionException e) {
                throw rethrown(e.getCause());
            } catch (InterruptedException e) {
                thread.interrupt();
                throw new AssertionError(e);
            }
        }
    }

    private static <T> T got(ThrowingSupplier<T> work) throws Exception {
        try {
            return work.get();
        } catch (Exception | Error e) {
            throw e;
        } catch (Throwable e) {
            throw new AssertionError(e);
        }
    }

    private static AssertionError tooLong(Duration most, Thread thread) {
        AssertionError error = new AssertionError("not done within " + most + " of the processor");
        error.setStackTrace(thread.getStackTrace());
        thread.interrupt();
        return error;
    }

    private static RuntimeException rethrown(Throwable cause) {
        if (cause instanceof RuntimeException refused) {
            return refused;
        }
        throw cause instanceof Error error ? error : new AssertionError(cause);
    }
}
