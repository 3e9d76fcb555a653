package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * Hydroxide that a titration found in a finished soap, without its carbonate, and how much acid may be added for it. The acid is
 * reckoned from the low end of what was found: so much at most, or acid is in excess, which sets fatty acids free. The high end is
 * what may still be there afterwards: {@link #leftAfter}.
 *
 * <p>Example, by hand: at least 0.05 % of NaOH in 1000 g are 0.5 g, 12.5009 mmol; citric acid takes three, so that at most 0.80056 g
 * of it, if pure, may be added.
 *
 * <p>The arithmetic speaks of a soap that is even throughout. It is titrated again after the acid; it defers to local law and to
 * qualified safety assessment.
 *
 * @param alkali the hydroxide that the figure is stated as
 * @param share the least and the greatest share of the soap; total free alkali counts carbonate and is another figure
 */
public record MeasuredExcess(Alkali alkali, Interval<MassFraction> share) implements Serializable {

    private static final Symbol SOAP = Symbol.of("m", "soap-mass", Kind.MASS);
    private static final Symbol FOUND = Symbol.of("f", "hydroxide-at-least", Kind.SHARE);
    private static final Symbol PROTONS = Symbol.of("z", "protons", Kind.NUMBER);
    private static final Symbol STRENGTH = Symbol.of("q", "acid-assay", Kind.SHARE);
    private static final Symbol ADDED = Symbol.of("A", "acid-at-most", Kind.MASS);

    /**
     * Checks presence.
     *
     * @param alkali the hydroxide that the figure is stated as
     * @param share the least and the greatest share of the soap
     */
    public MeasuredExcess {
        Objects.requireNonNull(alkali, "alkali");
        Objects.requireNonNull(share, "share");
    }

    /**
     * What a titration found.
     *
     * @param alkali the hydroxide that the figure is stated as
     * @param least such as {@code "0.05 %"}
     * @param greatest such as {@code "0.07 %"}
     * @return the excess
     * @throws IllegalArgumentException if an end is no share or the ends are reversed
     */
    public static MeasuredExcess of(Alkali alkali, String least, String greatest) {
        return new MeasuredExcess(alkali, Interval.of(MassFraction.parse(least), MassFraction.parse(greatest)));
    }

    /**
     * The most acid that may be added: the low end of what was found, and the acid at its strongest.
     *
     * @param acid what is weighed
     * @param soap the mass of the soap
     * @return the mass of the acid as weighed, with its working; 0 g if the low end is 0 %
     * @throws IllegalArgumentException if the mass is not above 0
     */
    public Amount<Mass> acidAtMost(Acid acid, Amount<Mass> soap) {
        Acid used = Objects.requireNonNull(acid, "acid");
        Neutralised neutralised = new Neutralised(this, used, Amount.requirePositive("soap", soap));
        return Amount.grams(neutralised.in(Reckoning.plain()))
                .inUnitOf(soap.inSmallerUnit())
                .withWorking(Neutralised::question, neutralised, Neutralised::in);
    }

    private record Neutralised(MeasuredExcess of, Acid acid, Amount<Mass> soap) {

        Phrase question() {
            return Phrase.of("question.acid-at-most", acid.name());
        }

        <V> V in(Reckoning<V> r) {
            V found = r.product(
                    r.given(SOAP, soap, Source.user()),
                    r.given(FOUND, of.share.least().fraction(), Source.user()));
            V moles = r.quotient(found, r.known(of.alkali.known()));
            V taken = r.product(
                    r.given(PROTONS, Ratio.of(acid.protons()), Source.user()),
                    r.given(STRENGTH, acid.assay().greatest().fraction(), Source.user()));
            return r.named(ADDED, r.quotient(r.product(moles, r.known(acid.molarMass())), taken));
        }
    }

    /**
     * The hydroxide that may still be there after an acid was added.
     *
     * @param acid what was added
     * @param added how much of it
     * @param soap the mass of the soap before
     * @return the least, not below 0, and the most
     * @throws IllegalArgumentException if more was added than {@link #acidAtMost} allows, or the mass is not above 0
     */
    public Interval<Amount<Mass>> leftAfter(Acid acid, Amount<Mass> added, Amount<Mass> soap) {
        Amount<Mass> most = acidAtMost(acid, soap);
        if (Amount.requireNotNegative("added", added).compareTo(most) > 0) {
            throw new IllegalArgumentException("added is " + Excerpt.of(added) + ", and at most "
                    + AlkaliReport.down(most.exactValue()) + " " + most.symbol()
                    + " is neutralised for certain: more sets fatty acids free;"
                    + " titrate the soap again, and reckon from what is found");
        }
        Ratio perMole = alkali.gramsPerMole();
        Ratio grams = added.canonical();
        return Interval.of(
                Amount.grams(found(share.least(), soap)
                                .minus(acid.greatestDemand().times(grams).times(perMole))
                                .max(Ratio.ZERO))
                        .inUnitOf(soap.inSmallerUnit()),
                Amount.grams(found(share.greatest(), soap)
                                .minus(acid.leastDemand().times(grams).times(perMole)))
                        .inUnitOf(soap.inSmallerUnit()));
    }

    private static Ratio found(MassFraction share, Amount<Mass> soap) {
        return share.fraction().times(soap.canonical());
    }
}
