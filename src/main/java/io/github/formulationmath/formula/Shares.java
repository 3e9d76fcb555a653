package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * The relation between amounts as written and shares of the whole: {@code w_i = a_i / A}, where A is 100 %, the sum of
 * the lines, or a stated mass, and the q.s. line has {@code a = A − Σ others}.
 */
record Shares(List<Written> lines, Rule rule, Ratio whole) implements Explained, Serializable {

    private static final Symbol SHARE = Symbol.of("w", "share", Kind.SHARE);

    /** A line as written, before its share is known. */
    record Written(int index, String phase, Ingredient ingredient, LineAmount amount) implements Subject, Serializable {

        boolean isQuantitySufficient() {
            return amount instanceof LineAmount.QuantitySufficient;
        }

        @Override
        public String subscript() {
            return Integer.toString(index + 1);
        }

        @Override
        public String name() {
            return ingredient.name();
        }

        @Override
        public String toString() {
            return subscript() + ". " + ingredient + " " + amount;
        }
    }

    /** What the lines of a formula are shares of, and so in what they are written. */
    enum Rule {
        /** Percentages that must make up 100 %. */
        PERCENT("w", Kind.SHARE, "percent", "2.5 %"),
        /** Percentages that are divided by whatever they add up to, because the caller asked for it. */
        NORMALISED("a", Kind.SHARE, PERCENT.words, PERCENT.example),
        /** Parts, divided by their sum. */
        PARTS("p", Kind.NUMBER, "parts", "3 parts"),
        /** Masses, divided by their sum. */
        MASSES("g", Kind.MASS, "masses", "12.5 g"),
        /** Masses and a q.s. line that fills up to a stated mass. */
        MASSES_TO_MAKE("g", Kind.MASS, MASSES.words, MASSES.example);

        private final Symbol written;
        private final Symbol whole;
        private final String words;
        private final String example;

        Rule(String letter, Kind kind, String words, String example) {
            this.written = Symbol.of(letter, "written-amount", kind);
            this.whole = Symbol.of(letter + "_total", "written-total", kind);
            this.words = words;
            this.example = example;
        }

        LineAmount read(String text, AmountFormat format) {
            return switch (this) {
                case PERCENT, NORMALISED -> new LineAmount.Share(format.parseMassFraction(text));
                case PARTS -> new LineAmount.Parts(format.parseNumber(text));
                case MASSES, MASSES_TO_MAKE -> new LineAmount.Weight(format.parseMass(text));
            };
        }

        boolean isOfMasses() {
            return this == MASSES || this == MASSES_TO_MAKE;
        }

        /** Whether an amount that is not q.s. is of the kind in which such formulas are written. */
        boolean takes(LineAmount amount) {
            return switch (this) {
                case PERCENT, NORMALISED -> amount instanceof LineAmount.Share;
                case PARTS -> amount instanceof LineAmount.Parts;
                case MASSES, MASSES_TO_MAKE -> amount instanceof LineAmount.Weight;
            };
        }

        String words() {
            return words;
        }

        String example() {
            return example;
        }
    }

    /** The written number in the canonical unit: a fraction, parts, or grams; 0 for q.s. */
    static Ratio number(LineAmount amount) {
        if (amount instanceof LineAmount.Share share) {
            return share.fraction().fraction();
        }
        if (amount instanceof LineAmount.Parts parts) {
            return parts.parts();
        }
        return amount instanceof LineAmount.Weight weight ? weight.mass().canonical() : Ratio.ZERO;
    }

    /** @param toMake what the lines are to make up where the rule does not say it: a mass in grams, else 1 */
    static Shares of(List<Written> lines, Rule rule, Ratio toMake) {
        Shares open = new Shares(List.copyOf(lines), rule, toMake);
        return new Shares(open.lines, rule, open.wholeIn(Reckoning.plain()));
    }

    /** The lines with their shares, which together are the whole. */
    List<FormulaLine> resolved(String name) {
        Reckoning<Ratio> r = Reckoning.plain();
        List<FormulaLine> resolved = new ArrayList<>(lines.size());
        for (Written line : lines) {
            resolved.add(new FormulaLine(line, this, share(r, whole, line)));
        }
        if (rule == Rule.PERCENT) {
            requireWhole(name, resolved);
        }
        return resolved;
    }

    /** Percentages as written may miss the whole; all others are parts of their own sum, or of a whole that a line fills up to. */
    private static void requireWhole(String name, List<FormulaLine> resolved) {
        Ratio total = Ratio.ZERO;
        for (FormulaLine line : resolved) {
            total = total.plus(line.fraction());
        }
        if (!total.equals(Ratio.ONE)) {
            throw FormulaTotalException.notWhole(name, total);
        }
    }

    /** The whole A that the lines are shares of; known, so that a working of many lines adds it up once. */
    @Override
    public Origin origin() {
        return Origin.of(shares -> Phrase.of("question.written-total"), whole, this, Shares::wholeIn);
    }

    private <V> V wholeIn(Reckoning<V> r) {
        return switch (rule) {
            case PERCENT -> r.literal(1);
            case MASSES_TO_MAKE -> r.given(rule.whole, whole, Source.user());
            case NORMALISED, PARTS, MASSES -> r.named(rule.whole, r.sum(writtenExcept(r, -1)));
        };
    }

    /** The share of one line of the whole. */
    <V> V share(Reckoning<V> r, V whole, Written line) {
        boolean direct = rule == Rule.PERCENT;
        if (direct && !line.isQuantitySufficient()) {
            return written(r, line);
        }
        if (direct) {
            return r.named(SHARE, line, rest(r, whole, line));
        }
        V amount = line.isQuantitySufficient() ? r.named(rule.written, line, rest(r, whole, line)) : written(r, line);
        return r.named(SHARE, line, r.quotient(amount, whole));
    }

    private <V> V rest(Reckoning<V> r, V whole, Written line) {
        List<V> others = writtenExcept(r, line.index());
        V rest = others.isEmpty() ? whole : r.difference(whole, r.sum(others));
        if (!r.holds(rest, Comparison.GREATER, r.literal(0))) {
            throw FormulaTotalException.nothingLeft(
                    line.name(), this.whole.minus(r.number(rest)).dividedBy(this.whole));
        }
        return rest;
    }

    private <V> List<V> writtenExcept(Reckoning<V> r, int index) {
        List<V> amounts = new ArrayList<>(lines.size());
        for (Written line : lines) {
            if (line.index() != index) {
                amounts.add(written(r, line));
            }
        }
        return amounts;
    }

    private <V> V written(Reckoning<V> r, Written line) {
        LineAmount amount = line.amount();
        return r.given(rule.written, line, number(amount), () -> Source.written(amount.toString()));
    }
}
