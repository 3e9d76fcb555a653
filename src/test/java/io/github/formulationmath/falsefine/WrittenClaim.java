package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.ClaimText.Unit;
import java.math.BigInteger;
import java.util.List;

/**
 * A claim in a file: sound, with a row that contradicts another or that nothing uses, or with the figures of a program that
 * prints binary numbers, all digits of them.
 *
 * @param text the file
 * @param stray the row that does not belong, or nothing
 * @param off how far a raw figure is off, in parts of 10¹⁷ of itself about; 0 if there is none
 */
record WrittenClaim(String text, String stray, long off) implements Proven {

    /** Off by less than a binary number of 53 digits can tell, or by far more than it loses. */
    private static final long HARMLESS = 50;

    private static final long HARMFUL = 10_000_000;

    @Override
    public boolean holds() {
        boolean isRaw = off != 0;
        return stray.isEmpty() ? !isRaw || off <= HARMLESS || off >= HARMFUL : text.contains(stray) && !isRaw;
    }

    static WrittenClaim sound(Dice dice) {
        if (dice.oneIn(2)) {
            return raw(dice, dice.between(1L, HARMLESS / 10));
        }
        return new WrittenClaim(ClaimText.csv(claim(dice), "", ""), "", 0);
    }

    static WrittenClaim wrong(Dice dice) {
        return dice.oneIn(3) ? raw(dice, HARMFUL * dice.between(1L, 100L)) : stray(dice);
    }

    private static ClaimCase claim(Dice dice) {
        ClaimCase claim = ClaimCase.sound(dice);
        return new ClaimCase(claim.figures(), claim.unit(), List.of(), claim.total(), claim.fault());
    }

    private static WrittenClaim stray(Dice dice) {
        ClaimCase claim = claim(dice);
        String batch = claim.unit().batch(claim.figures().batch());
        String more = claim.unit().batch(claim.figures().batch() + 100);
        String figure = claim.unit().text(claim.figures().shown()[1]);
        return switch (dice.between(0, 6)) {
            case 0 -> before(claim, "size,,mass," + more + ",\n");
            case 1 -> before(claim, "size,,packs,7,\nsize,,fill mass," + batch + ",\n");
            case 2 -> before(claim, "size,,overage,10 %,\n");
            case 3 -> before(claim, "part,Betain 30,Urea,30 %,\npart,Betain 30,Aqua,70 %,\n");
            case 4 -> before(claim, "density,,Nowhere,1.05 g/mL,\n");
            case 5 -> after(claim, "total,,,," + figure + "\n");
            default ->
                after(
                        claim,
                        "line,," + ClaimText.name(1) + ",1 %," + claim.unit().text(1) + "\n");
        };
    }

    private static WrittenClaim before(ClaimCase claim, String row) {
        return new WrittenClaim(ClaimText.csv(claim, row, ""), row, 0);
    }

    private static WrittenClaim after(ClaimCase claim, String row) {
        return new WrittenClaim(ClaimText.csv(claim, "", row), row, 0);
    }

    /** Seventeen digits of every figure, one of them so far off. */
    private static WrittenClaim raw(Dice dice, long off) {
        Figures figures = claim(dice).figures();
        int wrong = dice.between(0, figures.size() - 1);
        StringBuilder text = new StringBuilder("record,group,name,value,figure\nformula,,Claimed,percent,\nsize,,mass,")
                .append(Unit.GRAM.batch(figures.batch()))
                .append(",\n");
        for (int i = 0; i < figures.size(); i++) {
            int places = 17 - figures.target(i).floor().toString().length();
            BigInteger exact = figures.target(i)
                    .times(new Exact(BigInteger.TEN.pow(places), BigInteger.ONE))
                    .floor();
            BigInteger shown = exact.add(BigInteger.valueOf(i == wrong ? off : dice.between(1L, 3L)));
            text.append("line,,")
                    .append(ClaimText.name(i))
                    .append(',')
                    .append(i == 0 ? "q.s." : ClaimText.share(figures.shares()[i]))
                    .append(',')
                    .append(Texts.decimal(shown, places))
                    .append(" g\n");
        }
        return new WrittenClaim(text.toString(), "", off);
    }
}
