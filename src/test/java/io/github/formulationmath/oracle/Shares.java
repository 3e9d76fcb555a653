package io.github.formulationmath.oracle;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** Sharing out by largest remainder, as one would do it by hand: look for the largest remainder, again and again. */
public final class Shares {

    private Shares() {}

    public static List<BigInteger> largestRemainder(List<Rational> quotas) {
        Rational left = Rational.of(0, 1);
        List<BigInteger> seats = new ArrayList<>();
        List<Rational> rests = new ArrayList<>();
        for (Rational quota : quotas) {
            seats.add(quota.floor());
            rests.add(quota.subtract(Rational.whole(quota.floor())));
            left = left.add(rests.get(rests.size() - 1));
        }
        for (int given = 0; given < left.top().intValueExact(); given++) {
            int best = 0;
            for (int i = 1; i < rests.size(); i++) {
                if (rests.get(i).compare(rests.get(best)) > 0) {
                    best = i;
                }
            }
            seats.set(best, seats.get(best).add(BigInteger.ONE));
            rests.set(best, Rational.of(-1, 1));
        }
        return seats;
    }
}
