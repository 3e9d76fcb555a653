package io.github.formulationmath.falsefine;

/**
 * A formula that exceeds a cap, beside one of as many lines that does not.
 *
 * @param own the share of the substance in the formula that is asked about, of 10⁴
 * @param other what stands in its place in the other formula, of 10⁴
 * @param cap of 10⁴
 * @param sameNames whether the other formula has the same names
 */
record ForeignCase(long own, long other, long cap, boolean sameNames) implements Proven {

    @Override
    public boolean holds() {
        return own > cap && other != own;
    }

    static ForeignCase any(Dice dice) {
        long cap = dice.between(50L, 300L);
        long own = cap + dice.between(10L, 500L);
        long other = dice.between(10L, dice.oneIn(3) ? 900 : cap - 10);
        return new ForeignCase(own, other == own ? own + 1 : other, cap, dice.oneIn(2));
    }
}
