package io.github.formulationmath.falsefine;

/**
 * Two caps that cannot both be kept, and one line that may still be added to, which holds some of the one capped substance:
 * the more of it, the less of the other. The best is where the larger of the two shares, each over its cap, is least.
 *
 * @param water steps in the pot that hold neither
 * @param glycerin steps of the substance that is too much
 * @param preserved steps of the line that may be added to
 * @param strength what it holds of the preservative, of 10⁴
 * @param capGlycerin of 10⁴
 * @param capPreservative of 10⁴
 */
record BestCase(long water, long glycerin, long preserved, long strength, long capGlycerin, long capPreservative)
        implements Proven {

    private static final Exact WHOLE = Exact.of(10_000);

    /** Less of the one cap needs more than the other allows. */
    @Override
    public boolean holds() {
        Exact total = Exact.of(water + glycerin + preserved);
        Exact needed = Exact.of(glycerin * 10_000, capGlycerin).minus(total);
        Exact room = total.times(capPreservative)
                .minus(Exact.of(preserved * strength))
                .over(Exact.of(strength - capPreservative));
        return needed.isAbove(Exact.ZERO) && needed.isAbove(room);
    }

    /** The larger of the two shares over its cap, after so much more of the line. */
    Exact excess(Exact added) {
        Exact total = Exact.of(water + glycerin + preserved).plus(added);
        Exact one = Exact.of(glycerin).times(WHOLE).over(total.times(capGlycerin));
        Exact other = Exact.of(preserved).plus(added).times(strength).over(total.times(capPreservative));
        return one.max(other);
    }

    /** Whether something else than so much more is better: tried in hundredths of a step. */
    boolean isBeaten(Exact added) {
        Exact told = excess(added);
        long near = added.times(100).floor().longValueExact();
        for (long at : new long[] {0, near - 100, near - 1, near, near + 1, near + 100, near / 2, near * 2, near * 4}) {
            if (at >= 0 && told.isAbove(excess(Exact.of(at, 100)))) {
                return true;
            }
        }
        return false;
    }

    static BestCase any(Dice dice) {
        while (true) {
            long strength = dice.between(10L, 100L);
            BestCase made = new BestCase(
                    dice.between(100L, 700L),
                    dice.between(200L, 500L),
                    dice.between(100L, 600L),
                    strength,
                    dice.between(1500L, 4000L),
                    dice.between(1L, strength - 1));
            if (made.holds()) {
                return made;
            }
        }
    }
}
