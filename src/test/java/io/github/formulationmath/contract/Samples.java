package io.github.formulationmath.contract;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.snippet.Outcome;
import io.github.formulationmath.snippet.Snippet;
import io.github.formulationmath.snippet.SnippetCompiler;
import io.github.formulationmath.support.TextTable;
import java.io.StringReader;
import java.io.StringWriter;
import java.lang.reflect.Array;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Proxy;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;

/** A few values of as many types as can be come by: those of a table, and what they lead to. */
final class Samples {

    static final String ROOT = "io.github.formulationmath.";

    private static final Path TABLE = Path.of("src", "test", "resources", "contract", "samples.txt");
    private static final int MOST_OF_A_TYPE = 2;
    private static final List<Object> TEXTS = List.of("Glycerin", "12.5 g", "3 %", "30 mL", "0.92 g/mL", "1", "water");

    private final Map<Class<?>, List<Object>> byClass = new LinkedHashMap<>();

    private Samples() {}

    /** From the table, onward through every public method without arguments. */
    static Samples gather() {
        Samples samples = new Samples();
        List<String> lines = TextTable.rows(TABLE);
        List<Outcome> outcomes = SnippetCompiler.outcomes(
                lines.stream().map(line -> Snippet.of(line, List.of(), line)).toList());
        Deque<Object> open = new ArrayDeque<>();
        for (int i = 0; i < lines.size(); i++) {
            if (!(outcomes.get(i) instanceof Outcome.Ran ran)) {
                throw new AssertionError(TABLE + ": " + lines.get(i) + ": " + outcomes.get(i));
            }
            open.add(ran.seen().last());
        }
        samples.spread(open);
        return samples;
    }

    private void spread(Deque<Object> open) {
        while (!open.isEmpty()) {
            Object value = open.poll();
            if (value instanceof Optional<?> some) {
                some.ifPresent(open::add);
            } else if (value instanceof Collection<?> many) {
                many.stream().limit(MOST_OF_A_TYPE).forEach(open::add);
            } else if (value instanceof Map<?, ?> map) {
                map.entrySet().stream().limit(MOST_OF_A_TYPE).forEach(entry -> {
                    open.add(entry.getKey());
                    open.add(entry.getValue());
                });
            } else if (value.getClass().getName().startsWith(ROOT) && keep(value)) {
                publicTypes(value.getClass())
                        .forEach(type -> Stream.of(type.getMethods())
                                .filter(method -> method.getParameterCount() == 0
                                        && method.getDeclaringClass() != Object.class
                                        && !Modifier.isStatic(method.getModifiers())
                                        && !method.getName().equals("run"))
                                .forEach(method -> ask(value, method).ifPresent(open::add)));
            }
        }
    }

    private boolean keep(Object value) {
        List<Object> known = byClass.computeIfAbsent(value.getClass(), any -> new ArrayList<>());
        boolean isNew = known.size() < MOST_OF_A_TYPE && known.stream().noneMatch(other -> other == value);
        if (isNew) {
            known.add(value);
        }
        return isNew;
    }

    private static Optional<Object> ask(Object value, Method method) {
        try {
            method.setAccessible(true);
            return Optional.ofNullable(method.invoke(value)).filter(answer -> !(answer instanceof Stream));
        } catch (ReflectiveOperationException e) {
            return Optional.empty();
        }
    }

    /** The class itself and everything above it that a caller can name. */
    private static Set<Class<?>> publicTypes(Class<?> type) {
        Set<Class<?>> types = new LinkedHashSet<>();
        for (Class<?> above = type; above != null && above != Object.class; above = above.getSuperclass()) {
            types.add(above);
            types.addAll(List.of(above.getInterfaces()));
        }
        types.removeIf(above ->
                !Modifier.isPublic(above.getModifiers()) || !above.getName().startsWith(ROOT));
        return types;
    }

    /** Values of a type. */
    List<Object> of(Type type) {
        if (type instanceof Class<?> plain) {
            return ofClass(plain);
        }
        if (type instanceof ParameterizedType generic) {
            return ofGeneric(generic);
        }
        if (type instanceof WildcardType any) {
            return of(any.getLowerBounds().length > 0 ? any.getLowerBounds()[0] : any.getUpperBounds()[0]);
        }
        if (type instanceof TypeVariable<?> variable) {
            Type bound = variable.getBounds()[0];
            return bound instanceof Class<?> plain && plain != Object.class ? of(plain) : ofClass(raw("number.Ratio"));
        }
        List<Object> parts = of(((GenericArrayType) type).getGenericComponentType());
        return parts.isEmpty() ? List.of() : List.of(array(parts.get(0).getClass(), parts.get(0)));
    }

    private static Class<?> raw(String name) {
        try {
            return Class.forName(ROOT + name);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<Object> ofGeneric(ParameterizedType generic) {
        Class<?> type = (Class<?>) generic.getRawType();
        List<Object> inside = new ArrayList<>();
        for (Type argument : generic.getActualTypeArguments()) {
            List<Object> values =
                    type == List.class || type == Map.class || type == Set.class || type == Collection.class
                            ? of(argument)
                            : List.of();
            inside.add(values.isEmpty() ? null : values.get(0));
        }
        if (type == List.class || type == Collection.class || type == Iterable.class) {
            return inside.get(0) == null ? List.of() : List.of(List.of(inside.get(0)), List.of());
        }
        if (type == Set.class) {
            return inside.get(0) == null ? List.of() : List.of(Set.of(inside.get(0)));
        }
        if (type == Map.class) {
            return inside.contains(null) ? List.of(Map.of()) : List.of(Map.of(inside.get(0), inside.get(1)), Map.of());
        }
        return ofClass(type);
    }

    private List<Object> ofClass(Class<?> type) {
        if (type.isArray()) {
            List<Object> parts = of(type.getComponentType());
            return parts.isEmpty() ? List.of() : List.of(array(type.getComponentType(), parts.get(0)));
        }
        if (type.isEnum()) {
            return List.of(type.getEnumConstants());
        }
        List<Object> values = new ArrayList<>(plain(type));
        byClass.values().stream()
                .flatMap(List::stream)
                .filter(type::isInstance)
                .limit(MOST_OF_A_TYPE)
                .forEach(values::add);
        if (values.isEmpty() && type.isInterface() && !type.isSealed()) {
            values.add(Proxy.newProxyInstance(
                    type.getClassLoader() == null ? Samples.class.getClassLoader() : type.getClassLoader(),
                    new Class<?>[] {type},
                    (proxy, method, arguments) -> null));
        }
        return values;
    }

    private static Object array(Class<?> component, Object value) {
        Object array = Array.newInstance(component, 1);
        Array.set(array, 0, value);
        return array;
    }

    private static List<Object> plain(Class<?> type) {
        if (type == String.class || type == CharSequence.class) {
            return TEXTS;
        }
        if (type == Object.class) {
            return List.of("any");
        }
        Object value = Map.ofEntries(
                        Map.entry(int.class, 1),
                        Map.entry(long.class, 1L),
                        Map.entry(double.class, 0.5),
                        Map.entry(float.class, 0.5f),
                        Map.entry(boolean.class, true),
                        Map.entry(char.class, 'a'),
                        Map.entry(Number.class, 1),
                        Map.entry(Integer.class, 1),
                        Map.entry(BigDecimal.class, BigDecimal.ONE),
                        Map.entry(BigInteger.class, BigInteger.ONE),
                        Map.entry(RoundingMode.class, RoundingMode.HALF_EVEN),
                        Map.entry(Locale.class, Locale.ROOT),
                        Map.entry(Instant.class, Instant.parse("2026-11-25T10:15:30Z")),
                        Map.entry(LocalDate.class, LocalDate.of(2026, 11, 25)),
                        Map.entry(java.io.Reader.class, new StringReader("")),
                        Map.entry(java.io.Writer.class, new StringWriter()),
                        Map.entry(Path.class, Path.of("no-such-file")),
                        Map.entry(CsvFormat.class, CsvFormat.of(List.of("name"))),
                        Map.entry(Class.class, javax.measure.quantity.Mass.class),
                        Map.entry(javax.measure.Unit.class, tech.units.indriya.unit.Units.GRAM),
                        Map.entry(java.util.concurrent.ExecutorService.class, ForkJoinPool.commonPool()))
                .get(type);
        return value == null ? List.of() : List.of(value);
    }
}
