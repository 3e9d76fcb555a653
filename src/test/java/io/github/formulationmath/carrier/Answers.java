package io.github.formulationmath.carrier;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What a value answers to everything that can be asked without another value, or with a name: equal values of which one
 * lost what it looks things up by would still differ here.
 */
final class Answers {

    private static final List<String> NAMES = List.of("Glycerin", "Phenoxyethanol", "oil", "Na");

    private Answers() {}

    /** By question: the answer in print, or what was thrown. */
    static Map<String, String> of(Object value) {
        Map<String, String> answers = new TreeMap<>();
        Stream.of(value.getClass().getMethods())
                .filter(method -> isQuestion(value, method))
                .forEach(method -> {
                    if (method.getParameterCount() == 0) {
                        answers.put(method.getName() + "()", answer(value, method));
                    } else {
                        NAMES.forEach(name -> answers.put(method.getName() + " " + name, answer(value, method, name)));
                    }
                });
        return answers;
    }

    private static boolean isQuestion(Object value, Method method) {
        return !Modifier.isStatic(method.getModifiers())
                && Modifier.isPublic(value.getClass().getModifiers())
                && method.getDeclaringClass() != Object.class
                && (method.getParameterCount() == 0
                        || Arrays.equals(method.getParameterTypes(), new Class<?>[] {String.class}));
    }

    private static String answer(Object value, Method method, Object... arguments) {
        try {
            return print(method.invoke(value, arguments));
        } catch (InvocationTargetException e) {
            return e.getCause().toString();
        } catch (IllegalAccessException e) {
            return "hidden";
        }
    }

    /** What prints its address only is told by its type. */
    private static String print(Object answer) {
        return String.valueOf(answer).replaceAll("@[0-9a-f]+", "");
    }
}
