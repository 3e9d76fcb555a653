package io.github.formulationmath.falsefine;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import java.math.BigInteger;
import java.util.List;

/**
 * A formula in whole numbers. The first row takes the rest.
 *
 * @param rows shares of 10⁸, the first of no account
 */
record Recipe(List<Row> rows) {

    /** The whole of a formula, 100 %. */
    static final long WHOLE = 100_000_000;

    /** The whole of a material. */
    static final long MATERIAL = 1_000_000;

    /**
     * A line.
     *
     * @param material the name of what is weighed
     * @param phase its phase
     * @param share its share of 10⁸
     * @param parts what it holds
     */
    record Row(String material, String phase, long share, List<Part> parts) {

        /** What of a material is the substance in question, of 10⁶. */
        long counted() {
            return parts.stream().filter(Part::counted).mapToLong(Part::share).sum();
        }

        Ingredient ingredient() {
            Part only = parts.get(0);
            if (parts.size() == 1 && only.share() == MATERIAL) {
                return material.equals(only.spelling().name())
                                && only.spelling().cas().isEmpty()
                                && only.spelling().synonyms().isEmpty()
                        ? Ingredient.of(material)
                        : Ingredient.of(material, substance(only.spelling()));
            }
            var blend = Ingredient.blend(material);
            for (Part part : parts) {
                blend.part(substance(part.spelling()), MassFraction.parse(Texts.percent(part.share(), 4)));
            }
            return blend.build();
        }
    }

    /**
     * A part of a material.
     *
     * @param spelling how it is written
     * @param counted whether it is the substance in question
     * @param share its share of 10⁶
     */
    record Part(Spelling spelling, boolean counted, long share) {}

    static Substance substance(Spelling spelling) {
        Substance written = Substance.of(spelling.name());
        if (!spelling.synonyms().isEmpty()) {
            written = written.withSynonyms(spelling.synonyms().toArray(String[]::new));
        }
        return spelling.cas().isEmpty() ? written : written.withCas(spelling.cas());
    }

    static Row plain(String material, String phase, long share) {
        return new Row(material, phase, share, List.of(new Part(Spelling.of(material, ""), false, MATERIAL)));
    }

    long rest() {
        return WHOLE - rows.stream().skip(1).mapToLong(Row::share).sum();
    }

    /** The share of a row of 10⁸, that of the rest too. */
    long shareOf(int row) {
        return row == 0 ? rest() : rows.get(row).share();
    }

    /** What of the formula is the substance in question, of 10¹⁴. */
    BigInteger counted() {
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < rows.size(); i++) {
            sum = sum.add(BigInteger.valueOf(shareOf(i))
                    .multiply(BigInteger.valueOf(rows.get(i).counted())));
        }
        return sum;
    }

    Formula formula() {
        var builder = Formula.inPercent("Recipe");
        String phase = "";
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (!row.phase().equals(phase)) {
                phase = row.phase();
                builder.phase(phase);
            }
            if (i == 0) {
                builder.quantitySufficient(row.ingredient());
            } else {
                builder.line(row.ingredient(), Texts.percent(row.share(), 6));
            }
        }
        return builder.build();
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            text.append(i == 0 ? "" : "; ").append(Texts.percent(shareOf(i), 6)).append(' ');
            text.append(rows.get(i).parts());
        }
        return text.toString();
    }
}
