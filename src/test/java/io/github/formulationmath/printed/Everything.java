package io.github.formulationmath.printed;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.reckoning.Working;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/**
 * All that people read of an answer: its text, its pages in every format and language, and the same of every answer that its
 * public methods lead to. What nobody thought of is asked, too, as the methods are found by reflection.
 */
final class Everything {

    static final List<Wording> WORDS = List.of(Wording.english(), Wording.german(), Wording.french());

    private static final String ROOMS = "io.github.formulationmath.";

    /** Rooms whose values are read by programs or are themselves what is printed. */
    private static final Set<String> DUMB = Set.of("number", "json", "csv", "document", "reckoning", "simulation");

    /** Methods that make another of the same, or convert: nothing new is printed. */
    private static final Set<String> PASSED = Set.of(
            "toString",
            "hashCode",
            "getClass",
            "notify",
            "notifyAll",
            "wait",
            "iterator",
            "spliterator",
            "stream",
            "builder",
            "clone");

    private final BiConsumer<String, String> reader;
    private final int perMethod;
    private final Map<Object, Boolean> seen = new IdentityHashMap<>();
    private final Map<String, Integer> visits = new HashMap<>();

    private Everything(BiConsumer<String, String> reader, int perMethod) {
        this.reader = reader;
        this.perMethod = perMethod;
    }

    /** Hands everything that is printed of an answer to a reader, with the way to it: its methods, and behind a space what prints it. */
    static void of(String name, Object answer, int perMethod, BiConsumer<String, String> reader) {
        new Everything(reader, perMethod).visit(name, answer, 0);
    }

    private void visit(String path, Object value, int depth) {
        if (value == null || depth > 7) {
            return;
        }
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(each -> visit(path, each, depth));
        } else if (value instanceof Collection<?> all) {
            several(path, all, depth);
        } else if (value instanceof Map<?, ?> map) {
            several(path + ".keys", map.keySet(), depth);
            several(path + ".values", map.values(), depth);
        } else if (value instanceof String text) {
            reader.accept(path, text);
        } else if (value instanceof Document page) {
            pages(path, page);
        } else if (value instanceof Working working) {
            worked(path, working);
        } else if (value instanceof Phrase phrase) {
            WORDS.stream()
                    .filter(words -> words.has(phrase.key()))
                    .forEach(words -> reader.accept(path, words.text(phrase)));
        } else if (value instanceof Throwable thrown) {
            thrown(path, thrown);
        } else if (value.getClass().getName().startsWith(ROOMS) && !(value instanceof Enum<?>)) {
            ours(path, value, depth);
        }
    }

    private void several(String path, Collection<?> all, int depth) {
        List<?> few = all.stream().limit(3).toList();
        for (Object each : few) {
            visit(path + "[]", each, depth);
        }
    }

    private void pages(String path, Document page) {
        for (Format format : List.of(Format.TEXT, Format.MARKDOWN, Format.HTML, Format.LATEX)) {
            reader.accept(path + " as " + format, page.print(format));
        }
    }

    private void worked(String path, Working working) {
        if (again(path, "working")) {
            return;
        }
        reader.accept(path + " working", working.toString());
        Document everything = working.document(Style.everything());
        if (again(path, "format")) {
            reader.accept(path + " working as TEXT", everything.print(Format.TEXT));
            return;
        }
        pages(path + " working", everything);
        reader.accept(
                path + " working de",
                working.document(Style.everything().with(Wording.german())).print(Format.TEXT));
        reader.accept(
                path + " working fr",
                working.document(Style.everything().with(Wording.french())).print(Format.TEXT));
    }

    private void thrown(String path, Throwable thrown) {
        reader.accept(path, String.valueOf(thrown.getMessage()));
        if (thrown instanceof Refusal refusal) {
            WORDS.forEach(words -> reader.accept(path, words.text(refusal)));
        }
    }

    private boolean again(String path, String what) {
        String way = path.substring(path.lastIndexOf('.', Math.max(0, path.lastIndexOf('.') - 1)) + 1) + what;
        return visits.merge(way, 1, Integer::sum) > (what.equals("format") ? 1 : perMethod);
    }

    private void ours(String path, Object value, int depth) {
        if (seen.put(value, true) != null) {
            return;
        }
        String room = value.getClass().getName().substring(ROOMS.length()).replaceAll("[.].*", "");
        if (DUMB.contains(room)) {
            return;
        }
        if (value instanceof Amount<?> amount && amount.isZero() && amount.isGiven()) {
            // Nothing is nothing in any unit.
            return;
        }
        if (value instanceof Interval<?> both
                && both.toString().startsWith("[0 ")
                && both.toString().contains(", 0 ")) {
            return;
        }
        reader.accept(path + " (" + value.getClass().getSimpleName() + ")", value.toString());
        if (value instanceof Amount<?> amount) {
            explained(path, amount);
            return;
        }
        for (Method method : methods(value)) {
            if (!again(value.getClass().getSimpleName() + "." + method.getName(), "")) {
                call(path + "." + method.getName(), value, method, depth);
            }
        }
    }

    /** What was given in a product of units, such as a variance, has no working. */
    private void explained(String path, Amount<?> amount) {
        try {
            worked(path, amount.working());
        } catch (UnsupportedOperationException e) {
            assertThat(amount.symbol()).as(path).endsWith("²");
        }
    }

    private static List<Method> methods(Object value) {
        return Arrays.stream(value.getClass().getMethods())
                .filter(method -> !Modifier.isStatic(method.getModifiers()) && !PASSED.contains(method.getName()))
                .filter(method -> method.getReturnType() != void.class
                        && !method.getReturnType().isPrimitive()
                        && !Stream.class.isAssignableFrom(method.getReturnType()))
                .filter(method -> method.getParameterCount() == 0
                        || method.getParameterCount() == 1 && method.getParameterTypes()[0] == Wording.class)
                .sorted(Comparator.comparing(Method::getName).thenComparing(Method::getParameterCount))
                .toList();
    }

    private void call(String path, Object value, Method method, int depth) {
        List<Object[]> arguments = new ArrayList<>();
        if (method.getParameterCount() == 0) {
            arguments.add(new Object[0]);
        } else {
            WORDS.forEach(words -> arguments.add(new Object[] {words}));
        }
        for (Object[] each : arguments) {
            try {
                method.setAccessible(true);
                visit(path, method.invoke(value, each), depth + 1);
            } catch (InvocationTargetException e) {
                thrown(path, e.getCause());
            } catch (IllegalAccessException e) {
                throw new AssertionError(path, e);
            }
        }
    }
}
