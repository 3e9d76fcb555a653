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
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The ingredient list of a label: materials broken up into substances, equal names merged, in descending order down to
 * the threshold of the rule, then those in free order, then the colorants.
 *
 * <p>The free ones and the colorants are put in descending order too, which is one of the orders allowed.
 *
 * <p>Example: water 89 %, glycerin 9 %, phenoxyethanol exactly 1 %, xanthan gum 1 %: by the EU rule all four stand in
 * order; by the US rule the last two may be exchanged.
 *
 * <p>Whether the list is lawful where the product is sold is for the law in force and a qualified person to say. Immutable
 * and thread-safe.
 *
 * @param rule the rule of order
 * @param ordered the ingredients that must stand in descending order
 * @param free the ingredients that may stand in any order after those
 * @param colorants the colorants, which may stand in any order at the end
 * @param mayContain colorants of other shades of the range, printed behind +/-
 * @param remarks what to look after: a perfume without its word, a material that needs a breakdown
 */
public record IngredientList(
        LabelRule rule,
        List<ListedIngredient> ordered,
        List<ListedIngredient> free,
        List<ListedIngredient> colorants,
        List<String> mayContain,
        List<Phrase> remarks) {

    /**
     * Copies; {@link Label#list(io.github.formulationmath.formula.Formula)} makes such lists.
     *
     * @param rule the rule of order
     * @param ordered the ingredients in descending order
     * @param free the ingredients after those
     * @param colorants the colorants
     * @param mayContain colorants of other shades
     * @param remarks what to look after
     */
    public IngredientList {
        Objects.requireNonNull(rule, "rule");
        ordered = List.copyOf(ordered);
        free = List.copyOf(free);
        colorants = List.copyOf(colorants);
        mayContain = List.copyOf(mayContain);
        remarks = List.copyOf(remarks);
    }

    /**
     * All ingredients as they are printed.
     *
     * @return an unmodifiable list
     */
    public List<ListedIngredient> all() {
        return Stream.of(ordered, free, colorants).flatMap(List::stream).toList();
    }

    /**
     * Ingredients that may be less than the next one in {@link #ordered()}, within the weighing error.
     *
     * @return an unmodifiable list; empty if nothing was weighed
     */
    public List<ListedIngredient> orderDoubts() {
        List<ListedIngredient> doubts = new ArrayList<>();
        for (int i = 1; i < ordered.size(); i++) {
            if (!ordered.get(i - 1).isSurelyAtLeast(ordered.get(i))) {
                doubts.add(ordered.get(i - 1));
            }
        }
        return List.copyOf(doubts);
    }

    /**
     * Ingredients of which it is not certain on which side of the threshold they are.
     *
     * @return an unmodifiable list; empty if nothing was weighed
     */
    public List<ListedIngredient> thresholdDoubts() {
        return Stream.concat(ordered.stream(), free.stream())
                .filter(ingredient -> rule.isFree(ingredient.bounds().least())
                        != rule.isFree(ingredient.bounds().greatest()))
                .toList();
    }

    /**
     * The list as printed on a label.
     *
     * @return the names, separated by commas; at the end, behind +/-, the colorants that other shades of the range have
     */
    public String text() {
        String listed = all().stream().map(ListedIngredient::name).collect(Collectors.joining(", "));
        return mayContain.isEmpty() ? listed : listed + " [+/- " + String.join(", ", mayContain) + "]";
    }

    /**
     * The list in words, with what is doubtful and the caution.
     *
     * @param wording the words
     * @return the lines
     */
    public List<String> describe(Wording wording) {
        Objects.requireNonNull(wording, "wording");
        List<String> lines = new ArrayList<>();
        lines.add(text());
        for (ListedIngredient doubt : orderDoubts()) {
            ListedIngredient next = ordered.get(ordered.indexOf(doubt) + 1);
            lines.add(wording.say("label.order-doubt", doubt.name(), next.name()));
        }
        for (ListedIngredient doubt : thresholdDoubts()) {
            lines.add(wording.say(
                    "label.threshold-doubt",
                    doubt.name(),
                    NumberText.percent(rule.threshold().fraction())));
        }
        remarks.forEach(remark -> lines.add(wording.text(remark)));
        lines.add(wording.say("caution.label", rule.source().toString()));
        return List.copyOf(lines);
    }

    @Override
    public String toString() {
        return text();
    }

    /**
     * One name of an ingredient list with its share of the product: {@code s = Σ w_i · c_i} over the lines that bring it in;
     * of a weighed batch with the shares made.
     *
     * <p>Immutable and thread-safe.
     */
    public static final class ListedIngredient implements Subject, Explained {

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
            return r.named(SHARE, this, r.sum(terms));
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
                            Bounds.closed(
                                    sure.least().fraction(), sure.greatest().fraction()));
        }
    }
}
