package io.github.formulationmath.planning;

/**
 * Hears how far a long search has come. Called now and then by the thread that searches; what it throws ends the search.
 */
@FunctionalInterface
public interface SearchListener {

    /**
     * The search has come this far.
     *
     * @param checks how many line checks were made
     * @param limit after how many the search gives up
     */
    void progressed(long checks, long limit);
}
