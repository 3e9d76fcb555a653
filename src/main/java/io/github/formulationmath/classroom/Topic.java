package io.github.formulationmath.classroom;

import io.github.formulationmath.reckoning.Wording;
import java.util.Objects;

/**
 * What an exercise of a class is about. Each topic draws its own numbers, has the library work out the answer, and knows the
 * mistakes that are made in it. They are those a teacher of this bench meets; there is no published source for the list.
 */
public enum Topic {
    /** A percentage of a batch in grams. */
    PERCENT_TO_GRAMS("topic.percent-to-grams", 1, RecipeTopics::percentToGrams),
    /** What is filled up to the whole. */
    QUANTITY_SUFFICIENT("topic.quantity-sufficient", 2, RecipeTopics::quantitySufficient),
    /** Parts of a batch. */
    PARTS("topic.parts", 2, RecipeTopics::parts),
    /** A recipe in grams at another size. */
    SCALING("topic.scaling", 2, RecipeTopics::scaling),
    /** What the display of a balance shows. */
    ROUNDING("topic.rounding", 2, BalanceTopics::rounding),
    /** The error of that, against what was wanted. */
    RELATIVE_ERROR("topic.relative-error", 3, BalanceTopics::relativeError),
    /** The batch in which no line is too small to be weighed. */
    SMALLEST_BATCH("topic.smallest-batch", 3, (draw, ties) -> BalanceTopics.smallestBatch(draw)),
    /** Volume to mass, or mass to volume. */
    DENSITY("topic.density", 2, MaterialTopics::density),
    /** A material that is not pure. */
    STRENGTH("topic.strength", 2, MaterialTopics::strength),
    /** Pounds and ounces in grams. */
    OUNCES("topic.ounces", 2, MaterialTopics::ounces),
    /** A stock made weaker with water. */
    DILUTION("topic.dilution", 3, MaterialTopics::dilution),
    /** The alkali for a fat. */
    ALKALI("topic.alkali", 4, MaterialTopics::alkali);

    /** Draws the numbers of an exercise. */
    private interface Maker {
        Draft draw(Draw draw, Ties ties);
    }

    private static final String TOPIC = "topic.";

    private final String key;
    private final int points;
    private final transient Maker maker;

    Topic(String key, int points, Maker maker) {
        this.key = key;
        this.points = points;
        this.maker = maker;
    }

    Draft draw(Draw draw, Ties ties) {
        return maker.draw(draw, ties);
    }

    /** What its other keys in the wording end with. */
    String ending() {
        return key.substring(TOPIC.length());
    }

    /**
     * What the topic is called.
     *
     * @param wording the words
     * @return the title, for example <i>Percent to grams</i>
     */
    public String title(Wording wording) {
        return Objects.requireNonNull(wording, "wording").say(key);
    }

    /**
     * What an exercise is worth unless the class set says otherwise.
     *
     * @return the points, by how many steps it takes
     */
    public int points() {
        return points;
    }
}
