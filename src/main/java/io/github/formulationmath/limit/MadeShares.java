package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.working.Subject;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;

/** The masses of the lines of a formula, from which shares of the product or of a phase are made. */
record MadeShares(Formula formula, MadeMasses masses, Map<Wholes.Whole, MadeMasses> parts) {

    private static final String REMEDY =
            ": take what was weighed from a plan (ExpectedProduct), from readings (MadeBatch) or from an assignment"
                    + " (BalanceAssignment) of this very formula";

    /**
     * What was weighed, once it is sure that each mass is of the line at its place: the line itself, with its phase, its
     * ingredient and its share, not merely one of the same name.
     */
    static MadeShares of(Weighed weighed) {
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
        return new MadeShares(formula, masses, new ConcurrentHashMap<>());
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

    /** The masses of the lines that make up the whole of a tally; of all lines if the formula does not have the phase. */
    MadeMasses of(Wholes.Whole whole) {
        if (whole.isEmpty() || whole.lines().size() == formula.lines().size()) {
            return masses;
        }
        return parts.computeIfAbsent(
                whole,
                one -> masses.part(one.lines().stream().map(FormulaLine::index).toList()));
    }

    /** The share of what is unknown in one line, all of it taken as there. */
    MadeShare unknownShare(Tally tally, FormulaLine line) {
        Wholes.Whole whole = tally.whole();
        Map<Integer, Ratio> unknown = Map.of(line.position(), tally.unknownStrength(line));
        return of(whole).madeShare(tally, whole.byPlace(unknown));
    }

    MadeShare share(Tally tally, End end) {
        return of(tally.whole()).madeShare(tally, tally.counted(end));
    }
}
