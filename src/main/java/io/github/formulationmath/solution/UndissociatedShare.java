package io.github.formulationmath.solution;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;

/**
 * How much of a preservative acid has kept all its protons at a pH, which is the form that is said to work. It is arithmetic on the
 * numbers given, and not on whether a product is preserved: that a challenge test tells.
 *
 * <p>{@code α = 1 / (1 + 10^(pH − pK₁) + 10^(2 pH − pK₁ − pK₂) + …)}. It falls with the pH and rises with every pK, so that its ends are
 * corners. Two answers are to be printed together: {@link #ideal()}, the numbers as given, and {@link #upToIonicStrength}, which
 * allows for what salts do to the constant; at pH 5 the second moves benzoic acid from 13.8 to 11.1 %, ten times what its constant
 * is uncertain by.
 *
 * <p>The share is of moles of the acid, which is also the share of its mass once a salt is stated as the acid. No salt, and no pH that
 * a product has without water.
 *
 * <p>The measured pH is an activity, so that the constant to use with it is the mixed one: {@code pK' = pK + (1 − 2z) log γ₁} for a
 * step from charge z, with Davies' {@code log γ₁ = −0.509 (√I/(1 + √I) − 0.3 I)} at 25 °C (the figure 0.509 is from memory
 * and not of the law; it turns at I = 0.395, beyond which it is refused).
 *
 * <p>Immutable.
 */
public final class UndissociatedShare {

    private static final Ratio ZERO_PH = Ratio.ZERO;
    private static final Ratio DAVIES_KELVIN = Amount.temperature("25 °C").canonical();
    private static final int FINEST = 1000;
    private static final Rounding PERCENT = Rounding.toDecimalPlaces(2);
    private static final Ratio FOURTEEN = Ratio.of(14);

    private static final Symbol READING = Symbol.of("pH", "ph-reading", Kind.NUMBER);
    private static final Symbol CONSTANT = Symbol.of("pK", "acid-constant", Kind.NUMBER);
    private static final Symbol ABOVE = Symbol.of("u", "ph-above-pk", Kind.NUMBER);
    private static final Symbol RATIO = Symbol.of("q", "dissociated-ratio", Kind.NUMBER);
    private static final Symbol UNDISSOCIATED = Symbol.of("α", "undissociated-share", Kind.SHARE);

    private final AcidConstants acid;
    private final Interval<Ph> ph;

    private UndissociatedShare(AcidConstants acid, Interval<Ph> ph) {
        this.acid = acid;
        this.ph = ph;
    }

    /**
     * The share at a pH that was measured.
     *
     * @param acid the constants
     * @param ph the reading, such as {@code "5.0"}
     * @param off what it may be off by, such as {@code "0.1"} for a meter or {@code "0.5"} for paper
     * @return the share
     * @throws IllegalArgumentException if the pH may lie outside 0 to 14, or it may be off by less than 0
     */
    public static UndissociatedShare of(AcidConstants acid, String ph, String off) {
        Objects.requireNonNull(acid, "acid");
        Ratio reading = Ratio.parse(ph);
        Ratio half = Ratio.parse(off);
        if (half.signum() < 0) {
            throw new IllegalArgumentException("off is " + Excerpt.of(half) + ": what a pH of " + Excerpt.of(reading)
                    + " may be off by is 0 or more, such as 0.1 for a meter");
        }
        if (reading.minus(half).compareTo(ZERO_PH) < 0 || reading.plus(half).compareTo(FOURTEEN) > 0) {
            throw new IllegalArgumentException("pH is " + Excerpt.of(reading) + " and off by " + Excerpt.of(half)
                    + ": it must lie between 0 and 14, and be of a product with water");
        }
        return new UndissociatedShare(acid, Interval.of(Ph.of(reading.minus(half)), Ph.of(reading.plus(half))));
    }

    /**
     * The share by the numbers as given.
     *
     * @return the least and the greatest share, a little outside the exact ends
     */
    public Interval<MassFraction> ideal() {
        return Interval.of(share(ph.greatest(), acid.end(false), false), share(ph.least(), acid.end(true), true));
    }

    /**
     * The share of an acid with one proton, with the middles of pH and pK: the figure of a textbook, {@code 1 / (1 + 10^(pH − pK))}, for
     * teaching. It is no bound, and what is uncertain in it {@link #ideal()} tells.
     *
     * @return the share with its working; the power of ten is rounded to 17 digits
     * @throws IllegalStateException if the acid has more protons than one
     */
    public MassFraction atTheMiddles() {
        if (acid.protons() > 1) {
            throw new IllegalStateException(acid.name() + " has " + acid.protons()
                    + " protons, and the relation with one power of ten holds for one: ask ideal()");
        }
        return MassFraction.of(middle(Reckoning.plain()))
                .withWorking(any -> Phrase.of("question.undissociated", acid.name()), this, UndissociatedShare::middle);
    }

    private <V> V middle(Reckoning<V> r) {
        V reading = r.given(READING, middle(ph), Source.user());
        V constant = r.given(
                CONSTANT,
                Subject.of(acid.name(), acid.name()),
                middle(acid.steps().get(0)),
                acid.source());
        V above = r.named(ABOVE, r.difference(reading, constant));
        V ratio = r.named(RATIO, r.tenTo(above));
        return r.named(UNDISSOCIATED, r.quotient(r.literal(1), r.sum(r.literal(1), ratio)));
    }

    private static Ratio middle(Interval<Ph> range) {
        return range.least().value().plus(range.greatest().value()).dividedBy(2);
    }

    /**
     * The share if salts make an ionic strength of anything from 0 up to I.
     *
     * @param most I, such as 0.1 mol/L, at most 0.39 mol/L
     * @return the least and the greatest share. Steps whose constants move in opposite directions, as of an amino acid, are each
     *     taken at their worse end, so that the interval is certain and may be wider than what one ionic strength can do
     * @throws IllegalArgumentException if I lies outside, or the constants hold at another ionic strength than 0 or elsewhere than
     *     at 25 °C
     */
    public Interval<MassFraction> upToIonicStrength(IonicStrength most) {
        Objects.requireNonNull(most, "most");
        if (!acid.ionicStrength().equals(IonicStrength.ZERO)
                || !acid.temperature().canonical().equals(DAVIES_KELVIN)) {
            throw new IllegalArgumentException("the constants of " + Excerpt.of(acid.name()) + " hold at "
                    + acid.holdsAt() + ": only those at 25 °C and ionic strength 0 mol/L can be moved to another ionic"
                    + " strength; take such a row");
        }
        Ratio shift = Davies.mostShift(most);
        return Interval.of(
                share(ph.greatest(), shifted(acid.end(false), shift, false), false),
                share(ph.least(), shifted(acid.end(true), shift, true), true));
    }

    /** Each step moved by as much as the ionic strength may move it in one direction. */
    private List<Ratio> shifted(List<Ratio> pks, Ratio shift, boolean up) {
        List<Ratio> moved = new ArrayList<>();
        for (int j = 0; j < pks.size(); j++) {
            // log γ₁ is −shift at most: a step from charge z moves by −(1 − 2z) · shift.
            Ratio by = shift.times(2L * (acid.charge() - j) - 1);
            boolean moves = by.signum() > 0 == up;
            moved.add(moves ? pks.get(j).plus(by) : pks.get(j));
        }
        return moved;
    }

    private static MassFraction share(Ph at, List<Ratio> pks, boolean most) {
        Enclosure share = Species.at(at.value(), pks).undissociated();
        return MassFraction.of(most ? share.greatest() : share.least());
    }

    /**
     * The pH up to which at least a share of an acid is undissociated; for one step {@code pH ≤ pK − log₁₀(x/(1 − x))}.
     *
     * @param acid the constants
     * @param share such as {@code "50 %"}, above 0 and below 100 %
     * @return the pH up to which it is sure for every value of the constants, to a thousandth, rounded down
     * @throws IllegalArgumentException if the share is 0 or the whole, or is sure at no pH from 0 to 14
     */
    public static Ph highestPh(AcidConstants acid, String share) {
        Ratio wanted = between(share);
        List<Ratio> strongest = Objects.requireNonNull(acid, "acid").end(false);
        int last = last(
                thousandths -> Species.at(Ratio.of(thousandths, FINEST), strongest)
                                .undissociated()
                                .least()
                                .compareTo(wanted)
                        >= 0,
                acid,
                share);
        return Ph.of(Ratio.of(last, FINEST));
    }

    /**
     * The pH from which at least a share of a base is free of protons.
     *
     * @param base the constants of its ammonium ion
     * @param share such as {@code "50 %"}, above 0 and below 100 %
     * @return the pH from which it is sure for every value of the constants, to a thousandth, rounded up
     * @throws IllegalArgumentException if these are not the constants of a base, the share is 0 or the whole, or is sure at no pH
     *     from 0 to 14
     */
    public static Ph lowestPh(AcidConstants base, String share) {
        if (Objects.requireNonNull(base, "base").charge() != base.protons()) {
            throw new IllegalArgumentException(Excerpt.of(base.name()) + " has charge " + base.charge() + " and "
                    + base.protons() + " protons to lose: a base without charge is left of an ion that has as many of"
                    + " both; for an acid ask highestPh");
        }
        Ratio wanted = between(share);
        List<Ratio> weakest = base.end(true);
        int most = FOURTEEN.times(FINEST).numerator().intValueExact();
        int back = last(
                thousandths -> Species.at(Ratio.of((long) most - thousandths, FINEST), weakest)
                                .bare()
                                .least()
                                .compareTo(wanted)
                        >= 0,
                base,
                share);
        return Ph.of(Ratio.of((long) most - back, FINEST));
    }

    private static Ratio between(String share) {
        MassFraction wanted = MassFraction.parse(share);
        if (wanted.equals(MassFraction.ZERO) || wanted.equals(MassFraction.WHOLE)) {
            throw new IllegalArgumentException(
                    "share is " + wanted + ": no pH has exactly that; it must lie between 0 and 100 %");
        }
        return wanted.fraction();
    }

    /** The last thousandth for which something holds that holds up to some place and not beyond. */
    private static int last(IntPredicate holds, AcidConstants acid, String share) {
        int low = 0;
        int high = FOURTEEN.times(FINEST).numerator().intValueExact() + 1;
        if (!holds.test(low)) {
            throw new IllegalArgumentException("a share of " + Excerpt.of(share) + " of " + Excerpt.of(acid.name())
                    + " is sure at no pH from 0 to 14: ask for a smaller share");
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (holds.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Whether the undissociated acid is more than water dissolves: then it comes out as crystals, and is missing.
     *
     * @param asAcid the least and the greatest concentration of the acid in all its forms, stated as the acid
     * @param solubility of the acid itself in the water phase, from a source of the caller's; there is no default
     * @return a warning; empty if it stays dissolved for every value in the ranges
     */
    public Optional<Phrase> crystallises(Interval<MassConcentration> asAcid, MassConcentration solubility) {
        Objects.requireNonNull(asAcid, "asAcid");
        Interval<MassFraction> share = ideal();
        Ratio least = share.least().fraction().times(asAcid.least().gramsPerMillilitre());
        Ratio most = share.greatest().fraction().times(asAcid.greatest().gramsPerMillilitre());
        if (most.compareTo(solubility.gramsPerMillilitre()) <= 0) {
            return Optional.empty();
        }
        String key = least.compareTo(solubility.gramsPerMillilitre()) > 0
                ? "solution.crystallises"
                : "solution.may-crystallise";
        return Optional.of(Phrase.of(key, acid.name(), solubility.toString()));
    }

    /**
     * Both lines to be printed together, with what they do not tell.
     *
     * @param most the greatest ionic strength of the product
     * @param wording the language
     * @return the document; lower ends are rounded down and upper ends up
     * @throws IllegalArgumentException if the constants cannot be moved to that ionic strength
     */
    public Document document(IonicStrength most, Wording wording) {
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(wording, "wording");
        Document document = Document.titled(wording.say("solution.share.title", acid.name()), wording.say("language"))
                .fact(wording.say("solution.share.ph"), wording.number(between(ph)))
                .fact(
                        wording.say("solution.share.constants"),
                        wording.say(
                                "solution.share.holds-at",
                                acid.steps().stream()
                                        .map(step -> wording.number(between(step)))
                                        .collect(Collectors.joining("; ")),
                                acid.temperature().toString(),
                                acid.ionicStrength().toString()))
                .fact(wording.say("solution.share.source"), acid.source().citation())
                .fact(wording.say("solution.share.ideal"), wording.number(percent(ideal())))
                .fact(
                        wording.say("solution.share.salted", most.toString()),
                        wording.number(percent(upToIonicStrength(most))));
        for (Phrase phrase : notCovered()) {
            document = document.caution(wording.text(phrase));
        }
        return document;
    }

    private static String between(Interval<Ph> range) {
        return range.least() + " – " + range.greatest();
    }

    private static String percent(Interval<MassFraction> share) {
        return NumberText.percentFromTo(
                share.least().fraction(), share.greatest().fraction(), PERCENT);
    }

    /**
     * What the share does not tell, to be printed with it.
     *
     * @return the sentences
     */
    public List<Phrase> notCovered() {
        return List.of(Phrase.of("solution.share-is-not-efficacy"), Phrase.of("solution.ideal-model"));
    }

    @Override
    public String toString() {
        return acid.name() + " at pH " + between(ph);
    }
}
