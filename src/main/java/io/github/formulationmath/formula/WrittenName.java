package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A name as people write it on labels, price lists and data sheets: with a common name in brackets, a mark for
 * nanomaterials, a part of the plant, several names joined by "(and)", a colour index number with or without a space.
 *
 * <p>Nothing here decides what is the same substance; that is for {@link SubstanceName}, {@link Composition} and CAS numbers.
 * {@link NameBook} uses it to tell which name of a list is meant by another, and how sure that is.
 *
 * <p>Example: {@code WrittenName.of("Phenoxyethanol (and) Ethylhexylglycerin").parts()} are two names.
 *
 * <p>Immutable and thread-safe.
 */
public final class WrittenName {

    /** How the normal form of a nanomaterial ends. */
    static final String NANO = "(NANO)";

    private static final Pattern NOT_NANO = Pattern.compile("[(\\[]?NON[- ]?NANO[)\\]]?");
    private static final Pattern NANO_MARK =
            Pattern.compile("\\(NANO\\)|\\[NANO]|^NANO[- ]|[ ,-]NANO$|(?<=[\\])])NANO$");
    private static final Pattern JOINED =
            Pattern.compile("\\((?:AND|&|UND|ET|Y)\\)|\\[(?:AND|&|UND|ET)]| (?:AND|UND|&|\\+) |;");
    private static final Pattern LISTED = Pattern.compile("(?<=[A-Z)]),(?=[A-Z(])");
    private static final Pattern BRACKET = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]");
    private static final Pattern QUALIFIER = Pattern.compile(
            "^(?:ORGANIC|CERTIFIED ORGANIC|NATURAL|PURE|REFINED|UNREFINED|VIRGIN|WILD|BIO) | (?:ESSENTIAL|VOLATILE)(?= OIL)");
    private static final Pattern COLOUR_INDEX = Pattern.compile("(?:C\\.?I\\.?|COLOU?R INDEX)[ -]?(?:NO\\.? ?)?([0-9]{5})(?: ?:[0-9])?");

    /** Forms of one preparation: an absolute is an extract, and so are a concrete and a resinoid. */
    private static final Map<String, List<String>> FORMS = Map.of(
            "OIL", List.of("OIL"),
            "EXTRACT", List.of("EXTRACT"),
            "OIL/EXTRACT", List.of("OIL", "EXTRACT"),
            "ABSOLUTE", List.of("ABSOLUTE", "EXTRACT"),
            "CONCRETE", List.of("CONCRETE", "EXTRACT"),
            "RESINOID", List.of("RESINOID", "EXTRACT"));

    private static final Set<String> PLANT_PARTS = Set.of(
            "LEAF", "LEAVES", "FLOWER", "FLOWERS", "PEEL", "RIND", "BARK", "WOOD", "ROOT", "RHIZOME", "SEED", "FRUIT", "STEM", "HERB",
            "TWIG", "NEEDLE", "BUD", "RESIN", "GUM", "BALSAM", "BERRY", "BRANCH", "CONE", "LICHEN", "KERNEL", "NUT", "TOP", "TOPS");

    /** Parts whose pressed oils are fats; what smells comes from elsewhere. */
    private static final Set<String> FATTY_PARTS = Set.of("SEED", "KERNEL", "NUT", "GERM", "BRAN", "FRUIT");

    private static final Map<String, String> SPELLINGS = spellings();

    private final String text;
    private final String normal;

    private WrittenName(String text) {
        this.text = text;
        this.normal = SubstanceName.normalise(text);
    }

    /**
     * A name as written.
     *
     * @param text the name
     * @return the name, nothing decided yet
     */
    public static WrittenName of(String text) {
        return new WrittenName(Objects.requireNonNull(text, "text"));
    }

    private static Map<String, String> spellings() {
        Map<String, String> spellings = new LinkedHashMap<>();
        String greek = "Α=ALPHA Β=BETA Γ=GAMMA Δ=DELTA Ε=EPSILON Ω=OMEGA Μ=MU";
        for (String pair : greek.split(" ", -1)) {
            spellings.put(pair.substring(0, 1), pair.substring(2));
        }
        spellings.put("SULPH", "SULF");
        spellings.put("ALUMINIUM", "ALUMINUM");
        spellings.put("CAESIUM", "CESIUM");
        spellings.put("COLOUR", "COLOR");
        return spellings;
    }

    /**
     * The form in which spellings of one name agree that {@link SubstanceName} keeps apart: sulphide and sulfide, aluminium
     * and aluminum, Greek letters and their names, and spaces, hyphens and apostrophes anywhere.
     */
    static String looseKey(String name) {
        String key = SubstanceName.normalise(name);
        StringBuilder kept = new StringBuilder(key.length());
        for (int i = 0; i < key.length(); i++) {
            if (" -'.".indexOf(key.charAt(i)) < 0) {
                kept.append(key.charAt(i));
            }
        }
        String loose = kept.toString();
        for (Map.Entry<String, String> spelling : SPELLINGS.entrySet()) {
            loose = loose.replace(spelling.getKey(), spelling.getValue());
        }
        return loose;
    }

    /**
     * The names of a blend that is written as one name.
     *
     * @return the names parted at "(and)", "and", "&" and the like, in their order, as written; one name if it is no blend
     */
    public List<String> parts() {
        List<String> parts = new ArrayList<>();
        for (String part : JOINED.split(normal, -1)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return parts.size() > 1
                ? parts.stream().flatMap(part -> LISTED.splitAsStream(part)).toList()
                : List.of(text);
    }

    /** The names of a list parted by commas; a comma beside a digit is part of a chemical name. */
    List<String> listed() {
        return LISTED.splitAsStream(normal).toList();
    }

    /**
     * Whether the name is that of a preparation of a plant: an oil, an extract, an absolute.
     *
     * @return true if it ends like one
     */
    public boolean isPreparation() {
        return preparation(unqualified(withoutBrackets())) != null;
    }

    /**
     * Whether the name bears a mark for nanomaterials, in round or square brackets, before or after it.
     *
     * @return false for "non-nano"
     */
    public boolean isNano() {
        return !NOT_NANO.matcher(normal).find() && NANO_MARK.matcher(normal).find();
    }

    /**
     * The name without a mark for nanomaterials, in normal form.
     *
     * @return the name of the substance
     */
    public String withoutNano() {
        return tidy(NANO_MARK.matcher(NOT_NANO.matcher(normal).replaceAll(" ")).replaceAll(" "));
    }

    /**
     * The colour index number, in its usual spelling.
     *
     * @return {@code CI 77491} for {@code CI77491}, {@code C.I. 77491} or {@code Iron Oxides (CI 77491)}; empty if the name has
     *     none
     */
    public Optional<String> colourIndex() {
        Matcher found = COLOUR_INDEX.matcher(normal);
        while (found.find()) {
            boolean starts = found.start() == 0 || !Character.isLetterOrDigit(normal.charAt(found.start() - 1));
            boolean ends = found.end() == normal.length() || !Character.isLetterOrDigit(normal.charAt(found.end()));
            if (starts && ends) {
                return Optional.of("CI " + found.group(1));
            }
        }
        return Optional.empty();
    }

    /**
     * Whether the name says perfume, or names a volatile oil or another aromatic preparation of a plant, of whose constituents
     * only a breakdown tells. Oils of seeds, kernels, nuts and fruits, mostly fats, are not meant, nor extracts in general.
     *
     * @return true if constituents are to be asked for
     */
    public boolean isAromatic() {
        String plain = withoutBrackets();
        if (plain.matches("(?:PARFUM|PERFUME|FRAGRANCE|AROMA|FLAVOU?R|DUFTSTOFFE?|PARFÜM)(?: .*|/.*)?|.* (?:PERFUME|FRAGRANCE|PARFUM|FLAVOU?R)")
                || plain.matches(".*(?: ABSOLUTE| RESINOID|ESSENTIAL OIL|VOLATILE OIL)") ) {
            return true;
        }
        Preparation made = preparation(unqualified(plain));
        return made != null
                && made.forms().contains("OIL")
                && !made.parts().isEmpty()
                && made.parts().stream().noneMatch(FATTY_PARTS::contains);
    }

    /**
     * Whether the name is that of an oil or another aromatic preparation of a plant which is no pressed fat as far as the name
     * tells: no oil of seeds, kernels, nuts or fruits.
     *
     * @return true for "Lavandula Angustifolia Oil" and "Citrus Limon Peel Oil"
     */
    public boolean isVolatileOil() {
        Preparation made = preparation(unqualified(withoutBrackets()));
        return made != null
                && (made.forms().contains("OIL") || made.forms().size() > 1)
                && made.parts().stream().noneMatch(FATTY_PARTS::contains);
    }

    private String withoutBrackets() {
        return tidy(BRACKET.matcher(withoutNano()).replaceAll(" "));
    }

    private static String unqualified(String name) {
        return tidy(QUALIFIER.matcher(name.replace("*", " ").replace("®", " ").replace("™", " "))
                .replaceAll(" "));
    }

    private static String tidy(String name) {
        return SubstanceName.normalise(name.strip().replaceAll("^[,;]+|[,;]+$", ""));
    }

    String normal() {
        return normal;
    }

    /** Names that may be meant, the surest first; each with what was done to come to it. */
    Map<String, NameBook.How> variants() {
        Map<String, NameBook.How> variants = new LinkedHashMap<>();
        variants.put(normal, NameBook.How.SPELLING);
        String nano = isNano() ? NANO : "";
        String plain = withoutNano();
        put(variants, plain + nano, NameBook.How.SPELLING);
        put(variants, unqualified(plain) + nano, NameBook.How.QUALIFIER);
        Matcher each = BRACKET.matcher(plain);
        while (each.find()) {
            String rest = plain.substring(0, each.start()) + " " + plain.substring(each.end());
            put(variants, unqualified(tidy(rest)) + nano, NameBook.How.BRACKET);
        }
        String outside = unqualified(withoutBrackets());
        put(variants, outside + nano, NameBook.How.BRACKET);
        if (!nano.isEmpty()) {
            put(variants, outside, NameBook.How.NANO);
        }
        Matcher inside = BRACKET.matcher(plain);
        while (inside.find()) {
            put(variants, tidy(inside.group(1)) + nano, NameBook.How.BRACKET);
        }
        return variants;
    }

    private static void put(Map<String, NameBook.How> variants, String name, NameBook.How how) {
        if (!name.isEmpty() && !name.equals(NANO)) {
            variants.putIfAbsent(name, how);
        }
    }

    /**
     * A preparation of a plant.
     *
     * @param plant the plant, genus and species or a common name
     * @param parts the parts it is made of; none if the name does not say
     * @param forms what it is: {@code OIL}, {@code EXTRACT}, or another that is one of them too
     */
    record Preparation(String plant, List<String> parts, List<String> forms) {

        /** The names without a part, one for each form. */
        List<String> withoutPart() {
            return forms.stream().map(form -> plant + " " + form).toList();
        }

        /** The names with the part, one for each form. */
        List<String> withPart() {
            String middle = parts.isEmpty() ? " " : " " + String.join(" ", parts) + " ";
            return forms.stream().map(form -> plant + middle + form).toList();
        }
    }

    /** What a name in normal form says of a plant; null if it is no preparation of one. */
    static @Nullable Preparation preparation(String name) {
        String[] words = name.toUpperCase(Locale.ROOT).split(" ", -1);
        List<String> forms = FORMS.get(words[words.length - 1]);
        int end = words.length - 1;
        if (forms == null) {
            return null;
        }
        while (end > 0 && isPart(words[end - 1])) {
            end--;
        }
        return end == 0
                ? null
                : new Preparation(
                        String.join(" ", List.of(words).subList(0, end)),
                        List.of(words).subList(end, words.length - 1),
                        forms);
    }

    private static boolean isPart(String word) {
        for (String one : word.split("/", -1)) {
            if (!PLANT_PARTS.contains(one)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WrittenName that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return text;
    }
}
