package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.Serializable;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Rooms that can be seen from their door: small, with few types that are public for their neighbours only. */
public class RoomsTest {

    private static final int LARGEST_ROOM = 45;
    private static final int MOST_DOORS = 10;

    @Test
    void no_room_is_too_large_to_be_seen_from_its_door() {
        Map<String, Integer> rooms = new TreeMap<>();
        Sources.code().keySet().stream()
                .filter(file -> !file.endsWith("package-info.java"))
                .forEach(file -> rooms.merge(Sources.room(file), 1, Integer::sum));
        int most = Math.max(LARGEST_ROOM, Ratchets.of("largest room"));
        assertThat(rooms)
                .isNotEmpty()
                .allSatisfy((room, files) ->
                        assertThat(files).as("files of " + room).isLessThanOrEqualTo(most));
    }

    @Test
    void what_is_public_only_to_cross_a_wall_has_a_reason() {
        Set<String> doors = Doors.in(Types.ofTheLibrary(), Sources.code(), Doors.pages());
        Map<String, String> reasons = Reasons.read("doors.txt");
        List<String> unexplained =
                doors.stream().filter(door -> !reasons.containsKey(door)).toList();
        Ratchets.report("doors", unexplained);
        assertThat(unexplained).hasSizeLessThanOrEqualTo(Ratchets.of("doors without a reason"));
        assertThat(doors).as("doors that doors.txt explains").containsAll(reasons.keySet());
        assertThat(reasons).hasSizeLessThanOrEqualTo(MOST_DOORS);
    }

    @Test
    void a_door_is_noticed() {
        Map<String, String> neighbour = Map.of("other/Room.java", "import " + RoomsTest.class.getName() + ";");
        assertThat(Doors.in(List.of(RoomsTest.class), neighbour, "RoomsTests")).containsExactly("RoomsTest");
        assertThat(Doors.in(List.of(RoomsTest.class), Map.of(), ""))
                .as("used by no other room")
                .isEmpty();
        assertThat(Doors.in(List.of(RoomsTest.class), neighbour, "a RoomsTest."))
                .as("told of")
                .isEmpty();
        assertThat(Doors.in(List.of(RoomsTest.class, Showing.class), neighbour, ""))
                .as("given by another")
                .containsExactly("RoomsTest");
        assertThat(Doors.in(List.of(RoomsTest.class, BareNumbersTest.Bare.class), neighbour, ""))
                .as("given by another type")
                .isEmpty();
    }

    /** What is written down is compared when it is read: Serializable without equals is an answer by mistake. */
    @Test
    void what_is_serializable_is_a_value() {
        List<String> bare = bare(Types.ofTheLibrary());
        Ratchets.report("serializable", bare);
        assertThat(bare).hasSizeLessThanOrEqualTo(Ratchets.of("serializable without equals"));
    }

    @Test
    void a_serializable_answer_is_noticed() {
        assertThat(bare(List.of(Answer.class, Value.class))).containsExactly(Answer.class.getName());
    }

    private static List<String> bare(List<Class<?>> types) {
        List<String> bare = new ArrayList<>();
        for (Class<?> type : types) {
            if (Serializable.class.isAssignableFrom(type)
                    && !Modifier.isAbstract(type.getModifiers())
                    && !type.isEnum()
                    && !Throwable.class.isAssignableFrom(type)
                    && !comparesItself(type)) {
                bare.add(type.getName());
            }
        }
        return bare.stream().sorted().collect(Collectors.toList());
    }

    private static boolean comparesItself(Class<?> type) {
        try {
            return type.getMethod("equals", Object.class).getDeclaringClass() != Object.class;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Shows the type around it, which is no other type. */
    public static final class Showing {
        public RoomsTest shown() {
            return new RoomsTest();
        }
    }

    private static final class Answer implements Serializable {
        private static final long serialVersionUID = 1L;
    }

    private record Value(int number) implements Serializable {}
}
