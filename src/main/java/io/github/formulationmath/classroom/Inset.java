package io.github.formulationmath.classroom;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What is put into the words of an exercise: a name, or a number with its unit, told in the digits of the reader. */
sealed interface Inset {

    /** Significant digits of a number that is long. */
    int DIGITS = 4;

    String in(Style style);

    static Inset name(String text) {
        return new Name(text);
    }

    static Inset number(Ratio number) {
        return new Value(number, "");
    }

    static Inset of(Ratio number, String unit) {
        return new Value(number, unit);
    }

    /** A number that is never shortened. */
    static Inset exactly(Ratio number, String unit) {
        return new Exact(number, unit);
    }

    static Inset grams(Ratio number) {
        return new Value(number, "g");
    }

    /** A share, told in percent. */
    static Inset percent(Ratio share) {
        return new Value(share.times(100), "%");
    }

    /** The lines of a formula, each with its name and its number, and what comes after them. */
    static Inset[] lines(List<String> names, List<Ratio> numbers, Function<Ratio, Inset> number, Inset last) {
        List<Inset> all = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            all.add(name(names.get(i)));
            all.add(number.apply(numbers.get(i)));
        }
        all.add(last);
        return all.toArray(Inset[]::new);
    }

    /** A name that is the same in every language, as those of ingredients are. */
    record Name(String text) implements Inset {
        @Override
        public String in(Style style) {
            return text;
        }
    }

    /** A number; a long one in few digits. A no-break space keeps it with its unit. */
    record Value(Ratio number, String unit) implements Inset {
        @Override
        public String in(Style style) {
            return NumberText.isShort(number)
                    ? told(number, unit, style)
                    : style.wording()
                            .say(
                                    "class.about",
                                    told(Rounding.toSignificantDigits(DIGITS).apply(number), unit, style));
        }
    }

    /** A number with all its digits, such as the size of a unit. */
    record Exact(Ratio number, String unit) implements Inset {
        @Override
        public String in(Style style) {
            return told(number, unit, style);
        }
    }

    private static String told(Ratio number, String unit, Style style) {
        return style.text(number) + (unit.isEmpty() ? "" : "\u00A0" + unit);
    }
}
