package io.github.formulationmath.number;

import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A set of numbers made of finitely many closed intervals that do not touch, in ascending order.
 *
 * <p>Example: the batch sizes that pass a rounding tolerance are a few islands and then everything above a threshold:
 * {@code [19, 21] ∪ [38, 42] ∪ [57, ∞)}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param parts the intervals in ascending order, apart from each other; an unmodifiable list
 */
public record BoundsSet(List<Bounds> parts) implements Serializable {

    private static final Comparator<Bounds> BY_LOWER_END =
            Comparator.comparing(b -> b.lower().orElse(null), Comparator.nullsFirst(Comparator.naturalOrder()));

    /**
     * The union of intervals given in any order; those that overlap or touch are merged.
     *
     * @param parts the intervals, none at all for the empty set
     */
    public BoundsSet {
        List<Bounds> sorted = new ArrayList<>(List.copyOf(Objects.requireNonNull(parts, "parts")));
        sorted.sort(BY_LOWER_END);
        List<Bounds> merged = new ArrayList<>();
        for (Bounds next : sorted) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).intersection(next).isPresent()) {
                merged.set(last, union(merged.get(last), next));
            } else {
                merged.add(next);
            }
        }
        parts = List.copyOf(merged);
    }

    /**
     * The union of intervals given in any order; those that overlap or touch are merged.
     *
     * @param intervals the intervals, none at all for the empty set
     * @return their union
     */
    public static BoundsSet of(List<Bounds> intervals) {
        return new BoundsSet(Objects.requireNonNull(intervals, "intervals"));
    }

    private static Bounds union(Bounds first, Bounds second) {
        if (first.upper().isEmpty() || second.upper().isEmpty()) {
            return first.lower().map(Bounds::atLeast).orElseGet(Bounds::all);
        }
        Ratio high = first.upper().get().max(second.upper().get());
        return first.lower().isPresent() ? Bounds.closed(first.lower().get(), high) : Bounds.atMost(high);
    }

    /**
     * Whether the set holds no number at all.
     *
     * @return true for the empty set
     */
    public boolean isEmpty() {
        return parts.isEmpty();
    }

    /**
     * Whether a number lies in the set.
     *
     * @param value the number
     * @return true if one of the intervals contains it
     */
    public boolean contains(Ratio value) {
        Objects.requireNonNull(value, "value");
        int low = 0;
        int high = parts.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            Bounds part = parts.get(middle);
            if (part.contains(value)) {
                return true;
            }
            if (part.upper().isPresent() && part.upper().get().compareTo(value) < 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return false;
    }

    /**
     * The numbers in both sets.
     *
     * @param other the other set
     * @return the common part
     */
    public BoundsSet intersection(BoundsSet other) {
        Objects.requireNonNull(other, "other");
        List<Bounds> common = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < parts.size() && j < other.parts.size()) {
            Bounds a = parts.get(i);
            Bounds b = other.parts.get(j);
            a.intersection(b).ifPresent(common::add);
            if (endsFirst(a, b)) {
                i++;
            } else {
                j++;
            }
        }
        return new BoundsSet(common);
    }

    private static boolean endsFirst(Bounds a, Bounds b) {
        return a.upper().isPresent()
                && (b.upper().isEmpty() || a.upper().get().compareTo(b.upper().get()) < 0);
    }

    /**
     * The smallest number of the set, if it has one.
     *
     * @return the lower end of the first interval
     */
    public Optional<Ratio> smallest() {
        return parts.isEmpty() ? Optional.empty() : parts.get(0).lower();
    }

    /**
     * The smallest whole multiple of a step in the set.
     *
     * @param step the step, above 0
     * @return the multiple, or empty if no interval holds one, or the set goes down without end
     * @throws IllegalArgumentException if the step is not above 0
     */
    public Optional<Ratio> smallestMultipleOf(Ratio step) {
        if (Objects.requireNonNull(step, "step").signum() <= 0) {
            throw new IllegalArgumentException("step is " + Excerpt.of(step) + ": it must be above 0");
        }
        if (smallest().isEmpty()) {
            return Optional.empty();
        }
        return parts.stream()
                .flatMap(
                        part -> part
                                .lower()
                                .map(low -> low.toMultipleOf(step, RoundingMode.CEILING))
                                .filter(part::contains)
                                .stream())
                .findFirst();
    }

    /**
     * The number of the set that lies nearest to a wish; of two at the same distance, the smaller.
     *
     * @param wish the number wished for
     * @return the nearest number, or empty if the set is empty
     */
    public Optional<Ratio> nearest(Ratio wish) {
        Objects.requireNonNull(wish, "wish");
        Ratio best = null;
        for (Bounds part : parts) {
            Ratio candidate = part.contains(wish) ? wish : nearerEnd(part, wish);
            if (best == null || distance(candidate, wish).compareTo(distance(best, wish)) < 0) {
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Ratio nearerEnd(Bounds part, Ratio wish) {
        Optional<Ratio> low = part.lower();
        return low.isPresent() && wish.compareTo(low.get()) < 0
                ? low.get()
                : part.upper().orElseThrow();
    }

    private static Ratio distance(Ratio a, Ratio b) {
        return a.minus(b).abs();
    }

    /** The intervals joined by the union sign; {@code ∅} for the empty set. */
    @Override
    public String toString() {
        return parts.isEmpty()
                ? "∅"
                : String.join(" ∪ ", parts.stream().map(Bounds::toString).toList());
    }
}
