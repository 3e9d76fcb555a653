package io.github.formulationmath.analysis;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Evidence;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * The assay of an alkali that has carbonate in it, by titration with acid to two end points.
 *
 * <p>To the end point of phenolphthalein all hydroxide is neutralised and the carbonate is turned into hydrogen carbonate; on to that
 * of methyl orange the hydrogen carbonate is. With the burette read at both, from one start, the second step stands for the carbonate and
 * the first less the second for the hydroxide:
 *
 * <pre>{@literal
 * carbonate = M(carbonate) · c f (V₂ − V₁) / m,  hydroxide = M · c f (V₁ − (V₂ − V₁)) / m,  total alkali = M · c f V₂ / m
 * }</pre>
 *
 * <p>Source: the assay of potassium hydroxide of the NF, in which each mL of 1 N acid is 56.11 mg of total alkali as KOH, and each mL of
 * the second step 138.2 mg of K2CO3.
 *
 * <p>Immutable and thread-safe.
 */
public final class LyeAssay {

    private static final Subject FIRST = Subject.of("1", "phenolphthalein");
    private static final Subject SECOND = Subject.of("2", "methyl orange");
    private static final Subject SAMPLE = Subject.of("", "the sample");
    private static final Symbol HYDROXIDE = Symbol.of("w", "hydroxide-found", Kind.SHARE);
    private static final Symbol CARBONATE = Symbol.of("w", "carbonate-found", Kind.SHARE);
    private static final Symbol TOTAL = Symbol.of("w", "total-alkali-found", Kind.SHARE);

    private final Alkali alkali;
    private final Titrant titrant;
    private final Input first;
    private final Input second;
    private final Input mass;

    private LyeAssay(Alkali alkali, Titrant titrant, Input first, Input second, Input mass) {
        this.alkali = alkali;
        this.titrant = titrant;
        this.first = first;
        this.second = second;
        this.mass = mass;
    }

    /**
     * The readings.
     *
     * @param alkali whose hydroxide and carbonate it is
     * @param titrant the acid in the burette
     * @param toPhenolphthalein the reading at the first end point, 0 or more
     * @param toMethylOrange the reading at the second, from the same start, so not below the first and not above twice the first
     * @param sample the mass of alkali or lye in what was titrated, above 0
     * @return the assay
     * @throws IllegalArgumentException if a reading or the mass is out of range
     */
    public static LyeAssay of(
            Alkali alkali,
            Titrant titrant,
            Estimate<Volume> toPhenolphthalein,
            Estimate<Volume> toMethylOrange,
            Estimate<Mass> sample) {
        Objects.requireNonNull(toPhenolphthalein, "toPhenolphthalein");
        Objects.requireNonNull(toMethylOrange, "toMethylOrange");
        Objects.requireNonNull(sample, "sample");
        Input first = Consumed.volume(FIRST, toPhenolphthalein);
        Input second = Consumed.volume(SECOND, toMethylOrange);
        Consumed.requireNotLess(
                second,
                first,
                "the second end point is read on the same filling and comes later; if the burette was filled again, add the two"
                        + " readings");
        Ratio step = second.estimate()
                .value()
                .canonical()
                .minus(first.estimate().value().canonical());
        if (step.compareTo(first.estimate().value().canonical()) > 0) {
            throw new IllegalArgumentException("volume for methyl orange is " + Excerpt.of(toMethylOrange.value())
                    + ", more than twice " + Excerpt.of(toPhenolphthalein.value())
                    + " for phenolphthalein: then hydrogen carbonate is in it and no hydroxide left, which this assay does not"
                    + " tell apart");
        }
        return new LyeAssay(
                Objects.requireNonNull(alkali, "alkali"),
                Objects.requireNonNull(titrant, "titrant"),
                first,
                second,
                Consumed.mass(SAMPLE, sample));
    }

    /** One of the three shares; the volume that stands for it is a combination of the two readings. */
    private record Share(LyeAssay of, Part part) implements Relation {

        enum Part {
            HYDROXIDE,
            CARBONATE,
            TOTAL
        }

        @Override
        public Phrase question() {
            return Phrase.of(
                    switch (part) {
                        case HYDROXIDE -> "question.hydroxide-found";
                        case CARBONATE -> "question.carbonate-found";
                        case TOTAL -> "question.total-alkali-found";
                    });
        }

        @Override
        public List<Input> inputs() {
            return List.of(of.titrant.factor(), of.first, of.second, of.mass);
        }

        @Override
        public <V> V in(Reckoning<V> r) {
            V volume = switch (part) {
                case HYDROXIDE -> r.difference(of.first.in(r), r.difference(of.second.in(r), of.first.in(r)));
                case CARBONATE -> r.difference(of.second.in(r), of.first.in(r));
                case TOTAL -> of.second.in(r);
            };
            MolarMass molar = part == Part.CARBONATE ? of.alkali.carbonateMolarMass() : of.alkali.molarMass();
            V grams = r.product(r.known(molar), r.product(of.titrant.strength(r), volume));
            Symbol symbol = switch (part) {
                case HYDROXIDE -> LyeAssay.HYDROXIDE;
                case CARBONATE -> LyeAssay.CARBONATE;
                case TOTAL -> LyeAssay.TOTAL;
            };
            return r.named(symbol, r.quotient(grams, of.mass.in(r)));
        }
    }

    private Determination<MassFraction> share(Share.Part part) {
        return new Determination<>(new Share(this, part), Result.SHARE);
    }

    /**
     * The share of hydroxide: what saponifies.
     *
     * @return the share
     * @throws IllegalArgumentException if it is above 100 %: a reading, the factor or the mass is wrong
     */
    public Determination<MassFraction> hydroxide() {
        return share(Share.Part.HYDROXIDE);
    }

    /**
     * The share of carbonate: what does not, in the cold.
     *
     * @return the share
     * @throws IllegalArgumentException if it is above 100 %: a reading, the factor or the mass is wrong
     */
    public Determination<MassFraction> carbonate() {
        return share(Share.Part.CARBONATE);
    }

    /**
     * The total alkali, carbonate included, expressed as the hydroxide: what pharmacopoeias call the assay.
     *
     * @return the share
     * @throws IllegalArgumentException if it is above 100 %: a reading, the factor or the mass is wrong
     */
    public Determination<MassFraction> totalAlkali() {
        return share(Share.Part.TOTAL);
    }

    /**
     * The alkali as a grade to reckon with: hydroxide and carbonate, each value ± U. What is built on it holds within the coverage.
     *
     * @param form solid or dissolved
     * @param probability the level of confidence, such as {@code "95 %"}
     * @param source who titrated it, when
     * @return the grade
     * @throws IllegalArgumentException if no input has an uncertainty, or as the grade itself
     */
    public AlkaliGrade grade(AlkaliGrade.Form form, String probability, Source source) {
        return new AlkaliGrade(
                alkali,
                hydroxide().expanded(probability).interval(),
                carbonate().expanded(probability).interval(),
                form,
                Evidence.COVERAGE_INTERVAL,
                source);
    }
}
