package io.github.formulationmath.classroom;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;

/** Exercises on recipes: percent, what is filled up to the whole, parts, and another batch size. */
final class RecipeTopics {

    private static final String WATER = "Aqua";
    private static final Ratio TENTH = Ratio.of(1, 10);
    private static final Ratio HUNDREDTH = Ratio.of(1, 100);

    /** 1.25 % to 9.75 % by a quarter of a percent. */
    private static final List<Ratio> SHARES =
            IntStream.rangeClosed(5, 39).mapToObj(share -> Ratio.of(share, 400)).toList();

    private RecipeTopics() {}

    private static Amount<Mass> massIn(Formula formula, Ratio batch, String line) {
        return Batch.of(formula, BatchSize.ofMass(Amount.grams(batch)))
                .line(line)
                .mass();
    }

    /** Lines in percent, and water up to the whole. */
    static Formula cream(List<String> names, List<Ratio> shares) {
        FormulaBuilder cream = Formula.inPercent("class cream").quantitySufficient(WATER);
        for (int i = 0; i < names.size(); i++) {
            cream.line(Ingredient.of(names.get(i)), MassFraction.of(shares.get(i)));
        }
        return cream.build();
    }

    /** m = w · M. */
    static Draft percentToGrams(Draw draw, Ties ties) {
        Rounding digits = ties.to(HUNDREDTH);
        List<String> names = draw.ingredients(2);
        List<Ratio> shares = draw.some(2, SHARES);
        Ratio w = shares.get(0);
        Ratio v = shares.get(1);
        Ratio batch = draw.multiple(21, 99, 1).times(5);
        Inset line = Inset.name(names.get(0));
        Draft draft = new Draft(
                Topic.PERCENT_TO_GRAMS,
                "",
                digits,
                Inset.percent(w),
                line,
                Inset.percent(v),
                Inset.name(names.get(1)),
                Inset.grams(batch));
        draft.atMost(batch)
                .slip("other-line", v.times(batch), Inset.name(names.get(1)), Inset.percent(v))
                .slip("both-lines", v.plus(w).times(batch))
                .slip("percent-as-grams", w.times(100))
                .slip("divided-by-percent", batch.dividedBy(w.times(100)))
                .slip("of-the-others", batch.times(w).dividedBy(Ratio.ONE.minus(w)))
                .slip("of-the-rest", batch.minus(w.times(batch)).times(w))
                .slip("percent-of-percent", w.times(100).dividedBy(batch).times(100))
                .slip("without-the-other-line", Ratio.ONE.minus(v).times(batch).times(w))
                .check(Inset.grams(batch.dividedBy(100)), Inset.number(w.times(100)));
        return draft.answeredBy(Kind.MASS, massIn(cream(names, List.of(w, v)), batch, names.get(0)));
    }

    /** m = (1 − Σw) · M. */
    static Draft quantitySufficient(Draw draw, Ties ties) {
        Rounding digits = ties.to(TENTH);
        List<String> names = draw.ingredients(3);
        List<Ratio> w = List.of(draw.multiple(6, 30, 200), draw.multiple(6, 30, 200), draw.multiple(6, 30, 200));
        Ratio sum = w.get(0).plus(w.get(1)).plus(w.get(2));
        Ratio batch = draw.multiple(22, 98, 1).times(5);
        Draft draft = new Draft(
                Topic.QUANTITY_SUFFICIENT, "", digits, Inset.lines(names, w, Inset::percent, Inset.grams(batch)));
        draft.atMost(batch)
                .slip("not-taken-from-the-whole", sum.times(batch))
                .slip("last-line-left-out", Ratio.ONE.minus(sum).plus(w.get(2)).times(batch))
                .slip("first-line-left-out", Ratio.ONE.minus(sum).plus(w.get(0)).times(batch))
                .slip("percents-taken-as-grams", batch.minus(sum.times(100)))
                .slip("rest-of-a-hundred", Ratio.of(100).minus(sum.times(100)))
                .slip("on-top-of-the-whole", batch.dividedBy(Ratio.ONE.plus(sum)))
                .slip("line-taken-twice", Ratio.ONE.minus(sum).minus(w.get(1)).times(batch), Inset.name(names.get(1)))
                .slip("only-one-taken", Ratio.ONE.minus(w.get(0)).times(batch), Inset.name(names.get(0)))
                .check(Inset.grams(batch));
        return draft.answeredBy(Kind.MASS, massIn(cream(names, w), batch, WATER));
    }

    /** m = p · M / Σp. */
    static Draft parts(Draw draw, Ties ties) {
        Rounding digits = ties.to(TENTH);
        List<String> names = draw.ingredients(3);
        List<Ratio> p = draw.some(3, List.of(1, 2, 3, 4, 5, 6, 7, 8)).stream()
                .map(part -> Ratio.of(part))
                .toList();
        Ratio all = p.get(0).plus(p.get(1)).plus(p.get(2));
        Ratio batch = draw.multiple(22, 98, 1).times(5);
        Draft draft = new Draft(Topic.PARTS, "", digits, Inset.lines(names, p, Inset::number, Inset.grams(batch)));
        Ratio mine = p.get(0);
        draft.atMost(batch)
                .slip("divided-by-the-number-of-lines", batch.dividedBy(3))
                .slip("part-to-the-rest", mine.times(batch).dividedBy(all.minus(mine)))
                .slip("one-part-only", batch.dividedBy(all))
                .slip("divided-by-the-part", batch.dividedBy(mine))
                .slip("parts-for-percent", mine.times(batch).dividedBy(100))
                .slip("line-not-counted", mine.times(batch).dividedBy(all.minus(p.get(2))), Inset.name(names.get(2)))
                .slip(
                        "other-line",
                        p.get(1).times(batch).dividedBy(all),
                        Inset.name(names.get(1)),
                        Inset.number(p.get(1)))
                .slip("line-counted-twice", mine.times(batch).dividedBy(all.plus(mine)))
                .check(Inset.grams(batch.dividedBy(all)));
        Formula balm = Formula.inParts("class balm")
                .line(names.get(0), p.get(0).toString())
                .line(names.get(1), p.get(1).toString())
                .line(names.get(2), p.get(2).toString())
                .build();
        return draft.answeredBy(Kind.MASS, massIn(balm, batch, names.get(0)));
    }

    /** m = g · M / Σg. */
    static Draft scaling(Draw draw, Ties ties) {
        Rounding digits = ties.to(TENTH);
        List<String> names = draw.ingredients(3);
        List<Ratio> g = draw.some(3, List.of(12, 15, 18, 22, 25, 28, 34, 36, 42, 45)).stream()
                .map(mass -> Ratio.of(mass))
                .toList();
        Ratio all = g.get(0).plus(g.get(1)).plus(g.get(2));
        Ratio batch = draw.multiple(24, 70, 1).times(5);
        Draft draft = new Draft(Topic.SCALING, "", digits, Inset.lines(names, g, Inset::grams, Inset.grams(batch)));
        Ratio mine = g.get(0);
        draft.atMost(batch)
                .slip("factor-inverted", mine.times(all).dividedBy(batch))
                .slip("difference-added", mine.plus(batch.minus(all)))
                .slip("difference-shared-equally", mine.plus(batch.minus(all).dividedBy(3)))
                .slip("own-line-not-counted", mine.times(batch).dividedBy(all.minus(mine)))
                .slip(
                        "other-line",
                        g.get(1).times(batch).dividedBy(all),
                        Inset.name(names.get(1)),
                        Inset.grams(g.get(1)))
                .slip(
                        "factor-rounded-to-a-whole",
                        mine.times(batch.dividedBy(all).toWhole(RoundingMode.HALF_UP)))
                .slip("grams-as-percent", mine.times(batch).dividedBy(100))
                .slip("divided-by-the-number-of-lines", batch.dividedBy(3))
                .check(Inset.number(batch.dividedBy(all)));
        Formula recipe = Formula.inMasses("class recipe")
                .line(names.get(0), g.get(0) + " g")
                .line(names.get(1), g.get(1) + " g")
                .line(names.get(2), g.get(2) + " g")
                .build();
        return draft.answeredBy(Kind.MASS, massIn(recipe, batch, names.get(0)));
    }
}
