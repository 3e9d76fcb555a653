package io.github.formulationmath.falsefine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a batch needs of one material that stands in several lines, against what there is.
 *
 * @param names the lines of the material, as written
 * @param shares of 10⁴
 * @param stock milligrams
 * @param batch milligrams
 * @param within whether the stock is enough for the batch
 */
record StockCase(List<String> names, int[] shares, long stock, long batch, boolean within) implements Proven {

    @Override
    public boolean holds() {
        long needed = Math.multiplyExact(Arrays.stream(shares).sum(), batch);
        return needed <= Math.multiplyExact(stock, 10_000) == within;
    }

    static StockCase tooLarge(Dice dice) {
        return of(dice, false);
    }

    static StockCase enough(Dice dice) {
        return of(dice, true);
    }

    private static StockCase of(Dice dice, boolean within) {
        int lines = dice.between(2, 4);
        List<String> names = new ArrayList<>();
        int[] shares = new int[lines];
        for (int i = 0; i < lines; i++) {
            names.add(dice.oneIn(2) ? "Sweet Almond Oil" : Spelling.mask(dice, "Sweet Almond Oil"));
            shares[i] = dice.between(1, 2000);
        }
        long stock = dice.between(1000L, 10_000_000L);
        long largest = stock * 10_000 / Arrays.stream(shares).sum();
        long batch = within ? largest - dice.between(0L, 5L) : largest + dice.between(1L, largest);
        return new StockCase(List.copyOf(names), shares, stock, batch, within);
    }

    @Override
    public String toString() {
        return names + " " + Arrays.toString(shares) + " of 10000, stock " + stock + " mg, batch " + batch + " mg";
    }
}
