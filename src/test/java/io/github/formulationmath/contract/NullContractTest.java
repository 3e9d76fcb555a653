package io.github.formulationmath.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.formulationmath.architecture.Ratchets;
import io.github.formulationmath.contract.NullContract.Found;
import java.lang.reflect.Executable;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Null is refused at every public door, by the name of the argument. */
class NullContractTest {

    private static final Path MAIN = Path.of("src", "main", "java");

    private static List<Class<?>> publicTypes() {
        List<Class<?>> types = new ArrayList<>();
        for (JavaClass type : new ClassFileImporter().importPackages("io.github.formulationmath")) {
            String topLevel = type.getName().split("\\$", 2)[0];
            if (!type.isAnonymousClass() && Files.exists(MAIN.resolve(topLevel.replace('.', '/') + ".java"))) {
                Class<?> found = type.reflect();
                if (isVisible(found)) {
                    types.add(found);
                }
            }
        }
        return types;
    }

    private static boolean isVisible(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isVisible(type.getEnclosingClass()));
    }

    @Test
    void every_public_door_refuses_null_by_the_name_of_the_argument() {
        NullContract contract = new NullContract(Samples.gather());
        Map<Found, List<String>> doors = new EnumMap<>(Found.class);
        for (Found found : Found.values()) {
            doors.put(found, new ArrayList<>());
        }
        for (Class<?> type : publicTypes()) {
            NullContract.membersOf(type).forEach(member -> sort(contract, type, member, doors));
        }
        Ratchets.report("nulls-not-tried", doors.get(Found.NOT_TRIED));
        Ratchets.report("nulls-taken", doors.get(Found.BROKEN));
        assertThat(doors.get(Found.BROKEN)).hasSizeLessThanOrEqualTo(Ratchets.of("doors that take null"));
        int tried = doors.get(Found.REFUSED).size();
        assertThat(doors.get(Found.NOT_TRIED).size())
                .as("doors at which nothing could be tried, of " + tried + " tried; see target/house")
                .isLessThanOrEqualTo(Ratchets.of("doors at which null cannot be tried"));
    }

    private static void sort(NullContract contract, Class<?> type, Executable member, Map<Found, List<String>> doors) {
        for (int i = 0; i < member.getParameterCount(); i++) {
            if (!NullContract.mayBeNull(member, i)) {
                doors.get(contract.find(type, member, i)).add(type.getName() + " " + member + ", argument " + (i + 1));
            }
        }
    }

    @Test
    void a_door_that_takes_null_is_noticed() {
        NullContract contract = new NullContract(Samples.gather());
        List<Found> found = NullContract.membersOf(Doors.class)
                .sorted((a, b) -> a.getName().compareTo(b.getName()))
                .map(member -> contract.find(Doors.class, member, 0))
                .toList();
        assertThat(found).containsExactly(Found.REFUSED, Found.BROKEN, Found.BROKEN);
    }

    /** Three doors. */
    public static final class Doors {

        private Doors() {}

        public static int first(String text) {
            return Objects.requireNonNull(text, "text").length();
        }

        public static int second(String text) {
            return text.length();
        }

        public static int third(String text) {
            return text == null ? 0 : 1;
        }
    }
}
