package io.github.formulationmath.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.assertj.core.api.SoftAssertions;

/**
 * Hands null to every reference argument of every public method of a type, one at a time, and expects a {@link
 * NullPointerException} that names an argument.
 */
public final class NullTester {

    /** What every value that explains itself takes. */
    private static final Map<Class<?>, Object> EXPLAINING = explaining();

    private static Map<Class<?>, Object> explaining() {
        Function<Object, Phrase> question = owner -> Phrase.of("question.given-value");
        Figure<Object> one = NullTester::one;
        return Map.of(
                Function.class,
                question,
                Figure.class,
                one,
                Origin.class,
                Origin.of(question, Ratio.ONE, "owner", one));
    }

    private static <V> V one(Object owner, Reckoning<V> reckoning) {
        return reckoning.literal(1);
    }

    private final Map<Class<?>, Object> samples;

    /** Sample values by parameter type, for the arguments that are not null. */
    public NullTester(Map<Class<?>, Object> samples) {
        this.samples = samples;
    }

    /** Tests all public methods of a type, the instance methods on the value given; gives the number of tries. */
    public int test(Class<?> type, Object instance) throws IllegalAccessException {
        int tries = 0;
        SoftAssertions softly = new SoftAssertions();
        for (Method method : type.getMethods()) {
            boolean ours = method.getDeclaringClass().getName().startsWith("io.github.formulationmath");
            // A reckoning hands itself to derive; nobody else calls it.
            // What passes an argument on is told the name of it, and names that.
            boolean isCheck = method.getName().startsWith("require") && Modifier.isStatic(method.getModifiers());
            if (!ours
                    || isCheck
                    || method.getName().equals("equals")
                    || method.getName().equals("derive")) {
                continue;
            }
            for (int i = 0; i < method.getParameterCount(); i++) {
                if (!method.getParameterTypes()[i].isPrimitive()) {
                    int position = i;
                    softly.check(() -> refusesNull(method, position, instance));
                    tries++;
                }
            }
        }
        softly.assertAll();
        return tries;
    }

    private void refusesNull(Method method, int position, Object instance) throws IllegalAccessException {
        Object[] arguments = arguments(method, instance);
        arguments[position] = null;
        method.setAccessible(true);
        try {
            method.invoke(Modifier.isStatic(method.getModifiers()) ? null : instance, arguments);
            fail("%s took null as argument %d", method, position + 1);
        } catch (InvocationTargetException e) {
            assertThat(e.getCause())
                    .as("%s, argument %d null", method, position + 1)
                    .isInstanceOf(NullPointerException.class);
            // Names only: the words of the virtual machine ("Cannot invoke …") would not match.
            assertThat(e.getCause().getMessage())
                    .as("%s names the argument", method)
                    .matches("[a-zA-Z]+");
        }
    }

    private Object[] arguments(Executable method, Object instance) {
        List<Object> arguments = new ArrayList<>();
        for (Parameter parameter : Arrays.asList(method.getParameters())) {
            Class<?> type = parameter.getType();
            Object given = samples.getOrDefault(type, EXPLAINING.get(type));
            // The value itself is a sample of its own type, and of what a bridge such as compareTo(Object) takes.
            Object sample = given == null && type.isInstance(instance) ? instance : given;
            assertThat(sample)
                    .as("sample for %s of %s", parameter.getType(), method)
                    .isNotNull();
            arguments.add(sample);
        }
        return arguments.toArray();
    }
}
