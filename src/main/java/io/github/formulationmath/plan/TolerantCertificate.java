package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;

/**
 * The readings of {@link Closure#WITHIN_TOLERANCE} and what speaks for them. Against tolerances: that each lies between
 * the ends its tolerance sets, if they do. Without: that the greatest deviation cannot be less. To lessen it some other
 * line would have to take a division (or give one), and would then be off by no less.
 */
record TolerantCertificate(Formula formula, Bench bench) {

    private static final Symbol SHOWN = Symbol.of("n", "shown-divisions", Kind.NUMBER);
    private static final Symbol SHARE = Symbol.of("x", "divisions-of-whole", Kind.NUMBER);
    private static final Symbol DEVIATION = Symbol.of("ζ", "relative-deviation", Kind.SHARE);
    private static final Symbol MOVED = Symbol.of("γ", "deviation-if-moved", Kind.SHARE);

    <V> List<V> derive(Reckoning<V> r, V total) {
        Ratio d = bench.balance().readability().canonical();
        List<Ratio> readings = bench.goal().readings(formula, r.number(total), d);
        List<V> shown = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            shown.add(r.named(SHOWN, formula.lines().get(i), r.literal(readings.get(i))));
        }
        r.note(() -> Phrase.of("note.within-tolerance"));
        r.holds(r.sum(shown), Comparison.EQUAL, total);
        if (r.number(total).isZero()) {
            return shown;
        }
        if (bench.goal().given().isPresent()) {
            enclose(r, total, readings, shown);
        } else {
            least(r, total, readings, shown);
        }
        return shown;
    }

    private <V> void enclose(Reckoning<V> r, V total, List<Ratio> readings, List<V> shown) {
        Ratio d = bench.balance().readability().canonical();
        Ratio error = bench.closingReadingError().canonical().dividedBy(d);
        ReadingEnds ends = new ReadingEnds(formula, bench.goal().given().orElseThrow(), error);
        if (ends.hold(readings, r.number(total))) {
            ends.enclose(r, shown, total);
        }
    }

    private <V> void least(Reckoning<V> r, V total, List<Ratio> readings, List<V> shown) {
        List<V> targets = new ArrayList<>();
        List<V> deviations = new ArrayList<>();
        int worst = 0;
        for (int i = 0; i < shown.size(); i++) {
            FormulaLine line = formula.lines().get(i);
            V target = r.named(SHARE, line, r.product(r.known(line), total));
            targets.add(target);
            deviations.add(r.named(DEVIATION, line, deviation(r, shown.get(i), target)));
            worst = r.number(deviations.get(i)).compareTo(r.number(deviations.get(worst))) > 0 ? i : worst;
        }
        // The worst line has too much if it could give one away, too little if it could take one.
        int way = readings.get(worst).compareTo(r.number(targets.get(worst))) > 0 ? 1 : -1;
        for (int i = 0; i < shown.size(); i++) {
            if (i != worst && readings.get(i).plus(Ratio.of(way)).signum() >= 0) {
                V moved = deviation(r, r.sum(shown.get(i), r.literal(way)), targets.get(i));
                r.holds(r.named(MOVED, formula.lines().get(i), moved), Comparison.AT_LEAST, deviations.get(worst));
            }
        }
    }

    private static <V> V deviation(Reckoning<V> r, V reading, V target) {
        return r.quotient(r.absolute(r.difference(reading, target)), target);
    }
}
