package io.github.formulationmath.architecture;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a caller can compile against, one line for each type and member, in an order that never changes. */
final class ApiSignature {

    private ApiSignature() {}

    static SortedSet<String> of(Collection<Class<?>> types) {
        SortedSet<String> lines = new TreeSet<>();
        types.stream().filter(ApiSignature::isVisible).forEach(type -> addType(lines, type));
        return lines;
    }

    private static void addType(SortedSet<String> lines, Class<?> type) {
        lines.add(type.getName() + " | " + heading(type));
        for (Field field : type.getFields()) {
            add(
                    lines,
                    type,
                    field.getDeclaringClass(),
                    modifiers(field.getModifiers()) + text(field.getGenericType()) + " " + field.getName());
        }
        Arrays.stream(type.getMethods())
                .map(method -> asWritten(type, method))
                .flatMap(Optional::stream)
                .forEach(method -> addMethod(lines, type, method));
        for (Constructor<?> constructor : type.getConstructors()) {
            add(lines, type, type, "new" + parameters(constructor));
        }
    }

    private static void addMethod(SortedSet<String> lines, Class<?> type, Method method) {
        String returned = text(method.getGenericReturnType());
        String member = modifiers(method.getModifiers()) + returned + " " + method.getName() + parameters(method);
        add(lines, type, method.getDeclaringClass(), member);
    }

    /** The method itself; for the bridge to a public method of a package-private parent, the parent's method. */
    private static Optional<Method> asWritten(Class<?> type, Method method) {
        if (!method.isSynthetic()) {
            return Optional.of(method);
        }
        Class<?> parent = type.getSuperclass();
        return parent == null
                ? Optional.empty()
                : Arrays.stream(parent.getDeclaredMethods())
                        .filter(other -> !other.isSynthetic() && Modifier.isPublic(other.getModifiers()))
                        .filter(other -> other.getName().equals(method.getName()))
                        .filter(other -> other.getReturnType() == method.getReturnType())
                        .filter(other -> Arrays.equals(other.getParameterTypes(), method.getParameterTypes()))
                        .findFirst();
    }

    private static void add(SortedSet<String> lines, Class<?> type, Class<?> declaredIn, String member) {
        if (declaredIn.getName().startsWith(Ladder.ROOT)) {
            lines.add(type.getName() + " | " + member);
        }
    }

    private static String heading(Class<?> type) {
        String kind = type.isInterface() ? "interface" : type.isEnum() ? "enum" : "class";
        List<String> above = Arrays.stream(type.getGenericInterfaces())
                .map(ApiSignature::text)
                .sorted()
                .toList();
        Class<?> parent = type.getSuperclass();
        boolean shown = parent != null && Modifier.isPublic(parent.getModifiers()) && parent != Object.class;
        return kind
                + (type.isSealed() ? " sealed" : "")
                + (shown ? " < " + parent.getName() : "")
                + (above.isEmpty() ? "" : " : " + String.join(", ", above));
    }

    private static String modifiers(int modifiers) {
        return (Modifier.isStatic(modifiers) ? "static " : "") + (Modifier.isAbstract(modifiers) ? "abstract " : "");
    }

    private static String parameters(Executable executable) {
        return Arrays.stream(executable.getGenericParameterTypes())
                .map(ApiSignature::text)
                .collect(Collectors.joining(", ", "(", ")"));
    }

    private static String text(Type type) {
        return type.getTypeName();
    }

    private static boolean isVisible(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                && (type.getEnclosingClass() == null || isVisible(type.getEnclosingClass()));
    }
}
