package io.github.formulationmath.amendment;

/** What is asked of a product on a day: a maker places it on the market, a shop makes it available. */
public enum Dealing {
    /** The first supply, as a maker does it. */
    PLACING("placing on the market"),
    /** Any later supply, as a shop does it, of what was placed in time. */
    MAKING_AVAILABLE("making available");

    private final String words;

    Dealing(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
