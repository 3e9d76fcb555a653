package io.github.formulationmath.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the types that are public only to cross a wall between rooms: another room uses them, no public member of another
 * public type takes or gives them, and no page tells a user of them.
 */
final class Doors {

    private Doors() {}

    static Set<String> in(Collection<Class<?>> types, Map<String, String> code, String pages) {
        Set<String> signature = ApiSignature.of(types);
        return types.stream()
                .filter(type -> type.getEnclosingClass() == null && Modifier.isPublic(type.getModifiers()))
                .filter(type -> !Throwable.class.isAssignableFrom(type))
                .filter(type -> !isKindOfASealedOne(type) && !isShown(type, signature) && !isToldOf(type, pages))
                .filter(type -> crossesAWall(type, code))
                .map(Class::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether a member or the heading of another type shows it. */
    private static boolean isShown(Class<?> type, Set<String> signature) {
        Pattern name = Pattern.compile(Pattern.quote(type.getName()) + "(?![\\w$.])");
        return signature.stream()
                .map(line -> line.split(" \\| ", 2))
                .filter(parts -> !parts[0].equals(type.getName()) && !parts[0].startsWith(type.getName() + "$"))
                .anyMatch(parts -> name.matcher(parts[1]).find());
    }

    /** One of a few kinds of something public, which a user tells apart. */
    private static boolean isKindOfASealedOne(Class<?> type) {
        return Stream.concat(Stream.ofNullable(type.getSuperclass()), Arrays.stream(type.getInterfaces()))
                .anyMatch(above -> above.isSealed() && Modifier.isPublic(above.getModifiers()));
    }

    private static boolean crossesAWall(Class<?> type, Map<String, String> code) {
        return code.values().stream()
                .anyMatch(source -> source.contains("import " + type.getName() + ";")
                        || source.contains("import static " + type.getName() + "."));
    }

    private static boolean isToldOf(Class<?> type, String pages) {
        return Pattern.compile("\\b" + type.getSimpleName() + "\\b")
                .matcher(pages)
                .find();
    }

    /** Every page for users. */
    static String pages() {
        try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
            StringBuilder all = new StringBuilder(Files.readString(Path.of("README.md")));
            for (Path page : docs.filter(path -> path.toString().endsWith(".md"))
                    .filter(path -> !path.endsWith("CHANGELOG.md") && !path.endsWith("architecture.md"))
                    .toList()) {
                all.append(Files.readString(page));
            }
            return all.toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
