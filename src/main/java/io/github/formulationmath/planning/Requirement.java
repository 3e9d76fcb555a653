package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import java.util.Optional;

/** What a batch of one formula must meet, asked in grams of batch. Every size handed in is above 0. */
interface Requirement {

    /** Why no size whatever passes; empty if some do. The searches below may be called only then. */
    default Optional<Phrase> obstacle() {
        return Optional.empty();
    }

    /** The smallest size that passes. */
    Landing smallest(SearchMeter meter);

    /** The smallest passing size not below a size. */
    Landing atLeast(Ratio grams, SearchMeter meter);

    /** The largest passing size not above a size. */
    Optional<Landing> atMost(Ratio grams, SearchMeter meter);

    /** Where the interval of passing sizes around a passing size starts; the size itself if it stands alone. */
    Ratio unbrokenFrom(Ratio passing);

    /** A size from which on, for certain, every size (every whole number of divisions) passes; not always the first. */
    Optional<Ratio> passesFrom();

    /** A size of which every passing size is a whole multiple, if there is one. */
    default Optional<Ratio> grid() {
        return Optional.empty();
    }

    /** The relation that leads to the smallest size, and shows that it passes and what binds it. */
    <V> V derive(Reckoning<V> r, Landing smallest);

    /**
     * The relation that leads to a size at which a search came to rest: the line or total that stopped it there, from
     * below or from above, and that the criterion is met there.
     */
    <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow);
}
