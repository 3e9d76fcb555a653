package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.util.Objects;

/** The masses of the lines of a formula, from which shares of the product or of a phase are made. */
public final class WeighedLines {

    private static final String REMEDY =
            ": take what was weighed from a plan (ExpectedProduct), from readings (MadeBatch) or from an assignment"
                    + " (BalanceAssignment) of this very formula";

    private final Formula formula;
    private final MadeMasses masses;

    private WeighedLines(Formula formula, MadeMasses masses) {
        this.formula = formula;
        this.masses = masses;
    }

    /**
     * What was weighed, once it is sure that each mass is of the line at its place: the line itself, with its phase, its ingredient and its share, not merely one of the same name.
     *
     * @param weighed what was weighed
     * @return the lines with their masses
     * @throws IllegalArgumentException if a mass is of another line
     */
    public static WeighedLines of(Weighed weighed) {
        Objects.requireNonNull(weighed, "weighed");
        Formula formula = Objects.requireNonNull(weighed.formula(), "weighed.formula()");
        MadeMasses masses = Objects.requireNonNull(weighed.masses(), "weighed.masses()");
        if (masses.size() != formula.lines().size()) {
            throw new IllegalArgumentException("weighed has " + masses.size() + " masses, \""
                    + Excerpt.of(formula.name()) + "\" has " + formula.lines().size() + " lines" + REMEDY);
        }
        for (int i = 0; i < masses.size(); i++) {
            requireOf(
                    formula,
                    formula.lines().get(i),
                    masses.additions().get(i).addition().subject());
        }
        return new WeighedLines(formula, masses);
    }

    /**
     * The formula.
     *
     * @return the formula whose lines were weighed
     */
    public Formula formula() {
        return formula;
    }

    /**
     * The masses.
     *
     * @return one for each line, in the order of the formula
     */
    public MadeMasses masses() {
        return masses;
    }

    private static void requireOf(Formula formula, FormulaLine line, Subject subject) {
        if (!line.equals(subject)) {
            throw new IllegalArgumentException(
                    "mass " + line.position() + " of weighed is of " + described(subject) + ", line " + line.position()
                            + " of \"" + Excerpt.of(formula.name()) + "\" is " + described(line) + REMEDY);
        }
    }

    private static String described(Subject subject) {
        return subject instanceof FormulaLine line
                ? Excerpt.of(line.ingredient()) + " " + Excerpt.of(line.amount()) + " in phase \""
                        + Excerpt.of(line.phase()) + "\""
                : "\"" + Excerpt.of(subject.name()) + "\", no line of a formula";
    }

    /** The name of the formula. */
    @Override
    public String toString() {
        return formula.name() + " as weighed";
    }
}
