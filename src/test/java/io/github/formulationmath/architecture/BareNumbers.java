package io.github.formulationmath.architecture;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the public members, outside the rooms where numbers live, that take or give a number that says no unit. Inherited
 * members count where they are declared, so that one is told once.
 */
final class BareNumbers {

    private static final Set<String> ROOMS_OF_NUMBERS = Set.of("number", "reckoning");

    private static final Pattern BARE = Pattern.compile("\\b(" + Ladder.ROOT.replace(".", "\\.")
            + "\\.number\\.(Ratio|Bounds)|double|float|long|int|short"
            + "|java\\.math\\.Big(Decimal|Integer)|java\\.lang\\.(Integer|Long|Double|Float)"
            + "|java\\.util\\.Optional(Int|Long|Double)|java\\.util\\.stream\\.(Int|Long|Double)Stream)\\b");

    /** What Java itself asks for. */
    private static final Pattern OF_THE_LANGUAGE =
            Pattern.compile("\\bint (hashCode\\(\\)|compareTo\\([^)]*\\)|signum\\(\\))$");

    private BareNumbers() {}

    /** The members, as {@code Type.member}, by room, each with its signature. */
    static Map<String, Map<String, String>> in(Collection<Class<?>> types) {
        Map<String, Map<String, String>> found = new TreeMap<>();
        SortedSet<String> signature = ApiSignature.of(types);
        Map<String, Class<?>> byName = new HashMap<>();
        types.forEach(type -> byName.put(type.getName(), type));
        for (String line : signature) {
            String[] parts = line.split(" \\| ", 2);
            String type = parts[0].substring(Ladder.ROOT.length() + 1);
            String room = type.split("\\.", 2)[0];
            String member = parts[1];
            if (!ROOMS_OF_NUMBERS.contains(room)
                    && member.contains("(")
                    && BARE.matcher(member).find()
                    && !isInherited(byName.get(parts[0]), member, signature)
                    && !OF_THE_LANGUAGE.matcher(member).find()) {
                found.computeIfAbsent(room, any -> new TreeMap<>())
                        .merge(name(type.substring(room.length() + 1), member), member, (a, b) -> a + "; " + b);
            }
        }
        return found;
    }

    /** Whether a type above, in a room where numbers are no business, has the member already. */
    private static boolean isInherited(Class<?> type, String member, Set<String> signature) {
        return Stream.concat(Stream.ofNullable(type.getSuperclass()), Arrays.stream(type.getInterfaces()))
                .filter(above -> above.getName().startsWith(Ladder.ROOT))
                .anyMatch(above -> isInherited(above, member, signature) || says(above, member, signature));
    }

    private static boolean says(Class<?> type, String member, Set<String> signature) {
        String room = type.getName().substring(Ladder.ROOT.length() + 1).split("\\.")[0];
        return !ROOMS_OF_NUMBERS.contains(room)
                && (signature.contains(type.getName() + " | " + member)
                        || signature.contains(type.getName() + " | abstract " + member));
    }

    private static String name(String type, String member) {
        String head = member.substring(0, member.indexOf('('));
        return type.replace('$', '.') + "." + head.substring(head.lastIndexOf(' ') + 1);
    }

    /** Without those that stand in a list. */
    static Map<String, List<String>> without(Map<String, Map<String, String>> found, Set<String> allowed) {
        Map<String, List<String>> left = new TreeMap<>();
        found.forEach((room, members) -> {
            List<String> names = members.keySet().stream()
                    .filter(member -> !allowed.contains(member))
                    .collect(Collectors.toList());
            if (!names.isEmpty()) {
                left.put(room, names);
            }
        });
        return left;
    }
}
