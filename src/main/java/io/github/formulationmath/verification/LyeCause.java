package io.github.formulationmath.verification;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Slips that together reproduce every figure of a lye within its own rounding: one, or two that were made at once.
 *
 * @param slips the slips, one or two
 * @param details what exactly went wrong with each, in a name or a number; each may be empty
 */
public record LyeCause(List<LyeSlip> slips, List<String> details) {

    /**
     * Copies.
     *
     * @param slips the slips
     * @param details what exactly went wrong with each
     */
    public LyeCause {
        slips = List.copyOf(Objects.requireNonNull(slips, "slips"));
        details = List.copyOf(Objects.requireNonNull(details, "details"));
    }

    /** The slips with their details. */
    @Override
    public String toString() {
        return IntStream.range(0, slips.size())
                .mapToObj(i -> slips.get(i) + (details.get(i).isEmpty() ? "" : " (" + details.get(i) + ")"))
                .collect(Collectors.joining(" and "));
    }
}
