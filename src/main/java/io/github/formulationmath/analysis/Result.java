package io.github.formulationmath.analysis;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.IodineValue;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.quantity.Mass;

/**
 * How a number becomes a result, and the unit it is shown in.
 *
 * @param unit the unit
 * @param size its size in the counting unit
 * @param make the result of a number that is not below 0 and not above {@code most}
 * @param explain gives it its working, if it can carry one
 * @param most the number beyond which there is nothing
 * @param <T> what was determined
 */
record Result<T extends Comparable<? super T>>(
        String unit, Ratio size, Function<Ratio, T> make, BiFunction<T, Relation, T> explain, Ratio most) {

    private static final Amount<Mass> GRAM = Amount.grams(Ratio.ONE);
    private static final Ratio ANY = Ratio.parse("1e9");
    private static final Rounding SHOWN = Rounding.toSignificantDigits(6);

    static final Result<AlkaliNumber> ALKALI_NUMBER = new Result<>(
            "mg KOH/g",
            Ratio.of(1, 1000),
            grams -> AlkaliNumber.of(Amount.grams(grams), GRAM),
            (value, any) -> value,
            ANY);
    static final Result<IodineValue> IODINE_VALUE = new Result<>(
            "g I2/100 g",
            Ratio.of(1, 100),
            grams -> IodineValue.of(Amount.grams(grams), GRAM),
            (value, any) -> value,
            ANY);
    static final Result<SaponificationEquivalent> EQUIVALENT =
            new Result<>("g/mol", Ratio.ONE, SaponificationEquivalent::new, (value, any) -> value, ANY);
    static final Result<MassFraction> SHARE = new Result<>(
            "%",
            Ratio.of(1, 100),
            MassFraction::of,
            (share, relation) -> share.withWorking(Relation::question, relation, Relation::in),
            Ratio.ONE);

    /** The result of a relation, refused where there is no such thing. */
    T of(Ratio number, Relation relation) {
        if (number.compareTo(most) > 0) {
            throw new IllegalArgumentException("the readings make "
                    + SHOWN.format(number.dividedBy(size)) + " " + unit
                    + ", more than there is: look for a slip in the mass of the sample, the factor, the nominal"
                    + " concentration or the volumes");
        }
        return explain.apply(make.apply(number), relation);
    }

    /** The result at the end of an interval, cut where there is nothing beyond. */
    T cut(Ratio number) {
        return make.apply(number.max(Ratio.ZERO).min(most));
    }
}
