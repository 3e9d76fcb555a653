package io.github.formulationmath.carrier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A plain JSON mapper that was told nothing of the library refuses a value or writes what any reader of JSON reads. */
class JsonMapperTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TestFactory
    Stream<DynamicTest> a_plain_mapper_never_writes_what_is_no_json() {
        return Cargo.all().stream()
                .map(cargo -> dynamicTest(cargo.name(), () -> assertWrittenOrRefused(cargo.value())));
    }

    private static void assertWrittenOrRefused(Object value) {
        String json;
        try {
            json = MAPPER.writeValueAsString(Map.of("value", value));
        } catch (JsonProcessingException e) {
            assertThat(e).hasMessageContaining("io.github.formulationmath");
            return;
        }
        assertThatCode(() -> MAPPER.readTree(json)).as(json).doesNotThrowAnyException();
    }

    /** What made it fail before: a mapper prints every Number raw. */
    @Test
    void a_number_that_prints_as_a_fraction_is_noticed() {
        Number third = new Number() {
            @Override
            public int intValue() {
                return 0;
            }

            @Override
            public long longValue() {
                return 0;
            }

            @Override
            public float floatValue() {
                return 0;
            }

            @Override
            public double doubleValue() {
                return 0;
            }

            @Override
            public String toString() {
                return "1/3";
            }
        };
        assertThatCode(() -> assertWrittenOrRefused(third)).isInstanceOf(AssertionError.class);
    }
}
