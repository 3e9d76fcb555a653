package io.github.formulationmath.reckoning;

import io.github.formulationmath.document.Expression;
import io.github.formulationmath.number.LocalDigits;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.Optional;

/** Numbers as a reader wants to see them: exact, in the chosen units, with the digits of a locale if one was asked for. */
final class Numerals {

    private final UnitChoice units;
    private final int significantDigits;
    private final LocalDigits local;
    private final Style.Filling filling;
    private final Style.Digits style;
    private final Grid grid = new Grid();

    /** A number ready to print; nothing stands below a decimal. */
    private record Written(String digits, String below, String unit) {

        Expression expression() {
            return Expression.fraction(digits, below, unit);
        }

        String text() {
            return digits + (below.isEmpty() ? "" : "/" + below) + (unit.isEmpty() ? "" : " " + unit);
        }
    }

    Numerals(Style style) {
        this.units = style.units();
        this.significantDigits = style.significantDigits();
        this.local = LocalDigits.of(style.locale());
        this.filling = style.filling();
        this.style = style.digits();
    }

    boolean isBlanked(Term term) {
        return filling.isBlank(term);
    }

    /** The value of a term as it stands in a line of arithmetic: exactly, or in decimals alone, if so asked. */
    Expression inLine(Term term) {
        return isShortened(term)
                ? shown(term, few(term.value(), measure(term)).orElseThrow().expression())
                : exact(term);
    }

    /** Whether a value stands there with fewer digits than it has. */
    boolean isShortened(Term term) {
        return style == Style.Digits.DECIMALS
                && !isBlanked(term)
                && few(term.value(), measure(term)).isPresent();
    }

    /** The value of a term, exactly; a rounded step keeps the zeros of its grid, a blanked one shows none. */
    Expression exact(Term term) {
        return isBlanked(term)
                ? blank(term)
                : shown(term, exact(term.value(), measure(term), grid.of(term)).expression());
    }

    /** Whether two values compare as they do when both are shortened. */
    boolean bearsOut(Term left, Term right) {
        return shortened(left).compareTo(shortened(right)) == left.value().compareTo(right.value());
    }

    private Ratio shortened(Term term) {
        Ratio size = measure(term).size();
        return isShortened(term)
                ? Rounding.toSignificantDigits(significantDigits)
                        .apply(term.value().dividedBy(size))
                        .times(size)
                : term.value();
    }

    /** A line to write on, with the unit of a term. */
    Expression blank(Term like) {
        return Expression.blank(measure(like).text());
    }

    /** The value of a term in few digits, if its exact form is a fraction or a long decimal. */
    Optional<Expression> inFewDigits(Term term) {
        return isBlanked(term) || style != Style.Digits.BOTH
                ? Optional.empty()
                : few(term.value(), measure(term)).map(few -> shown(term, few.expression()));
    }

    private Expression shown(Term term, Expression number) {
        return filling.isFilledIn(term) ? number.bold() : number;
    }

    /** A value in the unit of a term, in few digits if it is long. */
    String text(Ratio value, Term like) {
        return style == Style.Digits.EXACT
                ? exactText(value, like)
                : few(value, measure(like)).map(few -> "≈ " + few.text()).orElseGet(() -> exactText(value, like));
    }

    /** A bare number, exactly. */
    String text(Ratio value) {
        return exact(value, Measure.PLAIN, Ratio.ZERO).text();
    }

    /** A value in the unit of a term, exactly; it keeps the zeros of the term's grid if it lies on it. */
    String exactText(Ratio value, Term like) {
        return exact(value, measure(like), grid.of(like)).text();
    }

    /** A grid step; in the canonical unit if the chosen one would make a fraction of it. */
    String gridStep(Ratio step, Term of) {
        Measure chosen = measure(of);
        boolean isDecimal = step.dividedBy(chosen.size()).isDecimal();
        return exact(step, isDecimal ? chosen : KindOf.measure(of, UnitChoice.canonical()), Ratio.ZERO)
                .text();
    }

    private Measure measure(Term term) {
        return term instanceof Step step ? units.of(step.symbol().kind()) : KindOf.measure(term, units);
    }

    private Optional<Written> few(Ratio value, Measure measure) {
        Ratio shown = value.dividedBy(measure.size());
        if (NumberText.isShort(shown)) {
            return Optional.empty();
        }
        Rounding few = Rounding.toSignificantDigits(significantDigits);
        Ratio rounded = few.apply(shown);
        return Optional.of(decimal(rounded, few.stepFor(rounded), measure.text()));
    }

    private Written exact(Ratio value, Measure measure, Ratio grid) {
        Ratio shown = value.dividedBy(measure.size());
        return shown.isDecimal()
                ? decimal(shown, grid.dividedBy(measure.size()), measure.text())
                : new Written(
                        localised(shown.numerator().toString()),
                        localised(shown.denominator().toString()),
                        measure.text());
    }

    private Written decimal(Ratio shown, Ratio grid, String unit) {
        boolean gridFits =
                grid.signum() > 0 && grid.isDecimal() && shown.dividedBy(grid).isInteger();
        String digits = gridFits ? Rounding.toMultipleOf(grid).format(shown) : shown.toString();
        return new Written(localised(digits), "", unit);
    }

    private String localised(String digits) {
        return local.digits(digits).replace('-', '−');
    }
}
