package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.BigInteger;
import java.util.Locale;

/** The words of a printed working. Names put in are hostile until cleaned. */
final class Words {

    /** Keeps a number and its unit on one line. */
    static final char UNBROKEN = '\u00A0';

    private final Wording wording;

    Words(Wording wording) {
        this.wording = wording;
    }

    String say(String key, String... arguments) {
        return wording.text(Phrase.of(key, arguments));
    }

    String say(Phrase phrase) {
        return wording.text(new Phrase(
                phrase.key(), phrase.arguments().stream().map(Words::clean).toList()));
    }

    String meaning(Step step) {
        return say(
                Phrase.of("symbol." + step.symbol().meaningKey(), step.subject().name()));
    }

    /** Where a given value comes from; empty if nothing is known. */
    String origin(Source source) {
        if (!source.writtenText().isEmpty()) {
            return say("working.as-written", clean(source.writtenText()));
        }
        return clean(source.citation());
    }

    /** The grid and the mode of a rounding, as it acts on one value. */
    String rounding(RoundingOperation operation, Term input, Numerals numerals) {
        Rounding rounding = operation.rounding();
        Ratio step = rounding.stepFor(input.value());
        String grid = plain(numerals.gridStep(step, input)).replace(' ', UNBROKEN);
        String mode = say("rounding.mode." + rounding.mode().name().toLowerCase(Locale.ROOT));
        if (rounding.stepFor(Ratio.ONE).equals(rounding.stepFor(Ratio.of(10)))) {
            return say("rounding.grid", grid, mode);
        }
        BigInteger digits = rounding.stepFor(Ratio.ONE).reciprocal().numerator();
        return say(
                "rounding.digits",
                numerals.count(BigInteger.valueOf(digits.toString().length())),
                grid,
                mode);
    }

    static String plain(Numeral n) {
        String number = (n.negative() ? "−" : "") + n.digits() + (n.isFraction() ? "/" + n.below() : "");
        return n.unit().isEmpty() ? number : number + " " + n.unit();
    }

    /**
     * A text that cannot leave its place: line ends and other controls become spaces, controls of the writing direction
     * go, and a text with letters written from right to left is isolated from what surrounds it.
     */
    static String clean(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        boolean[] rightToLeft = {false};
        text.codePoints().forEach(c -> {
            if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029') {
                kept.append(' ');
            } else if (isNoise(c)) {
                kept.append('\uFFFD');
            } else {
                kept.appendCodePoint(c);
                byte direction = Character.getDirectionality(c);
                rightToLeft[0] |= direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
            }
        });
        return rightToLeft[0] ? "\u2068" + kept + "\u2069" : kept.toString();
    }

    private static boolean isNoise(int c) {
        return c >= 0x202A && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069
                || c == 0xFEFF
                || (c & 0xFFFE) == 0xFFFE
                || Character.getType(c) == Character.SURROGATE;
    }
}
