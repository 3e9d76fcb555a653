package io.github.formulationmath.carrier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.io.Input;
import com.esotericsoftware.kryo.io.Output;
import com.esotericsoftware.kryo.util.DefaultInstantiatorStrategy;
import io.github.formulationmath.support.ValueContract;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.objenesis.strategy.StdInstantiatorStrategy;

/** Values come whole through what carries them from one process to another, whether or not it asks the value. */
class CarriersTest {

    private static final List<Cargo> CARGO = Cargo.all();

    /** As stream engines set it up: no registration, constructors not called where there is none without arguments. */
    @TestFactory
    Stream<DynamicTest> values_come_whole_through_a_serializer_that_sets_fields() {
        return CARGO.stream()
                .map(cargo -> dynamicTest(cargo.name(), () -> assertWhole(cargo, throughFields(cargo.value()))));
    }

    @TestFactory
    Stream<DynamicTest> values_come_whole_through_serialization() {
        return CARGO.stream()
                .map(cargo -> dynamicTest(cargo.name(), () -> assertWhole(cargo, ValueContract.copy(cargo.value()))));
    }

    private static void assertWhole(Cargo cargo, Object back) {
        assertThat(back).isEqualTo(cargo.value());
        assertThat(back)
                .hasSameHashCodeAs(cargo.value())
                .hasToString(cargo.value().toString());
        Map<String, String> expected = Answers.of(cargo.value());
        Map<String, String> answers = Answers.of(back);
        assertThat(expected.keySet())
                .filteredOn(question -> !expected.get(question).equals(answers.get(question)))
                .as("what " + cargo.name() + " answers otherwise than before")
                .isEmpty();
    }

    private static Object throughFields(Object value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Output output = new Output(bytes)) {
            kryo().writeClassAndObject(output, value);
        }
        try (Input input = new Input(bytes.toByteArray())) {
            return kryo().readClassAndObject(input);
        }
    }

    private static Kryo kryo() {
        Kryo kryo = new Kryo();
        kryo.setRegistrationRequired(false);
        kryo.setReferences(true);
        kryo.setInstantiatorStrategy(new DefaultInstantiatorStrategy(new StdInstantiatorStrategy()));
        return kryo;
    }
}
