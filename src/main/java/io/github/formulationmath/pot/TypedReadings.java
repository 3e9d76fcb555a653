package io.github.formulationmath.pot;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Readings as they are typed, {@code Aqua 228.9 g; Glycerin 15.2 g}: everything that is wrong with them is told at once. */
final class TypedReadings {

    /** Ends of lines part as semicolons do; a comma may be that of a decimal or of a name. */
    private static final Pattern PARTED = Pattern.compile("[;\\r\\n]");

    /** What is meant to be a name, and what begins like a number. */
    private static final Pattern NAME_AND_NUMBER =
            Pattern.compile("(.*?\\S)\\s+([-+−]?\\.?\\p{No}.*|[-+−]?\\.?\\p{Nd}.*)");

    private static final int MOST_TOLD = 20;

    private final WeighingPlan plan;
    /** How far into an entry a name may reach; spaces between words may be more than one. */
    private final int longestName;

    private final List<Reading> readings = new ArrayList<>();
    private final List<String> mistakes = new ArrayList<>();

    private TypedReadings(WeighingPlan plan) {
        this.plan = plan;
        this.longestName = 4
                + 2
                        * plan.lines().stream()
                                .mapToInt(line -> line.name().length())
                                .max()
                                .orElse(0);
    }

    static List<Reading> read(WeighingPlan plan, String text) {
        TypedReadings typed = new TypedReadings(plan);
        for (String entry : PARTED.split(text)) {
            if (!entry.isBlank()) {
                typed.add(entry.strip());
            }
        }
        if (typed.mistakes.isEmpty() && typed.readings.isEmpty()) {
            throw new IllegalArgumentException("text is blank: write each line with what its display read, like "
                    + Excerpt.of(plan.lines().get(0)));
        }
        if (!typed.mistakes.isEmpty()) {
            throw new IllegalArgumentException(typed.told());
        }
        return typed.readings;
    }

    private void add(String entry) {
        Optional<Reading> reading = trying(entry, () -> reading(entry));
        // By itself, so that what is wrong with one does not hide what is wrong with the next.
        reading.flatMap(each -> trying(entry, () -> {
                    Readings.begun(plan, WeighingMethod.TARE_EACH, List.of(each));
                    return each;
                }))
                .ifPresent(readings::add);
    }

    private Optional<Reading> trying(String entry, Supplier<Reading> step) {
        try {
            return Optional.of(step.get());
        } catch (IllegalArgumentException e) {
            mistakes.add("\"" + Excerpt.of(entry) + "\": " + e.getMessage());
            return Optional.empty();
        }
    }

    private Reading reading(String entry) {
        int end = endOfName(entry);
        if (end < 0) {
            Matcher parts = NAME_AND_NUMBER.matcher(entry);
            if (!parts.matches()) {
                throw new IllegalArgumentException("what its display read is missing; write it behind the name, like "
                        + Excerpt.of(plan.lines().get(0)));
            }
            end = parts.end(1);
        }
        return Reading.of(
                plan.line(name(entry, end)).line(), entry.substring(end).strip());
    }

    /** The name, which may have a colon behind it, as a plan tells its readings. */
    private static String name(String entry, int end) {
        boolean hasColon = end > 1 && entry.charAt(end - 1) == ':';
        return entry.substring(0, hasColon ? end - 1 : end);
    }

    /** Where the longest name of a line ends that the entry begins with, or -1. */
    private int endOfName(String entry) {
        for (int end = Math.min(entry.length() - 1, longestName); end > 0; end--) {
            String name = name(entry, end);
            if (Character.isWhitespace(entry.charAt(end))
                    && plan.formula().lines().stream().anyMatch(line -> line.isNamed(name))) {
                return end;
            }
        }
        return -1;
    }

    private String told() {
        int told = Math.min(mistakes.size(), MOST_TOLD);
        String more = told < mistakes.size() ? "; and " + (mistakes.size() - told) + " more" : "";
        return (mistakes.size() == 1 ? "" : mistakes.size() + " of the readings are wrong: ")
                + String.join("; ", mistakes.subList(0, told))
                + more;
    }
}
