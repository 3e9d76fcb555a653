package io.github.formulationmath.solution;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Interval;
import java.util.Objects;

/** Moles to the litre as text: the concentrations of a charge balance, and ionic strengths. */
final class Molarity {

    static final String UNIT = "mol/L";

    private Molarity() {}

    /** A concentration as a range of no width. */
    static Interval<Ratio> parse(String text) {
        Ratio value = read(
                "molesPerLitre",
                text,
                Sentence.of("refusal.text.molarity-unit", "a molarity needs its unit, as in \"0.05 mol/L\""),
                Sentence.of("refusal.text.molarity-negative", "there is no less than none: write 0 mol/L or more"));
        return Interval.of(value, value);
    }

    static Ratio read(String argument, String text, Sentence noUnit, Sentence negative) {
        String plain = Objects.requireNonNull(text, argument).strip();
        if (!plain.endsWith(UNIT)) {
            throw new NumberTextException(text, noUnit);
        }
        Ratio value =
                Ratio.parse(plain.substring(0, plain.length() - UNIT.length()).strip());
        if (value.signum() < 0) {
            throw new NumberTextException(text, negative);
        }
        return value;
    }
}
