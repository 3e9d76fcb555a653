package io.github.formulationmath.soap;

import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * What of a fat, as it is weighed, is water or dirt that its saponification value does not count. Laboratories dry and filter
 * a sample first, so that somebody has to say it: there is no default of none.
 *
 * @param most the largest share it may be
 * @param statement why that is so
 */
public record InertMatter(MassFraction most, Statement statement) implements Serializable {

    /** What is known of it. */
    public enum Statement {
        /** There is at most so much. */
        AT_MOST,
        /** The saponification value was determined on the fat as it is weighed, so that it counts all there is. */
        VALUE_IS_OF_THE_FAT_AS_WEIGHED
    }

    /**
     * Checks nothing but presence.
     *
     * @param most the largest share it may be
     * @param statement why that is so
     */
    public InertMatter {
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(statement, "statement");
    }

    /**
     * At most a share.
     *
     * @param share such as {@code "0.2 %"}; 0 % states that there is none
     * @return the inert matter
     */
    public static InertMatter atMost(String share) {
        return new InertMatter(MassFraction.parse(share), Statement.AT_MOST);
    }

    /**
     * None that matters, for the saponification value was determined on the fat as it is weighed.
     *
     * @return the statement
     */
    public static InertMatter countedInTheValue() {
        return new InertMatter(MassFraction.ZERO, Statement.VALUE_IS_OF_THE_FAT_AS_WEIGHED);
    }
}
