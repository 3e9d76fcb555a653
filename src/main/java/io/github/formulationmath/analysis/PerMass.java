package io.github.formulationmath.analysis;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;

/**
 * A mass that reacted in a mass of sample: {@code z · M · n / m}. Acid, saponification and iodine value, free acids and free alkali are
 * all of this form.
 *
 * @param asks the key of what it answers
 * @param symbol what the result is called
 * @param consumed what the titration consumed
 * @param mass the sample
 * @param as what the result is expressed as
 * @param molecules how much of it one mole of the titrant stands for: half a molecule of I2 for one thiosulfate
 */
record PerMass(String asks, Symbol symbol, Consumed consumed, Input mass, MolarMass as, Ratio molecules)
        implements Relation {

    @Override
    public Phrase question() {
        return Phrase.of(asks);
    }

    @Override
    public List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(consumed.inputs());
        inputs.add(mass);
        return inputs;
    }

    @Override
    public <V> V in(Reckoning<V> r) {
        return r.named(symbol, value(r));
    }

    <V> V value(Reckoning<V> r) {
        V molar = r.known(as);
        V each = molecules.equals(Ratio.ONE) ? molar : r.product(r.literal(molecules), molar);
        return r.quotient(r.product(each, consumed.moles(r)), mass.in(r));
    }
}
