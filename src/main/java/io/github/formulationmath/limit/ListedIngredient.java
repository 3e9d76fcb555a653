package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;
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
    private final Formula formula;
    private final List<ListedPart> parts;
    private final @Nullable MadeMasses masses;
    private final Ratio share;

    ListedIngredient(String name, Formula formula, List<ListedPart> parts, @Nullable MadeMasses masses) {
        this.name = name;
        this.formula = formula;
        this.parts = List.copyOf(parts);
        this.masses = masses;
        this.share = derive(Reckoning.plain());
    }

    /**
     * The share of the product.
     *
     * @return the fraction, exact
     */
    public Ratio share() {
        return share;
    }

    /**
     * Where the share is sure to lie.
     *
     * @return the guaranteed interval, as fractions of one; a single point if nothing was weighed
     */
    public Bounds bounds() {
        return made(strengths()).map(MadeShare::bounds).orElseGet(() -> Bounds.point(share));
    }

    private List<Ratio> strengths() {
        List<Ratio> strengths = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            strengths.add(parts.stream()
                    .filter(part -> part.line().position() == line.position())
                    .map(part -> part.strength().fraction())
                    .reduce(Ratio.ZERO, Ratio::plus));
        }
        return strengths;
    }

    private Optional<MadeShare> made(List<Ratio> strengths) {
        return masses == null ? Optional.empty() : Optional.of(masses.madeShare(this, strengths));
    }

    /** Whether this share is surely at least that of another: the share of the difference is at least 0. */
    boolean isSurelyAtLeast(ListedIngredient other) {
        List<Ratio> own = strengths();
        List<Ratio> others = other.strengths();
        List<Ratio> difference = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            difference.add(own.get(i).minus(others.get(i)));
        }
        return made(difference)
                .map(found -> found.lowest().result().signum() >= 0)
                .orElseGet(() -> share.compareTo(other.share) >= 0);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.listed-share", name);
    }

    @Override
    public Ratio result() {
        return share;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
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

    private <V> V term(Reckoning<V> r, ListedPart part, int place) {
        V line = r.known(part.line());
        Ratio strength = part.strength().fraction();
        if (strength.equals(Ratio.ONE)) {
            return line;
        }
        boolean alone = parts.stream()
                        .filter(p -> p.line().position() == part.line().position())
                        .count()
                == 1;
        String subscript = part.line().subscript() + (alone ? "" : "." + place);
        return r.product(
                line, r.given(STRENGTH, Subject.of(subscript, part.line().name()), strength, Source.user()));
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
        return name + " " + PercentText.of(share, bounds());
    }
}
