package io.github.formulationmath.contract;

import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Hands null to every argument of a public member that is not said to take it, one at a time, and expects a {@link
 * NullPointerException} that names the argument and nothing else.
 */
final class NullContract {

    /** What became of an argument. */
    enum Found {
        /** Null was refused by name. */
        REFUSED,
        /** Null was taken, or refused without its name. */
        BROKEN,
        /** There is no value to call the member with. */
        NOT_TRIED
    }

    private static final int MOST_CALLS = 400;

    /** A reckoning hands itself to these; nobody else calls them. A check is told the name of what it checks. */
    private static final Set<String> NOT_ASKED = Set.of("equals", "derive", "compareTo");

    private final Samples samples;

    NullContract(Samples samples) {
        this.samples = samples;
    }

    /**
     * The public members of a type that take anything that could be null. Left out is the reckoning: every step of every
     * relation goes through it, and a null there comes from the library itself.
     */
    static Stream<Executable> membersOf(Class<?> type) {
        return Stream.<Executable>concat(Arrays.stream(type.getMethods()), Arrays.stream(type.getConstructors()))
                .filter(member -> member.getDeclaringClass().getName().startsWith(Samples.ROOT))
                .filter(member -> !member.isSynthetic() && !NOT_ASKED.contains(member.getName()))
                .filter(member -> !(member.getName().startsWith("require") && Modifier.isStatic(member.getModifiers())))
                .filter(member -> !member.getDeclaringClass().getSimpleName().equals("Reckoning"))
                .filter(member -> member.getParameterCount() > 0);
    }

    static boolean mayBeNull(Executable member, int position) {
        AnnotatedType type = member.getAnnotatedParameterTypes()[position];
        return member.getParameterTypes()[position].isPrimitive() || type.isAnnotationPresent(Nullable.class);
    }

    Found find(Class<?> type, Executable member, int position) {
        List<List<Object>> choices = new ArrayList<>();
        for (int i = 0; i < member.getParameterCount(); i++) {
            List<Object> values = i == position ? new ArrayList<>() : samples.of(member.getGenericParameterTypes()[i]);
            if (i == position) {
                values.add(null);
            }
            if (values.isEmpty()) {
                return Found.NOT_TRIED;
            }
            choices.add(values);
        }
        boolean isOwn = Modifier.isStatic(member.getModifiers()) || member instanceof Constructor;
        List<Object> owners = isOwn ? List.of("") : ownersOf(type);
        Found found = Found.NOT_TRIED;
        for (Object owner : owners) {
            for (Object[] arguments : combinations(choices)) {
                switch (call(isOwn ? null : owner, member, arguments)) {
                    case REFUSED -> {
                        return Found.REFUSED;
                    }
                    case BROKEN -> found = Found.BROKEN;
                    default -> {}
                }
            }
        }
        return found;
    }

    /** What the library made: what a caller would implement is the caller's business. */
    private List<Object> ownersOf(Class<?> type) {
        return samples.of(type).stream()
                .filter(owner -> !Proxy.isProxyClass(owner.getClass()))
                .toList();
    }

    private static List<Object[]> combinations(List<List<Object>> choices) {
        List<Object[]> all = new ArrayList<>();
        all.add(new Object[choices.size()]);
        for (int i = 0; i < choices.size(); i++) {
            List<Object[]> longer = new ArrayList<>();
            for (Object[] start : all) {
                for (Object value : choices.get(i)) {
                    if (longer.size() < MOST_CALLS) {
                        Object[] next = start.clone();
                        next[i] = value;
                        longer.add(next);
                    }
                }
            }
            all = longer;
        }
        return all;
    }

    private static Found call(@Nullable Object owner, Executable member, Object[] arguments) {
        try {
            member.setAccessible(true);
            if (member instanceof Method method) {
                method.invoke(owner, arguments);
            } else {
                ((Constructor<?>) member).newInstance(arguments);
            }
            return Found.BROKEN;
        } catch (InvocationTargetException e) {
            return judge(e.getCause());
        } catch (IllegalArgumentException e) {
            return Found.NOT_TRIED;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(member.toString(), e);
        }
    }

    /** Words of the virtual machine ("Cannot invoke …") name no argument. Another refusal came before null was seen. */
    private static Found judge(Throwable thrown) {
        if (thrown instanceof NullPointerException) {
            return thrown.getMessage() != null && thrown.getMessage().matches("[a-zA-Z0-9\\[\\] ]{1,40}")
                    ? Found.REFUSED
                    : Found.BROKEN;
        }
        return Found.NOT_TRIED;
    }
}
