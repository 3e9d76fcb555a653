package io.github.formulationmath.oracle;

import java.math.BigInteger;
import java.util.BitSet;
import java.util.Optional;

/**
 * Smallest batches by looking at every candidate, in whole numbers, sharing nothing with the main code. A formula is its
 * whole parts a_1 … a_k, the tolerance a fraction p/q, sizes are counted in divisions of the display.
 */
public final class BatchOracle {

    private final long[] parts;
    private final long whole;
    private final long p;
    private final long q;

    /** A formula in whole parts and one tolerance for all of its lines. */
    public BatchOracle(long[] parts, long p, long q) {
        this.parts = parts.clone();
        long sum = 0;
        for (long part : parts) {
            sum += part;
        }
        this.whole = sum;
        this.p = p;
        this.q = q;
    }

    /** Does the displayed number, ties to even, stay within tolerance for every line of a batch of num/den divisions? */
    public boolean roundingPasses(long num, long den) {
        for (long part : parts) {
            long a = Math.multiplyExact(part, num);
            long b = Math.multiplyExact(whole, den);
            long shown = halfEven(a, b);
            // |shown − a/b| ≤ (p/q)·(a/b)
            long miss = Math.multiplyExact(q, Math.abs(Math.subtractExact(Math.multiplyExact(shown, b), a)));
            if (miss > Math.multiplyExact(p, a)) {
                return false;
            }
        }
        return true;
    }

    private static long halfEven(long a, long b) {
        long floor = a / b;
        long twice = 2 * (a % b);
        return twice > b || twice == b && floor % 2 == 1 ? floor + 1 : floor;
    }

    /** The smallest window start of any line at which every line passes, as {num, den}; tries all up to a size. */
    public long[] smallestRounding(long largest) {
        long[] best = null;
        for (long part : parts) {
            // n·whole·q / (part·(q + p))
            long den = part * (q + p);
            for (long n = 1; n * whole * q <= largest * den; n++) {
                long num = n * whole * q;
                boolean better = best == null || Math.multiplyExact(num, best[1]) < Math.multiplyExact(best[0], den);
                if (better && roundingPasses(num, den)) {
                    best = new long[] {num, den};
                }
            }
        }
        return best == null ? new long[0] : best;
    }

    /** Are there whole n that add up to a total, each with |n/total − w| ≤ τ·w whatever the readings' errors en/ed do? */
    public boolean madePasses(int total, long en, long ed) {
        BitSet sums = new BitSet();
        sums.set(0);
        for (int i = 0; i < parts.length; i++) {
            BitSet next = new BitSet();
            for (int n = 0; n <= total; n++) {
                if (shareStaysWithin(i, n, total, en, ed)) {
                    for (int s = sums.nextSetBit(0); s >= 0 && s + n <= total; s = sums.nextSetBit(s + 1)) {
                        next.set(s + n);
                    }
                }
            }
            sums = next;
        }
        return sums.get(total);
    }

    /** Tries every corner of the box of errors: each reading off by −e or +e. */
    private boolean shareStaysWithin(int line, long n, long total, long en, long ed) {
        int corners = en == 0 ? 1 : 1 << parts.length;
        for (int corner = 0; corner < corners; corner++) {
            long mass = n * ed;
            long sum = total * ed;
            for (int i = 0; i < parts.length && en != 0; i++) {
                long off = (corner >> i & 1) == 1 ? en : -en;
                sum += off;
                mass += i == line ? off : 0;
            }
            // |mass/sum − part/whole| ≤ (p/q)·part/whole
            if (sum <= 0 || q * Math.abs(mass * whole - parts[line] * sum) > p * parts[line] * sum) {
                return false;
            }
        }
        return true;
    }

    /** The smallest total that passes, or none up to a limit. */
    public Optional<Integer> smallestMade(int limit, long en, long ed) {
        for (int total = 1; total <= limit; total++) {
            if (madePasses(total, en, ed)) {
                return Optional.of(total);
            }
        }
        return Optional.empty();
    }

    /** The smallest total at which every line is a whole number of divisions. */
    public long smallestExact() {
        long total = 1;
        while (true) {
            boolean all = true;
            for (long part : parts) {
                all &= BigInteger.valueOf(part)
                                .multiply(BigInteger.valueOf(total))
                                .mod(BigInteger.valueOf(whole))
                                .signum()
                        == 0;
            }
            if (all) {
                return total;
            }
            total++;
        }
    }
}
