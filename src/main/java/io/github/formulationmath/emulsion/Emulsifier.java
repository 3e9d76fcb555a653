package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Source;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * A grade of an emulsifier with its HLB, as its maker states it.
 *
 * @param name the grade, not just the INCI name
 * @param hlb its value, as a range
 * @param price what a gram costs; empty if it costs nothing
 * @param source where the value was read
 */
public record Emulsifier(String name, Interval<Hlb> hlb, Optional<Money> price, Source source) {

    /**
     * Checks presence.
     *
     * @param name the grade
     * @param hlb its value, as a range
     * @param price what a gram costs
     * @param source where the value was read
     * @throws IllegalArgumentException if the name is blank or no source is named
     */
    public Emulsifier {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the grade of the emulsifier");
        }
        Objects.requireNonNull(hlb, "hlb");
        Objects.requireNonNull(price, "price");
        if (Objects.requireNonNull(source, "source").citation().isEmpty()) {
            throw new IllegalArgumentException("the value of " + Excerpt.of(name)
                    + " has no source: it belongs to a grade, so name the maker's sheet with Source.published(…)");
        }
    }

    /**
     * A grade with its value.
     *
     * @param name the grade
     * @param hlb such as {@code "15.0"}
     * @param off what it may be off by, such as {@code "0.5"}
     * @param source where the value was read
     * @return the emulsifier, for nothing
     */
    public static Emulsifier of(String name, String hlb, String off, Source source) {
        return new Emulsifier(name, Hlb.within(hlb, off), Optional.empty(), source);
    }

    /**
     * The same grade with its price.
     *
     * @param cost such as {@code "30 EUR"}
     * @param per what that buys, such as {@code "1 kg"}, above 0
     * @return the emulsifier with its price
     */
    public Emulsifier costing(String cost, String per) {
        Amount<Mass> mass = Amount.requirePositive("per", Amount.mass(per));
        return new Emulsifier(name, hlb, Optional.of(Money.parse(cost).dividedBy(mass.canonical())), source);
    }

    /** The middle of its range, as blends are reckoned. */
    Hlb middle() {
        return Hlb.middle(hlb);
    }
}
