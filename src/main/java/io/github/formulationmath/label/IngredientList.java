package io.github.formulationmath.label;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.reckoning.Wording;
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
 *
 * @param rule the rule of order
 * @param ordered the ingredients that must stand in descending order
 * @param free the ingredients that may stand in any order after those
 * @param colorants the colorants, which may stand in any order at the end
 */
public record IngredientList(
        LabelRule rule, List<ListedIngredient> ordered, List<ListedIngredient> free, List<ListedIngredient> colorants) {

    /**
     * Copies; {@link Label#list(io.github.formulationmath.formula.Formula)} makes such lists.
     *
     * @param rule the rule of order
     * @param ordered the ingredients in descending order
     * @param free the ingredients after those
     * @param colorants the colorants
     */
    public IngredientList {
        Objects.requireNonNull(rule, "rule");
        ordered = List.copyOf(ordered);
        free = List.copyOf(free);
        colorants = List.copyOf(colorants);
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
        lines.add(wording.say("caution.label", rule.source().toString()));
        return List.copyOf(lines);
    }

    @Override
    public String toString() {
        return text();
    }
}
