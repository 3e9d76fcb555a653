package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No test class tests two rooms: it stands in the highest room that it uses, and every one of its tests asks that room. */
class TestRoomsTest {

    private static final JavaClasses COMPILED = TestRooms.compiled();

    private static final TestRooms TESTS = new TestRooms(COMPILED, TestRooms::packageOf);

    @Test
    void no_test_leans_on_a_room_above_its_own() {
        assertThat(TESTS.leaningUpwards())
                .as("move it up, or split it; what two rooms promise together stands in " + TestRooms.TOGETHER)
                .isEmpty();
    }

    @Test
    void every_test_asks_the_room_that_it_stands_in() {
        assertThat(TESTS.askingOthers())
                .as("tests that belong to the highest room they ask")
                .isEmpty();
    }

    @Test
    void the_contract_of_a_value_stands_in_the_room_of_the_value() {
        assertThat(TESTS.contractsOfOthers()).isEmpty();
    }

    @Test
    void no_test_is_named_for_a_type_of_another_room() {
        assertThat(TESTS.namedForOthers(Types.ofTheLibrary())).isEmpty();
    }

    @Test
    void what_one_room_can_ask_alone_is_no_promise_of_several() {
        assertThat(TESTS.oneRoomCouldAskAlone()).isEmpty();
    }

    /** A package that is no room has a purpose that somebody wrote down. */
    @Test
    void every_package_is_a_room_or_says_what_it_is_for() throws IOException {
        Set<String> packages = new TreeSet<>();
        try (Stream<Path> all = Files.list(Path.of("src", "test", "java", "io", "github", "formulationmath"))) {
            all.filter(Files::isDirectory)
                    .map(each -> each.getFileName().toString())
                    .forEach(packages::add);
        }
        packages.removeIf(Ladder::isChapter);
        assertThat(packages)
                .containsExactlyInAnyOrderElementsOf(
                        Reasons.read("test-packages.txt").keySet());
    }

    @Test
    void a_test_that_stands_in_the_wrong_room_is_noticed() {
        JavaClasses madeUp = new ClassFileImporter()
                .importClasses(Set.<Class<?>>of(
                        ToleranceTest.class, PlansOnSheetsTest.class, BatchTest.class, TogetherTest.class));
        TestRooms rooms = new TestRooms(madeUp, TestRoomsTest::pretended);
        assertThat(rooms.leaningUpwards())
                .containsExactly("plan.PlansOnSheetsTest leans on what lies above: sheet.BatchSheet");
        assertThat(rooms.askingOthers())
                .containsExactly("plan.ToleranceTest.a_formula_has_its_lines asks only formula");
        assertThat(rooms.contractsOfOthers()).containsExactly("plan.BatchTest holds the contract of weighing.Balance");
        assertThat(rooms.namedForOthers(List.of(Batch.class, WeighingPlan.class)))
                .containsExactly("plan.BatchTest is named for a type of batch");
        assertThat(rooms.oneRoomCouldAskAlone()).containsExactly("promise.TogetherTest belongs to record");
    }

    /** Made-up tests stand in a room by what is written on them. */
    private static String pretended(JavaClass type) {
        if (!type.isAnnotatedWith(StandsIn.class)) {
            return TestRooms.packageOf(type);
        }
        return type.getAnnotationOfType(StandsIn.class).value();
    }

    @java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy.RUNTIME)
    private @interface StandsIn {
        String value();
    }

    /** Looks like a test to the gate and to nobody who runs tests. */
    @java.lang.annotation.Retention(java.lang.annotation.RetentionPolicy.RUNTIME)
    private @interface Example {}

    @StandsIn("plan")
    private static final class ToleranceTest {
        private static final Formula FORMULA =
                Formula.inPercent("F").line("Oil", "100 %").build();
        private static final List<Object> OTHERS = List.of(Tolerances.of("5 %"));

        @Example
        void a_formula_has_its_lines() {
            assertThat(FORMULA.lines()).hasSize(1);
        }

        @Example
        void tolerances_by_a_helper() {
            assertThat(five()).isEqualTo(OTHERS.get(0));
        }

        @Example
        void tolerances_in_a_list() {
            assertThat(OTHERS).hasSize(1);
        }

        @Example
        void nobody_is_asked() {
            assertThat(1).isEqualTo(1);
        }

        private static Object five() {
            return Tolerances.of("5 %");
        }
    }

    @StandsIn("plan")
    private static final class PlansOnSheetsTest {
        @Example
        void a_plan_is_printed() {
            WeighingPlan plan = null;
            assertThat(BatchSheet.of(plan)).isNotNull();
        }
    }

    @StandsIn("plan")
    private abstract static class BatchTest implements ValueContract<Balance> {}

    @StandsIn("promise")
    private static final class TogetherTest {
        @Example
        void a_code_and_a_formula() {
            assertThat(BatchCode.parse("A")).isNotEqualTo(Formula.inPercent("F"));
        }
    }

    @Test
    void packages_are_known() {
        assertThat(COMPILED.stream().map(TestRooms::packageOf).collect(Collectors.toSet()))
                .contains("number", "plan", TestRooms.TOGETHER);
    }
}
