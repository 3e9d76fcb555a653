package io.github.formulationmath.limit;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
 */
public final class IngredientList {

    private final LabelRule rule;
    private final List<ListedIngredient> ordered;
    private final List<ListedIngredient> free;
    private final List<ListedIngredient> colorants;

    IngredientList(
            LabelRule rule,
            List<ListedIngredient> ordered,
            List<ListedIngredient> free,
            List<ListedIngredient> colorants) {
        this.rule = rule;
        this.ordered = List.copyOf(ordered);
        this.free = List.copyOf(free);
        this.colorants = List.copyOf(colorants);
    }

    /**
     * The rule of order.
     *
     * @return the rule
     */
    public LabelRule rule() {
        return rule;
    }

    /**
     * The ingredients that must stand in descending order.
     *
     * @return an unmodifiable list
     */
    public List<ListedIngredient> ordered() {
        return ordered;
    }

    /**
     * The ingredients that may stand in any order after those.
     *
     * @return an unmodifiable list
     */
    public List<ListedIngredient> free() {
        return free;
    }

    /**
     * The colorants, which may stand in any order at the end.
     *
     * @return an unmodifiable list
     */
    public List<ListedIngredient> colorants() {
        return colorants;
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
     * Neighbours whose order is not certain within the weighing error.
     *
     * @return an unmodifiable list; empty if nothing was weighed
     */
    public List<OrderDoubt> orderDoubts() {
        List<OrderDoubt> doubts = new ArrayList<>();
        for (int i = 1; i < ordered.size(); i++) {
            if (!ordered.get(i - 1).isSurelyAtLeast(ordered.get(i))) {
                doubts.add(new OrderDoubt(ordered.get(i - 1), ordered.get(i)));
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
                .filter(ingredient -> {
                    Bounds interval = ingredient.bounds();
                    return rule.isFree(interval.lower().orElseThrow())
                            != rule.isFree(interval.upper().orElseThrow());
                })
                .toList();
    }

    /**
     * The list as printed on a label.
     *
     * @return the names, separated by commas
     */
    public String text() {
        return all().stream().map(ListedIngredient::name).collect(Collectors.joining(", "));
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
        orderDoubts()
                .forEach(doubt -> lines.add(wording.say(
                        "label.order-doubt", doubt.listed().name(), doubt.next().name())));
        thresholdDoubts()
                .forEach(ingredient -> lines.add(wording.text(
                        Phrase.of("label.threshold-doubt", ingredient.name(), NumberText.percent(rule.threshold())))));
        lines.add(wording.say("caution.label", rule.source().toString()));
        return List.copyOf(lines);
    }

    @Override
    public String toString() {
        return text();
    }
}
