package io.github.formulationmath.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The keys of the texts that the library speaks, and where the sources name them: as a literal, as the meaning of a
 * symbol, or put together from a literal that ends with a full stop or a dash, the name of a constant of an enum or another
 * literal, and literals such as {@code -by}.
 */
final class WordingKeys {

    private static final Path RESOURCES = Path.of("src", "main", "resources");
    private static final Pattern LITERAL = Pattern.compile("\"((?:\\\\.|[^\"\\\\\\n])*)\"");
    private static final Pattern SYMBOL = Pattern.compile("Symbol\\s*\\.of\\(\\s*\"[^\"]*\",\\s*\"([^\"]*)\"");
    private static final Pattern KEY = Pattern.compile("[a-z]+(\\.[A-Za-z0-9_-]+)+");
    private static final Pattern CONSTANT = Pattern.compile("[A-Z][A-Z0-9_]*");
    private static final String SYMBOLS = "symbol.";

    private final Set<String> keys;
    private final Map<String, String> code;
    private final Set<String> literals = new TreeSet<>();
    private final Set<String> meanings = new TreeSet<>();
    private final Set<String> endings = new TreeSet<>();

    WordingKeys(Set<String> keys, Map<String, String> code, Collection<String> constants) {
        this.keys = keys;
        this.code = code;
        code.values().forEach(source -> {
            LITERAL.matcher(source).results().forEach(found -> literals.add(found.group(1)));
            SYMBOL.matcher(source).results().forEach(found -> meanings.add(found.group(1)));
        });
        endings.addAll(literals);
        constants.stream().filter(CONSTANT.asMatchPredicate()).forEach(constant -> {
            endings.add(constant);
            endings.add(constant.toLowerCase(Locale.ROOT));
            endings.add(constant.toLowerCase(Locale.ROOT).replace('_', '-'));
        });
    }

    /** The keys of every file of texts in the jar. */
    static Set<String> written() {
        return writtenByRoom().values().stream().flatMap(Set::stream).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The keys of the file of texts of each room that has one. */
    static Map<String, Set<String>> writtenByRoom() {
        Map<String, Set<String>> keys = new TreeMap<>();
        try (Stream<Path> files = Files.walk(RESOURCES)) {
            for (Path file :
                    files.filter(path -> path.endsWith("words-en.properties")).toList()) {
                Properties texts = new Properties();
                try (InputStream in = Files.newInputStream(file)) {
                    texts.load(in);
                }
                keys.put(file.getParent().getFileName().toString(), texts.stringPropertyNames());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return keys;
    }

    /** Those of some keys of which a room says neither the whole nor how it begins. */
    Set<String> saidNowhereIn(String room, Set<String> some) {
        Set<String> said = new TreeSet<>();
        code.forEach((file, source) -> {
            if (Sources.room(file).equals(room)) {
                LITERAL.matcher(source).results().forEach(found -> said.add(found.group(1)));
            }
        });
        return some.stream()
                .filter(key -> said.stream().noneMatch(literal -> begins(literal, key)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean begins(String literal, String key) {
        return key.equals(literal)
                || key.equals(SYMBOLS + literal)
                || (literal.contains(".") && key.startsWith(literal) && !literal.equals(SYMBOLS));
    }

    /** Keys that stand in a file and are named nowhere. */
    Set<String> unused() {
        return keys.stream().filter(key -> !isNamed(key)).collect(Collectors.toCollection(TreeSet::new));
    }

    private boolean isNamed(String key) {
        return literals.contains(key) || isMeaning(key) || isPutTogether(key);
    }

    private boolean isMeaning(String key) {
        return key.startsWith(SYMBOLS) && literals.contains(key.substring(SYMBOLS.length()));
    }

    /** From a prefix and an ending, and perhaps a suffix that is a literal beginning with a dash or a full stop. */
    private boolean isPutTogether(String key) {
        return Stream.concat(
                        Stream.of(""),
                        literals.stream().filter(text -> text.matches("[.-][a-z-]+") && key.endsWith(text)))
                .map(suffix -> key.substring(0, key.length() - suffix.length()))
                .anyMatch(head -> (!head.equals(key) && literals.contains(head)) || hasPrefixAndEnding(head));
    }

    private boolean hasPrefixAndEnding(String key) {
        for (int dot = 0; dot < key.length(); dot++) {
            String ending = key.substring(dot + 1);
            if ((key.charAt(dot) == '.' || key.charAt(dot) == '-')
                    && literals.contains(key.substring(0, dot + 1))
                    && !key.startsWith(SYMBOLS)
                    && (endings.contains(ending) || isPair(ending))) {
                return true;
            }
        }
        return false;
    }

    /** Two endings with a full stop between them: a verdict and a kind of limit. */
    private boolean isPair(String ending) {
        int dot = ending.indexOf('.');
        return dot > 0 && endings.contains(ending.substring(0, dot)) && endings.contains(ending.substring(dot + 1));
    }

    /** Keys that the sources name and no file has: literals that begin as keys do, and meanings of symbols. */
    Set<String> missing() {
        Set<String> groups = keys.stream()
                .filter(key -> key.contains("."))
                .map(key -> key.substring(0, key.indexOf('.')))
                .collect(Collectors.toSet());
        Set<String> missing = literals.stream()
                .filter(text -> isKey(text, groups) && !keys.contains(text) && !isHead(text) && !isEnding(text))
                .collect(Collectors.toCollection(TreeSet::new));
        meanings.stream()
                .map(meaning -> SYMBOLS + meaning)
                .filter(key -> !keys.contains(key))
                .forEach(missing::add);
        return missing;
    }

    private static boolean isKey(String text, Set<String> groups) {
        Matcher key = KEY.matcher(text);
        return key.matches() && groups.contains(text.substring(0, text.indexOf('.')));
    }

    /** A literal that becomes a key behind another. */
    private boolean isEnding(String text) {
        return literals.stream().anyMatch(head -> head.endsWith(".") && keys.contains(head + text));
    }

    /** A literal that becomes a key when something is appended. */
    private boolean isHead(String text) {
        return keys.stream()
                .anyMatch(key -> key.startsWith(text + "-")
                        || key.startsWith(text + ".")
                        || (text.endsWith("-") && key.startsWith(text)));
    }
}
