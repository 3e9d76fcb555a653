package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.Objects;
import java.util.Optional;

/** One material replaced by another of other strength, {@code w' = w · c / c'}, the rest balanced on one line. */
final class Replacement {

    private Replacement() {}

    static Formula of(Formula formula, FormulaLine line, Ingredient material, Substance kept, FormulaLine balancing) {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(material, "replacement");
        Objects.requireNonNull(kept, "substance");
        Objects.requireNonNull(balancing, "balancing");
        if (formula.indexOf(line) == formula.indexOf(balancing)) {
            throw new IllegalArgumentException(
                    Excerpt.of(line) + " cannot be replaced and take the difference as well: name another line");
        }
        Optional<SubstanceShare> one =
                new Composition(Sameness.of(formula.name(), formula.lines(), material), formula.lines()).shareOf(kept);
        Ratio needed =
                line.fraction().times(strength(line.ingredient(), one, kept)).dividedBy(strength(material, one, kept));
        Ratio rest = balancing.fraction().plus(line.fraction()).minus(needed);
        if (rest.signum() <= 0) {
            throw new IllegalArgumentException(
                    Excerpt.of(material) + " is needed at " + Excerpt.of(NumberText.percentExactly(needed))
                            + ", which leaves " + Excerpt.of(NumberText.percentExactly(rest)) + " for "
                            + Excerpt.of(balancing.name()) + ": something above 0 must be left");
        }
        return Formula.inPercent(formula.name())
                .linesOf(
                        formula,
                        each -> each.equals(line) ? material : each.ingredient(),
                        each -> Optional.of(
                                each.equals(line)
                                        ? share(needed)
                                        : each.equals(balancing) ? balanced(each, rest) : share(each.fraction())))
                .build();
    }

    /** A line that takes what is left takes it still. */
    private static LineAmount balanced(FormulaLine balancing, Ratio rest) {
        return balancing.isQuantitySufficient() ? balancing.amount() : share(rest);
    }

    private static LineAmount share(Ratio fraction) {
        return new LineAmount.Share(MassFraction.of(fraction));
    }

    private static Ratio strength(Ingredient ingredient, Optional<SubstanceShare> one, Substance asked) {
        return one.map(substance -> substance.strengthIn(ingredient).fraction())
                .filter(strength -> !strength.isZero())
                .orElseThrow(
                        () -> new IllegalArgumentException(Excerpt.of(ingredient) + " declares no " + Excerpt.of(asked)
                                + ": a replacement keeps the share of a substance that both materials contain"));
    }
}
