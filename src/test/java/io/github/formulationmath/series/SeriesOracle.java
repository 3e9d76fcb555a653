package io.github.formulationmath.series;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * A series of trials in whole numbers, solved by going through every set of versions, every base, every size of it and every size of each
 * version. Shares are whole percentages, masses are divisions of the display. Shares no code with the library.
 */
final class SeriesOracle {

    final int versions;
    final int lines;
    /** By version and line; line 0 takes the rest, 0 if a version lacks the line. */
    final int[][] percent;

    final int least;
    final int step;
    final int tolerance;
    final int capacity;
    final int left;
    /** By line, -1 for no limit. */
    final int[] stock;
    /** -1 for no limit. */
    final int most;

    /** The least total as a fraction, and which versions are on a base. */
    record Best(long total, long per, int onBase) {

        boolean isLess(Best other) {
            return total * other.per < other.total * per;
        }
    }

    private SeriesOracle(
            int[][] percent, int least, int step, int tolerance, int capacity, int left, int[] stock, int most) {
        this.versions = percent.length;
        this.lines = percent[0].length;
        this.percent = percent;
        this.least = least;
        this.step = step;
        this.tolerance = tolerance;
        this.capacity = capacity;
        this.left = left;
        this.stock = stock;
        this.most = most;
    }

    static SeriesOracle random(Random random) {
        int versions = 2 + random.nextInt(3);
        int lines = 3 + random.nextInt(3);
        int[][] percent = new int[versions][lines];
        int common = 1 + random.nextInt(lines - 1);
        int[] unit = new int[lines];
        for (int i = 1; i <= common; i++) {
            unit[i] = 1 + random.nextInt(6);
        }
        for (int j = 0; j < versions; j++) {
            do {
                int times = random.nextInt(3) == 0 ? 1 + random.nextInt(3) : 1;
                for (int i = 1; i < lines; i++) {
                    percent[j][i] = i <= common ? unit[i] * times : random.nextInt(4) == 0 ? 0 : 1 + random.nextInt(30);
                    if (i <= common && random.nextInt(8) == 0) {
                        percent[j][i] = 1 + random.nextInt(20);
                    }
                }
                percent[j][0] = 100 - Arrays.stream(percent[j]).skip(1).sum();
            } while (percent[j][0] <= 0);
        }
        int[] stock = new int[lines];
        Arrays.fill(stock, -1);
        if (random.nextInt(4) == 0) {
            stock[random.nextInt(lines)] = 2 + random.nextInt(40);
        }
        return new SeriesOracle(
                percent,
                4 + random.nextInt(18),
                1 + random.nextInt(3),
                2 + random.nextInt(25),
                60 + random.nextInt(60),
                random.nextInt(3),
                stock,
                random.nextInt(4) == 0 ? 20 + random.nextInt(120) : -1);
    }

    /** Half to even. */
    static long rounded(long top, long bottom) {
        long whole = Math.floorDiv(top, bottom);
        long twice = 2 * (top - whole * bottom);
        return twice > bottom || (twice == bottom && whole % 2 != 0) ? whole + 1 : whole;
    }

    private long first() {
        return (least + step - 1) / step * step;
    }

    private boolean isWithin(long there, long ofWhole, int share) {
        // |there/ofWhole − share/100| ≤ tolerance/100 · share/100
        return Math.abs(there * 100 - share * ofWhole) * 100 <= (long) tolerance * share * ofWhole;
    }

    private boolean passesAlone(int version, long size) {
        long whole = 0;
        long[] reading = new long[lines];
        for (int i = 0; i < lines; i++) {
            reading[i] = rounded(percent[version][i] * size, 100);
            whole += reading[i];
        }
        if (whole == 0 || whole > capacity || size > capacity) {
            return false;
        }
        for (int i = 0; i < lines; i++) {
            if (percent[version][i] > 0 && !isWithin(reading[i], whole, percent[version][i])) {
                return false;
            }
        }
        return true;
    }

    /** The least size by itself, or -1. */
    long alone(int version) {
        for (long size = first(); size <= capacity; size += step) {
            if (passesAlone(version, size)) {
                return size;
            }
        }
        return -1;
    }

    private boolean isTooMuch(long total, long per) {
        return most >= 0 && total > most * per;
    }

    private boolean hasStock(long[] use) {
        for (int i = 0; i < lines; i++) {
            if (stock[i] >= 0 && use[i] > stock[i]) {
                return false;
            }
        }
        return true;
    }

    /** Every version by itself, or null. */
    Best scratch() {
        long total = 0;
        long[] use = new long[lines];
        for (int j = 0; j < versions; j++) {
            long size = alone(j);
            if (size < 0) {
                return null;
            }
            total += size;
            addAlone(j, size, use);
        }
        return isTooMuch(total, 1) || !hasStock(use) ? null : new Best(total, 1, 0);
    }

    private void addAlone(int version, long size, long[] use) {
        for (int i = 0; i < lines; i++) {
            use[i] += rounded(percent[version][i] * size, 100);
        }
    }

    /** With exactly these versions from a base, a bit each, or null. */
    Best onBase(int set) {
        Best best = null;
        Set<List<Integer>> seen = new HashSet<>();
        for (int line = 0; line < lines; line++) {
            List<Integer> together = alike(set, line);
            if (!seen.add(together) || together.isEmpty()) {
                continue;
            }
            if (together.size() > 1) {
                best = less(best, new OfBase(set, together, false).best());
            }
            boolean allHaveRest = true;
            for (int j = 0; j < versions; j++) {
                allHaveRest &= (set >> j & 1) == 0 || percent[j][0] > 0;
            }
            if (allHaveRest && !together.contains(0)) {
                best = less(best, new OfBase(set, together, true).best());
            }
        }
        return best;
    }

    static Best less(Best a, Best b) {
        return a == null || (b != null && b.isLess(a)) ? b : a;
    }

    /** The lines that keep their proportion to a line in all versions of a set; none if one of them lacks it. */
    private List<Integer> alike(int set, int line) {
        int from = Integer.numberOfTrailingZeros(set);
        List<Integer> all = new ArrayList<>();
        for (int other = 0; other < lines; other++) {
            boolean alike = true;
            for (int j = 0; j < versions; j++) {
                if ((set >> j & 1) != 0) {
                    alike &= percent[j][line] > 0
                            && percent[j][other] > 0
                            && percent[j][other] * percent[from][line] == percent[from][other] * percent[j][line];
                }
            }
            if (alike) {
                all.add(other);
            }
        }
        return all;
    }

    /** One base: in units of 1/scale of a percent. */
    private final class OfBase {

        private final int set;
        private final List<Integer> members = new ArrayList<>();
        private final long scale;
        /** By member and line: how many units of it come with the base. */
        private final long[][] inBase;

        private final long[] portion;
        private Best best;
        private final long[] useAlone = new long[lines];
        private long alone;

        OfBase(int set, List<Integer> together, boolean withRest) {
            this.set = set;
            boolean possible = true;
            for (int j = 0; j < versions; j++) {
                if ((set >> j & 1) != 0) {
                    members.add(j);
                } else {
                    long size = alone(j);
                    possible &= size >= 0;
                    if (size >= 0) {
                        alone += size;
                        addAlone(j, size, useAlone);
                    }
                }
            }
            long[] core = new long[members.size()];
            int leanest = 0;
            for (int m = 0; m < members.size(); m++) {
                for (int line : together) {
                    core[m] += percent[members.get(m)][line];
                }
                // rest/core least, by products
                if (percent[members.get(m)][0] * core[leanest] < percent[members.get(leanest)][0] * core[m]) {
                    leanest = m;
                }
            }
            this.scale = withRest ? core[leanest] : 1;
            this.inBase = new long[members.size()][lines];
            this.portion = new long[members.size()];
            for (int m = 0; m < members.size(); m++) {
                for (int line : together) {
                    inBase[m][line] = percent[members.get(m)][line] * scale;
                }
                if (withRest) {
                    inBase[m][0] = percent[members.get(leanest)][0] * core[m];
                }
                portion[m] = Arrays.stream(inBase[m]).sum();
            }
            if (possible) {
                search();
            }
        }

        Best best() {
            return best;
        }

        private void search() {
            for (int size = 1; size <= capacity; size++) {
                long[] reading = new long[lines];
                int weighed = 0;
                long whole = 0;
                for (int i = 0; i < lines; i++) {
                    reading[i] = rounded(inBase[0][i] * size, portion[0]);
                    weighed += inBase[0][i] > 0 ? 1 : 0;
                    whole += reading[i];
                }
                if (whole > 0 && whole <= capacity) {
                    long[] use = useAlone.clone();
                    for (int i = 0; i < lines; i++) {
                        use[i] += reading[i];
                    }
                    if (hasStock(use)) {
                        List<List<Passing>> passing = new ArrayList<>();
                        for (int m = 0; m < members.size(); m++) {
                            passing.add(passing(m, reading, whole));
                        }
                        // each portion may be one division more than it reads, each line of the base one less
                        with(0, passing, size, whole - weighed - left, 100 * scale * (size - left), 0, use);
                    }
                }
            }
        }

        /** A size of a version that passes, what it takes of the base and of each line. */
        private record Passing(long size, long base, long[] own) {}

        /** All sizes of a version that pass with one base. */
        private List<Passing> passing(int member, long[] base, long whole) {
            int version = members.get(member);
            List<Passing> all = new ArrayList<>();
            for (long m = first(); m <= capacity; m += step) {
                long[] own = new long[lines];
                long p = rounded(portion[member] * m, 100 * scale);
                long sum = p;
                for (int i = 0; i < lines; i++) {
                    own[i] = rounded((percent[version][i] * scale - inBase[member][i]) * m, 100 * scale);
                    sum += own[i];
                }
                boolean passes = sum <= capacity;
                for (int i = 0; i < lines && passes; i++) {
                    int share = percent[version][i];
                    boolean common = inBase[member][i] > 0;
                    passes = share == 0 || isWithin((common ? base[i] * p : 0) + own[i] * whole, sum * whole, share);
                }
                if (passes) {
                    all.add(new Passing(m, p, own));
                }
            }
            return all;
        }

        /** Every choice of sizes, as long as the least that is still to come could make it the best. */
        private void with(
                int member, List<List<Passing>> passing, int size, long sure, long nominal, long beside, long[] use) {
            long per = 100 * scale;
            long total = (size + alone) * per + beside;
            long sureLeft = sure;
            long nominalLeft = nominal;
            for (int m = member; m < members.size(); m++) {
                if (passing.get(m).isEmpty()) {
                    return;
                }
                Passing smallest = passing.get(m).get(0);
                total += (per - portion[m]) * smallest.size();
                sureLeft -= smallest.base() + 1;
                nominalLeft -= portion[m] * smallest.size();
            }
            if (sureLeft < 0
                    || nominalLeft < 0
                    || !hasStock(use)
                    || isTooMuch(total, per)
                    || (best != null && total >= best.total())) {
                return;
            }
            if (member == members.size()) {
                best = new Best(total, per, set);
                return;
            }
            for (Passing each : passing.get(member)) {
                long[] more = use.clone();
                for (int i = 0; i < lines; i++) {
                    more[i] += each.own()[i];
                }
                with(
                        member + 1,
                        passing,
                        size,
                        sure - each.base() - 1,
                        nominal - portion[member] * each.size(),
                        beside + (per - portion[member]) * each.size(),
                        more);
            }
        }
    }

    @Override
    public String toString() {
        return Arrays.deepToString(percent) + " least " + least + " step " + step + " tolerance " + tolerance
                + " % capacity " + capacity + " left " + left + " stock " + Arrays.toString(stock) + " most " + most;
    }
}
