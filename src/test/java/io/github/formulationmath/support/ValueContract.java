package io.github.formulationmath.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The laws that every value type of the library keeps: a final, immutable class with equals, hashCode, a text, and, if it
 * is written down, a serial form that gives the same value back.
 */
public interface ValueContract<T> {

    /** Values that all differ from each other. */
    List<T> different();

    /** The same values, each made anew and, where possible, in another way. */
    List<T> same();

    @Test
    default void equal_values_are_equal_in_every_respect() {
        for (int i = 0; i < different().size(); i++) {
            T one = different().get(i);
            T two = same().get(i);
            assertThat(one).isEqualTo(one).isEqualTo(two).hasSameHashCodeAs(two);
            assertThat(two).isEqualTo(one).hasToString(one.toString());
        }
    }

    @Test
    default void different_values_differ() {
        List<T> values = different();
        for (int i = 0; i < values.size(); i++) {
            assertThat(values.get(i)).isNotEqualTo(null).isNotEqualTo("a text").isNotEqualTo(new Object());
            for (int j = 0; j < values.size(); j++) {
                assertThat(values.get(i).equals(values.get(j))).isEqualTo(i == j);
            }
        }
        assertThat(values.stream().map(Object::toString)).doesNotHaveDuplicates();
        assertThat(values.stream().map(Object::hashCode).distinct().count()).isGreaterThan(values.size() / 2L);
    }

    @Test
    default void the_serial_form_gives_the_same_value_back() throws IOException, ClassNotFoundException {
        for (T value : different()) {
            if (!(value instanceof Serializable)) {
                return;
            }
            T copy = copy(value);
            assertThat(copy).isEqualTo(value).hasSameHashCodeAs(value).hasToString(value.toString());
        }
    }

    /** What is looked up again after a serializer that calls no constructor is transient and volatile instead. */
    @Test
    default void the_class_is_final_and_its_fields_never_change() {
        Class<?> type = different().get(0).getClass();
        assertThat(Modifier.isFinal(type.getModifiers())).isTrue();
        if (!type.isRecord()) {
            assertThat(type.getConstructors()).as("made by factories only").isEmpty();
        }
        assertThat(Stream.<Class<?>>iterate(type, c -> c != Object.class, Class::getSuperclass)
                        .filter(c -> c.getName().startsWith("io.github.formulationmath"))
                        .flatMap(c -> Arrays.stream(c.getDeclaredFields()))
                        .filter(field -> !field.isSynthetic())
                        .filter(field -> !(Modifier.isTransient(field.getModifiers())
                                && Modifier.isVolatile(field.getModifiers())))
                        .filter(field -> !Modifier.isFinal(field.getModifiers())))
                .isEmpty();
    }

    @Test
    @SuppressWarnings("unchecked")
    default void the_order_agrees_with_itself() {
        List<T> values = different();
        if (!(values.get(0) instanceof Comparable)) {
            return;
        }
        for (T a : values) {
            for (T b : values) {
                int order = Integer.signum(((Comparable<T>) a).compareTo(b));
                assertThat(Integer.signum(((Comparable<T>) b).compareTo(a))).isEqualTo(-order);
                if (a.equals(b)) {
                    assertThat(order).isZero();
                }
                for (T c : values) {
                    if (order < 0 && ((Comparable<T>) b).compareTo(c) < 0) {
                        assertThat(((Comparable<T>) a).compareTo(c)).isNegative();
                    }
                }
            }
        }
    }

    /** A copy through the serial form. */
    @SuppressWarnings("unchecked")
    static <T> T copy(T value) throws IOException, ClassNotFoundException {
        return (T) read(bytes(value));
    }

    static byte[] bytes(Object value) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        return bytes.toByteArray();
    }

    static Object read(byte[] bytes) throws IOException, ClassNotFoundException {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            return in.readObject();
        }
    }
}
