package io.github.formulationmath.pot;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import javax.measure.quantity.Mass;

/** What one weighing says of a mass, by the error model of its balance: the same for a line, a later addition and the pot. */
final class SureMass {

    /** A reading as an earlier result, to be reckoned on. */
    private record Read(Subject subject, PotMass mass, Amount<Mass> unit) {

        Amount<Mass> amount() {
            return Amount.grams(mass.grams(Reckoning.plain()))
                    .withWorking(read -> Phrase.of("question.given-mass", read.subject.name()), this, Read::grams)
                    .inUnitOf(unit);
        }

        private <V> V grams(Reckoning<V> r) {
            return mass.grams(r);
        }
    }

    private SureMass() {}

    /** Where the mass behind a reading is sure to lie; not below 0. */
    static Bounds bounds(Subject subject, Ratio reading, Balance balance, WeighingMethod method) {
        Interval<Amount<Mass>> bounds = error(subject, shown(subject, reading, balance), balance, method)
                .bounds();
        return Bounds.closed(bounds.least().canonical(), bounds.greatest().canonical());
    }

    /** How uncertain the mass behind a reading is. */
    static Spread spread(Subject subject, Ratio reading, Balance balance, WeighingMethod method) {
        return Spread.of(error(subject, shown(subject, reading, balance), balance, method));
    }

    /** What is most likely there: the reading, corrected for what is known of residue and air; it lies in the bounds. */
    static <V> V estimate(Reckoning<V> r, Subject subject, PotMass reading, Balance balance, WeighingMethod method) {
        Amount<Mass> estimate = error(subject, reading, balance, method).estimate();
        return estimate.canonical().equals(reading.grams(Reckoning.plain())) ? reading.grams(r) : r.known(estimate);
    }

    private static PotMass shown(Subject subject, Ratio reading, Balance balance) {
        Amount<Mass> read = Amount.grams(reading).inUnitOf(balance.readability());
        return new PotMass.Shown(PotMass.READING, subject, read, Source.user());
    }

    private static AdditionError error(Subject subject, PotMass reading, Balance balance, WeighingMethod method) {
        Amount<Mass> mass = new Read(subject, reading, balance.readability()).amount();
        return AdditionError.of(Addition.of(subject, mass, mass, balance).by(method));
    }
}
