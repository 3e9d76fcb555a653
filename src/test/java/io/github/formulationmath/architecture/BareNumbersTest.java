package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * No bare number: outside the rooms of numbers no public member takes or gives a number without a unit, but those in {@code
 * bare-numbers.txt}, each with its reason.
 */
public class BareNumbersTest {

    /** What a number may be that has no unit to say. */
    private static final Set<String> REASONS = Set.of(
            "count",
            "index",
            "seed",
            "digits",
            "quotient of like quantities",
            "probability",
            "coverage factor",
            "degrees of freedom",
            "number beside its unit");

    private static final Map<String, Map<String, String>> FOUND = BareNumbers.in(Types.ofTheLibrary());
    private static final Map<String, String> ALLOWED = Reasons.read("bare-numbers.txt");
    private static final Map<String, List<String>> LEFT = BareNumbers.without(FOUND, ALLOWED.keySet());

    @TestFactory
    Stream<DynamicTest> no_public_member_takes_or_gives_a_bare_number() {
        return FOUND.keySet().stream()
                .map(room -> dynamicTest(
                        room,
                        () -> assertThat(LEFT.getOrDefault(room, List.of()))
                                .as(
                                        "bare numbers of %s, more than before: say the unit (Amount, a share, Interval, Money), or name"
                                                + " the member in bare-numbers.txt with one of the reasons %s",
                                        room, REASONS)
                                .hasSizeLessThanOrEqualTo(Ratchets.of("bare numbers: " + room))));
    }

    @Test
    void every_exception_has_a_reason_that_counts_and_is_still_there() {
        Set<String> members = new TreeSet<>();
        FOUND.values().forEach(room -> members.addAll(room.keySet()));
        assertThat(ALLOWED.values()).allSatisfy(reason -> assertThat(REASONS).contains(reason));
        assertThat(members).as("members that bare-numbers.txt excuses").containsAll(ALLOWED.keySet());
    }

    @Test
    void what_is_left_to_tidy_up_is_written_down() {
        List<String> lines = new ArrayList<>();
        LEFT.forEach((room, members) -> {
            lines.add("bare numbers: " + room + " = " + members.size());
            members.forEach(member ->
                    lines.add("    " + member + "   " + FOUND.get(room).get(member)));
        });
        Ratchets.report("bare-numbers", lines);
        assertThat(FOUND).isNotEmpty();
    }

    @Test
    void a_bare_number_is_noticed() {
        Map<String, Map<String, String>> found = BareNumbers.in(List.of(Bare.class));
        assertThat(found.get("architecture").keySet())
                .containsExactly(
                        "BareNumbersTest.Bare.grams", "BareNumbersTest.Bare.new", "BareNumbersTest.Bare.prices");
        assertThat(BareNumbers.without(found, Set.of("BareNumbersTest.Bare.grams"))
                        .get("architecture"))
                .hasSize(2);
    }

    /** Gives numbers. */
    public static final class Bare {
        public Bare(double grams) {}

        public Ratio grams() {
            return Ratio.ONE;
        }

        public Map<String, Ratio> prices() {
            return Map.of();
        }

        public RoomsTest rooms() {
            return new RoomsTest();
        }

        public String text() {
            return "";
        }

        @Override
        public int hashCode() {
            return 1;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Bare;
        }
    }
}
