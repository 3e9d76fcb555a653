package io.github.formulationmath.soap;

/** What a range rests on, and so what a statement built on it may say. */
public enum Evidence {
    /** The range of a standard, and somebody states that the lot conforms to it: every lot lies inside. */
    CONFORMS_TO_STANDARD(true),
    /** A maximum error that is guaranteed. */
    MAXIMUM_ERROR(true),
    /**
     * A certificate with its expanded uncertainty: the interval covers the value with a probability, so that nothing built
     * on it holds "for certain", only within the stated coverage.
     */
    COVERAGE_INTERVAL(false);

    private final boolean bounded;

    Evidence(boolean bounded) {
        this.bounded = bounded;
    }

    /**
     * Whether the value is sure to lie inside.
     *
     * @return false for an interval of coverage
     */
    public boolean isBounded() {
        return bounded;
    }
}
