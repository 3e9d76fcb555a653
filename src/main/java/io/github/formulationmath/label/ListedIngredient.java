package io.github.formulationmath.label;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One name of an ingredient list with its share of the product: {@code s = Σ w_i · c_i} over the lines that bring it in;
 * of a weighed batch with the shares made.
 *
 * <p>Immutable and thread-safe.
 */
public final class ListedIngredient implements Subject, Explained {

    private static final Symbol STRENGTH = Symbol.of("c", "listed-strength", Kind.SHARE);
    private static final Symbol SHARE = Symbol.of("s", "listed-share", Kind.SHARE);

    private final String name;
    private final List<Part> parts;
    private final @Nullable MadeMasses masses;
    private final Ratio share;

    /** What one line gives of the ingredient. */
    record Part(FormulaLine line, MassFraction strength) {}

    ListedIngredient(String name, List<Part> parts, @Nullable MadeMasses masses) {
        this.name = name;
        this.parts = List.copyOf(parts);
        this.masses = masses;
        this.share = shareIn(Reckoning.plain());
    }

    /**
     * The share of the product.
     *
     * @return the share, exact, with its working
     */
    public MassFraction share() {
        return MassFraction.of(share)
                .withWorking(
                        listed -> Phrase.of("question.listed-share", listed.name), this, ListedIngredient::shareIn);
    }

    /** The working of the {@link #share() share}. */
    @Override
    public Origin origin() {
        return share().origin();
    }

    /**
     * Where the share is sure to lie.
     *
     * @return the guaranteed interval; the share itself if nothing was weighed
     */
    public Interval<MassFraction> bounds() {
        return made(strengths())
                .map(MadeShare::bounds)
                .map(found -> Interval.of(
                        MassFraction.of(found.least().canonical()),
                        MassFraction.of(found.greatest().canonical())))
                .orElseGet(() -> Interval.of(share(), share()));
    }

    private Map<Integer, Ratio> strengths() {
        Map<Integer, Ratio> strengths = new HashMap<>();
        for (Part part : parts) {
            strengths.merge(part.line().index(), part.strength().fraction(), Ratio::plus);
        }
        return strengths;
    }

    private Optional<MadeShare> made(Map<Integer, Ratio> strengths) {
        return masses == null ? Optional.empty() : Optional.of(masses.madeShare(this, strengths));
    }

    /** Whether this share is surely at least that of another: the share of the difference is at least 0. */
    boolean isSurelyAtLeast(ListedIngredient other) {
        Map<Integer, Ratio> difference = strengths();
        other.strengths().forEach((line, strength) -> difference.merge(line, strength.unaryMinus(), Ratio::plus));
        return made(difference)
                .map(found -> found.bounds().least().signum() >= 0)
                .orElseGet(() -> share.compareTo(other.share) >= 0);
    }

    private <V> V shareIn(Reckoning<V> r) {
        Optional<MadeShare> made = made(strengths());
        if (made.isPresent()) {
            return r.named(SHARE, this, r.known(made.get()));
        }
        List<V> terms = new ArrayList<>(parts.size());
        for (int i = 0; i < parts.size(); i++) {
            terms.add(term(r, parts.get(i), i));
        }
        return r.named(SHARE, this, terms.size() == 1 ? terms.get(0) : r.sum(terms));
    }

    private <V> V term(Reckoning<V> r, Part part, int place) {
        V line = r.known(part.line());
        Ratio strength = part.strength().fraction();
        if (strength.equals(Ratio.ONE)) {
            return line;
        }
        boolean alone = !isSameLine(place - 1, part) && !isSameLine(place + 1, part);
        String subscript = part.line().subscript() + (alone ? "" : "." + place);
        return r.product(
                line, r.given(STRENGTH, Subject.of(subscript, part.line().name()), strength, Source.user()));
    }

    /** Whether there is a part in that place and it is of the same line; parts stand in the order of the lines. */
    private boolean isSameLine(int place, Part part) {
        return place >= 0
                && place < parts.size()
                && parts.get(place).line().position() == part.line().position();
    }

    @Override
    public String subscript() {
        return "";
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof ListedIngredient that
                && name.equals(that.name)
                && share.equals(that.share)
                && parts.equals(that.parts);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, share);
    }

    @Override
    public String toString() {
        Interval<MassFraction> sure = bounds();
        return name + " "
                + NumberText.percent(
                        share,
                        Bounds.closed(sure.least().fraction(), sure.greatest().fraction()));
    }
}
