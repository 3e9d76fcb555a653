package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.Recipe.Part;
import io.github.formulationmath.falsefine.Recipe.Row;
import java.util.ArrayList;
import java.util.List;

/** Formulas that hold a wanted share of one substance, spread over lines, phases, blends and spellings. */
final class Recipes {

    private static final List<String> OTHERS =
            List.of("Glycerin", "Panthenol", "Cetyl Alcohol", "Squalane", "Xanthan Gum", "Bisabolol", "Urea");

    private final Dice dice;
    private final String name;
    private final String cas;
    private int phases;

    /**
     * For one substance.
     *
     * @param cas its number, empty where nobody knows one
     */
    Recipes(Dice dice, String name, String cas) {
        this.dice = dice;
        this.name = name;
        this.cas = cas;
    }

    /**
     * A formula whose rows carry the shares given, each row in a spelling of its own.
     *
     * @param shares what each row has of the substance, of 10⁸
     * @param disguised whether the spellings differ from the name
     */
    Recipe holding(List<Long> shares, boolean disguised) {
        List<Row> rows = new ArrayList<>();
        rows.add(Recipe.plain("Aqua", "water", 0));
        for (int i = 0; i < shares.size(); i++) {
            rows.add(carrier("Stuff " + (i + 1), phase(), shares.get(i), disguised));
        }
        int fillers = dice.between(0, 3);
        List<String> names = dice.shuffled(OTHERS);
        for (int i = 0; i < fillers; i++) {
            rows.add(Recipe.plain(names.get(i), "rest", dice.between(1, 9_000_000)));
        }
        return new Recipe(List.copyOf(rows));
    }

    /** The phase before, or the next. */
    private String phase() {
        phases += dice.between(0, 1);
        return phases == 0 ? "water" : "phase " + phases;
    }

    /** A row that brings in a share of the substance: neat, or as a blend that is that much more of. */
    private Row carrier(String material, String phase, long share, boolean disguised) {
        Spelling spelling = disguised
                ? Spelling.disguised(dice, name, cas, material + " trade")
                : Spelling.of(name, cas.isEmpty() || dice.oneIn(2) ? "" : cas);
        if (dice.oneIn(2)) {
            return new Row(material, phase, share, List.of(new Part(spelling, true, Recipe.MATERIAL)));
        }
        // A strength that divides a million, so that what the row must weigh is a whole number.
        long times = dice.of(2L, 4L, 5L, 10L);
        long strength = Recipe.MATERIAL / times;
        Part rest = new Part(Spelling.of("Solvent of " + material, ""), false, Recipe.MATERIAL - strength);
        Part active = new Part(spelling, true, strength);
        return new Row(material, phase, share * times, dice.oneIn(2) ? List.of(active, rest) : List.of(rest, active));
    }

    /** A share in so many pieces, each at least 1. */
    List<Long> pieces(long share, int count) {
        List<Long> pieces = new ArrayList<>();
        long left = share;
        for (int i = 1; i < count; i++) {
            long piece = dice.between(1, left - (count - i));
            pieces.add(piece);
            left -= piece;
        }
        pieces.add(left);
        return dice.shuffled(pieces);
    }
}
