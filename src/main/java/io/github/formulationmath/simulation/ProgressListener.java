package io.github.formulationmath.simulation;

/**
 * Hears how far a long computation is. Called on the thread that started the computation.
 *
 * <p>Example: {@code simulation.run((done, most) -> bar.setValue((int) (100 * done / most)))}.
 */
@FunctionalInterface
public interface ProgressListener {

    /**
     * Some work is done.
     *
     * @param done units of work done so far; never less than the time before
     * @param most units of work after which the computation ends in any case; it may end before
     */
    void progressed(long done, long most);
}
