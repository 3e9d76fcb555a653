package io.github.formulationmath.falsefine;

import java.util.List;

/** A claim as somebody writes it down. */
final class ClaimText {

    private ClaimText() {}

    /** What one step is. */
    enum Unit {
        GRAM(0, "g"),
        TENTH(1, "g"),
        HUNDREDTH(2, "g"),
        TENTH_OUNCE(1, "oz"),
        QUARTER_OUNCE(0, "oz");

        private final int places;
        private final String unit;

        Unit(int places, String unit) {
            this.places = places;
            this.unit = unit;
        }

        static Unit[] decimals() {
            return new Unit[] {GRAM, TENTH, HUNDREDTH, TENTH_OUNCE};
        }

        /** So many steps. */
        String text(long steps) {
            if (this != QUARTER_OUNCE) {
                return Texts.decimal(steps, places) + " " + unit;
            }
            String whole = steps < 4 ? "" : steps / 4 + " ";
            return steps % 4 == 0 ? steps / 4 + " oz" : whole + steps % 4 + "/4 oz";
        }

        /** A batch of so many tenths of a step. */
        String batch(long tenths) {
            return this == QUARTER_OUNCE
                    ? Texts.decimal(tenths * 25, 3) + " oz"
                    : Texts.decimal(tenths, places + 1) + " " + unit;
        }
    }

    static String name(int line) {
        return List.of("Aqua", "Glycerin", "Urea", "Squalane", "Panthenol", "Bisabolol", "Betaine")
                .get(line);
    }

    static String share(int share) {
        return Texts.percent(share, 2);
    }

    /** As comma-separated values, one more row of some kind before the lines and one after. */
    static String csv(ClaimCase claim, String before, String after) {
        Figures figures = claim.figures();
        StringBuilder text = new StringBuilder("record,group,name,value,figure\nformula,,Claimed,percent,\n");
        text.append("size,,mass,")
                .append(claim.unit().batch(figures.batch()))
                .append(",\n")
                .append(before);
        for (int i = 0; i < figures.size(); i++) {
            String figure = claim.left().contains(i) ? "" : claim.unit().text(figures.shown()[i]);
            String value = i == 0 ? "q.s." : share(figures.shares()[i]);
            text.append("line,,")
                    .append(name(i))
                    .append(',')
                    .append(value)
                    .append(',')
                    .append(figure)
                    .append('\n');
        }
        return text + (claim.total() < 0 ? "" : "total,,,," + claim.unit().text(claim.total()) + "\n") + after;
    }
}
