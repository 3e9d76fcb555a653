package io.github.formulationmath.oracle;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Display divisions worked out with whole numbers of any size alone: shares a_i of a sum A, batch P/Q divisions. Shares no
 * code with the library, and takes another road: halves are compared after doubling, remainders stay numerators.
 */
public final class WholeDivisions {

    private final List<BigInteger> products = new ArrayList<>();
    private final BigInteger whole;

    /** Shares a_i of their sum; the batch is p/q divisions. */
    public WholeDivisions(long[] shares, BigInteger p, BigInteger q) {
        BigInteger sum = BigInteger.ZERO;
        for (long share : shares) {
            sum = sum.add(BigInteger.valueOf(share));
            products.add(BigInteger.valueOf(share).multiply(p));
        }
        whole = sum.multiply(q);
    }

    /** Each line rounded by itself, ties to even. */
    public BigInteger[] independent() {
        return products.stream().map(this::halfEven).toArray(BigInteger[]::new);
    }

    /** Floors, and one more for the largest remainders, so that the sum is the rounded batch. */
    public BigInteger[] closed() {
        BigInteger[] shown = products.stream().map(x -> x.divide(whole)).toArray(BigInteger[]::new);
        BigInteger[] rests = products.stream().map(x -> x.mod(whole)).toArray(BigInteger[]::new);
        BigInteger left = total().subtract(sum(shown));
        for (int given = 0; given < left.intValueExact(); given++) {
            int best = 0;
            for (int i = 1; i < rests.length; i++) {
                if (rests[i].compareTo(rests[best]) > 0) {
                    best = i;
                }
            }
            shown[best] = shown[best].add(BigInteger.ONE);
            rests[best] = BigInteger.ONE.negate();
        }
        return shown;
    }

    /** Each line but one rounded by itself, that one takes the rest. */
    public BigInteger[] restTo(int taker) {
        BigInteger[] shown = independent();
        shown[taker] = BigInteger.ZERO;
        shown[taker] = total().subtract(sum(shown));
        return shown;
    }

    /** The whole batch rounded, ties to even. */
    public BigInteger total() {
        return halfEven(products.stream().reduce(BigInteger.ZERO, BigInteger::add));
    }

    /** How many lines lie exactly half-way between two divisions. */
    public int ties() {
        return (int) products.stream()
                .filter(x -> x.mod(whole).shiftLeft(1).equals(whole))
                .count();
    }

    private BigInteger halfEven(BigInteger x) {
        BigInteger floor = x.divide(whole);
        int half = x.mod(whole).shiftLeft(1).compareTo(whole);
        return half > 0 || half == 0 && floor.testBit(0) ? floor.add(BigInteger.ONE) : floor;
    }

    private static BigInteger sum(BigInteger[] numbers) {
        return Arrays.stream(numbers).reduce(BigInteger.ZERO, BigInteger::add);
    }
}
