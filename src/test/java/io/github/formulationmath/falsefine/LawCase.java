package io.github.formulationmath.falsefine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Substances that a printed entry limits as their acid, by whole numbers of our own: milligrams per mole from the abridged
 * standard atomic weights (IUPAC Commission on Isotopic Abundances and Atomic Weights, 2021: H 1.008, C 12.011, O 15.999,
 * Na 22.990, K 39.098). Limits as printed in Annex V of Regulation (EC) No 1223/2009, entries 1, 4, 12, 29, 34 and 57.
 * Right and wrong are a thousandth apart from the limit, which no other set of atomic weights bridges.
 *
 * @param entry the entry
 * @param shares of its substances, of 10⁸
 * @param disguised how they are written
 * @param word what is said of the product beside, known to the table or not
 * @param kept whether the limit is kept
 */
record LawCase(Entry entry, long[] shares, List<String> disguised, String word, boolean kept) implements Proven {

    private static final long H = 1_008;
    private static final long C = 12_011;
    private static final long O = 15_999;
    private static final long NA = 22_990;
    private static final long K = 39_098;
    private static final long BENZOIC = 7 * C + 6 * H + 2 * O;
    private static final long SORBIC = 6 * C + 8 * H + 2 * O;
    private static final long HYDROXYBENZOIC = 7 * C + 6 * H + 3 * O;

    /**
     * A substance of an entry.
     *
     * @param name its name
     * @param mole milligrams of it in which there is one mole of the acid
     */
    record Member(String name, long mole) {}

    /** An entry. */
    enum Entry {
        BENZOATE(
                500_000,
                BENZOIC,
                true,
                new Member("Benzoic Acid", BENZOIC),
                new Member("Sodium Benzoate", 7 * C + 5 * H + NA + 2 * O)),
        BENZOATE_RINSED(
                2_500_000,
                BENZOIC,
                false,
                new Member("Benzoic Acid", BENZOIC),
                new Member("Sodium Benzoate", 7 * C + 5 * H + NA + 2 * O)),
        SORBATE(
                600_000,
                SORBIC,
                true,
                new Member("Sorbic Acid", SORBIC),
                new Member("Potassium Sorbate", 6 * C + 7 * H + K + 2 * O)),
        PARABEN(400_000, HYDROXYBENZOIC, true, new Member("Methylparaben", 8 * C + 8 * H + 3 * O)),
        PARABENS(
                800_000,
                HYDROXYBENZOIC,
                true,
                new Member("Methylparaben", 8 * C + 8 * H + 3 * O),
                new Member("Ethylparaben", 9 * C + 10 * H + 3 * O)),
        PHENOXYETHANOL(1_000_000, 1, true, new Member("Phenoxyethanol", 1)),
        BENZYL_ALCOHOL(1_000_000, 1, true, new Member("Benzyl Alcohol", 1)),
        /** Allowed in products that are rinsed off only, so that any of it is too much. */
        METHYLISOTHIAZOLINONE(0, 1, true, new Member("Methylisothiazolinone", 1));

        private final long cap;
        private final long acid;
        private final boolean leaveOn;
        private final List<Member> members;

        Entry(long cap, long acid, boolean leaveOn, Member... members) {
            this.cap = cap;
            this.acid = acid;
            this.leaveOn = leaveOn;
            this.members = List.of(members);
        }

        boolean isLeaveOn() {
            return leaveOn;
        }
    }

    @Override
    public boolean holds() {
        Exact counted = Exact.ZERO;
        for (int i = 0; i < shares.length; i++) {
            counted = counted.plus(
                    Exact.of(shares[i] * entry.acid, entry.members.get(i).mole()));
        }
        Exact thousandths = counted.times(1000);
        return kept ? !thousandths.isAbove(Exact.of(entry.cap * 999)) : thousandths.isAbove(Exact.of(entry.cap * 1001));
    }

    static LawCase exceeded(Dice dice) {
        return of(dice, dice.of(Entry.values()), false);
    }

    static LawCase kept(Dice dice) {
        return of(dice, Entry.values()[dice.between(0, Entry.values().length - 2)], true);
    }

    private static LawCase of(Dice dice, Entry entry, boolean kept) {
        long goal = kept
                ? dice.between(entry.cap / 10, entry.cap * 998 / 1000)
                : dice.between(entry.cap * 1002 / 1000 + 5, entry.cap * 3 / 2 + 1000);
        long[] shares = new long[entry.members.size()];
        List<String> names = new ArrayList<>();
        long left = goal;
        for (int i = 0; i < shares.length; i++) {
            long acid = i == shares.length - 1
                    ? left
                    : entry == Entry.PARABENS ? left / 2 : dice.between(left / 3, left / 2);
            left -= acid;
            Member member = entry.members.get(i);
            shares[i] = acid * member.mole() / entry.acid + (kept ? 0 : 1);
            names.add(dice.oneIn(3) ? member.name() : Spelling.mask(dice, member.name()));
        }
        String word = dice.of("", "face", "fcae", "hands", "nothing like it");
        // Rinsed off, and nothing said of where: it may be for the mouth, for which there is less.
        String stated = kept && !entry.leaveOn ? "hands" : word;
        return new LawCase(entry, shares, List.copyOf(names), stated, kept);
    }

    @Override
    public String toString() {
        return entry + " " + Arrays.toString(shares) + " of 10^8 " + disguised + " on " + word;
    }
}
