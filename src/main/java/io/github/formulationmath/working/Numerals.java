package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.BigInteger;
import java.text.DecimalFormatSymbols;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Numbers as a reader wants to see them: exact, in the chosen units, with the digits of a locale if one was asked for. */
final class Numerals {

    /** A decimal of more digits than this is followed by a shorter one. */
    private static final int READABLE_DIGITS = 12;

    private final UnitChoice units;
    private final int significantDigits;
    private final @Nullable DecimalFormatSymbols symbols;
    private final Filling filling;
    private final Grid grid = new Grid();

    Numerals(Style style, Filling filling) {
        this.units = style.units();
        this.significantDigits = style.significantDigits();
        this.symbols = style.locale() == null ? null : DecimalFormatSymbols.getInstance(style.locale());
        this.filling = filling;
    }

    boolean isBlanked(Term term) {
        return filling.isBlank(term);
    }

    /** The value of a term, exactly; a rounded step keeps the zeros of its grid, a blanked one shows none. */
    Numeral exact(Term term) {
        Measure measure = measure(term);
        if (isBlanked(term)) {
            return Numeral.blank(measure.text());
        }
        Numeral exact = exact(term.value(), measure, grid.of(term));
        return filling.isFilledIn(term) ? exact.inBold() : exact;
    }

    /** A line to write on, with the unit of a term. */
    Numeral blank(Term like) {
        return Numeral.blank(measure(like).text());
    }

    /** The value of a term in few digits, if its exact form is a fraction or a long decimal. */
    Optional<Numeral> inFewDigits(Term term) {
        return isBlanked(term)
                ? Optional.empty()
                : inFewDigits(term.value(), term).map(few -> filling.isFilledIn(term) ? few.inBold() : few);
    }

    /** The same for any value in the unit of a term. */
    Optional<Numeral> inFewDigits(Ratio value, Term like) {
        Measure measure = measure(like);
        Ratio shown = value.dividedBy(measure.size());
        if (shown.isDecimal() && digitCount(shown) <= READABLE_DIGITS) {
            return Optional.empty();
        }
        Rounding few = Rounding.toSignificantDigits(significantDigits);
        return Optional.of(decimal(few.apply(shown), few.stepFor(few.apply(shown)), measure.text()));
    }

    /** A value in the unit of a term, exactly; it keeps the zeros of the term's grid if it lies on it. */
    Numeral exact(Ratio value, Term like) {
        return exact(value, measure(like), grid.of(like));
    }

    /** A grid step; in the canonical unit if the chosen one would make a fraction of it. */
    Numeral gridStep(Ratio step, Term of) {
        Measure chosen = measure(of);
        Measure canonical = KindOf.measure(of, UnitChoice.canonical());
        return exact(step, step.dividedBy(chosen.size()).isDecimal() ? chosen : canonical, Ratio.ZERO);
    }

    private Measure measure(Term term) {
        return term instanceof Step step ? units.of(step.symbol().kind()) : KindOf.measure(term, units);
    }

    private Numeral exact(Ratio value, Measure measure, Ratio grid) {
        Ratio shown = value.dividedBy(measure.size());
        if (shown.isDecimal()) {
            return decimal(shown, grid.dividedBy(measure.size()), measure.text());
        }
        return new Numeral(
                shown.signum() < 0,
                localised(shown.numerator().abs().toString()),
                localised(shown.denominator().toString()),
                measure.text());
    }

    private Numeral decimal(Ratio shown, Ratio grid, String unit) {
        Ratio size = shown.abs();
        boolean gridFits =
                grid.signum() > 0 && grid.isDecimal() && size.dividedBy(grid).isInteger();
        String digits = gridFits ? Rounding.toMultipleOf(grid).format(size) : size.toString();
        return new Numeral(shown.signum() < 0, localised(digits), "", unit);
    }

    private static int digitCount(Ratio decimal) {
        return decimal.toBigDecimal().stripTrailingZeros().precision();
    }

    private String localised(String digits) {
        if (symbols == null) {
            return digits;
        }
        StringBuilder text = new StringBuilder(digits.length());
        digits.chars().forEach(c -> text.append(localised((char) c, symbols)));
        return text.toString();
    }

    private static char localised(char c, DecimalFormatSymbols symbols) {
        return c == '.' ? symbols.getDecimalSeparator() : (char) (symbols.getZeroDigit() + (c - '0'));
    }

    /** A whole number in the digits of the locale. */
    String count(BigInteger value) {
        return localised(value.toString());
    }
}
