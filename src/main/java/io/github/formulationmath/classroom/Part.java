package io.github.formulationmath.classroom;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Style;

/** What is put into the words of an exercise: a name, or a number with its unit, told in the digits of the reader. */
sealed interface Part {

    /** Significant digits of a number that is long. */
    int DIGITS = 4;

    String in(Style style);

    static Part name(String text) {
        return new Name(text);
    }

    static Part number(Ratio number) {
        return new Value(number, "");
    }

    static Part of(Ratio number, String unit) {
        return new Value(number, unit);
    }

    static Part grams(Ratio number) {
        return new Value(number, "g");
    }

    /** A share, told in percent. */
    static Part percent(Ratio share) {
        return new Value(share.times(100), "%");
    }

    /** A name that is the same in every language, as those of ingredients are. */
    record Name(String text) implements Part {
        @Override
        public String in(Style style) {
            return text;
        }
    }

    /** A number; a long one in few digits after ≈. A no-break space keeps it with its unit. */
    record Value(Ratio number, String unit) implements Part {
        @Override
        public String in(Style style) {
            String digits = NumberText.isShort(number)
                    ? style.text(number)
                    : "≈\u00A0"
                            + style.text(Rounding.toSignificantDigits(DIGITS).apply(number));
            return unit.isEmpty() ? digits : digits + "\u00A0" + unit;
        }
    }
}
