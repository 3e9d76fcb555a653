package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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

    private static final Pattern NOT_NANO = Pattern.compile("[(\\[]?(?:NON?[- ]?NANO|NANO[- ]FREE)[)\\]]?");
    private static final Pattern NANO_MARK = Pattern.compile(
            "[(\\[](?:NANO(?:[- ](?:FORM|SIZED?|PARTICLES?|MATERIAL|GRADE))?|NANOPARTICLES?|NANOMATERIAL)[)\\]]|^NANO[- ]|[ ,-]NANO$|(?<=[\\])])NANO$"
                    + "| NANO(?:PARTICLES?|MATERIAL)$");
    private static final Pattern JOINED =
            Pattern.compile("\\((?:AND|&|UND|ET|Y)\\)|\\[(?:AND|&|UND|ET)]| (?:AND|UND|&|\\+) |;");
    private static final Pattern LISTED = Pattern.compile("(?<=[A-Z)]),(?=[A-Z(])");
    /** Not in the names of polymers and of esters with several acids. */
    private static final Pattern SLASHED = Pattern.compile("(?<=[A-Z)])/(?=[A-Z(])|(?<=[A-Z)])\\+(?=[A-Z(])");

    private static final Pattern ONE_MATTER =
            Pattern.compile("POLYMER|RESIN|ESTERS?|COMPLEX|FERMENT|/(?:OIL|EXTRACT)|TRIGLYCERIDE|PROTEIN");
    private static final Pattern LEADING =
            Pattern.compile("^(?:AND|MIX(?:TURE)? OF|BLEND OF|MISCHUNG AUS|MELANGE DE) ");
    private static final Pattern RAISED = Pattern.compile("[\u00b9\u00b2\u00b3\u2070-\u2079\u2122\u2120\u00ae]+");
    private static final Pattern COLOUR_INDEX =
            Pattern.compile("(?:C\\.?I\\.?|COLOU?R INDEX)[ -]?(?:NO\\.? ?)?([0-9]{5})(?: ?:[0-9])?");

    /** Forms of one preparation: an absolute is an extract, and so are a concrete and a resinoid. */
    private static final Map<String, List<String>> FORMS = Map.of(
            "OIL", List.of("OIL"),
            "EXTRACT", List.of("EXTRACT"),
            "OIL/EXTRACT", List.of("OIL", "EXTRACT"),
            "ABSOLUTE", List.of("ABSOLUTE", "EXTRACT"),
            "CONCRETE", List.of("CONCRETE", "EXTRACT"),
            "RESINOID", List.of("RESINOID", "EXTRACT"));

    private static final Set<String> PLANT_PARTS = Set.of(
            "LEAF", "LEAVES", "FLOWER", "FLOWERS", "PEEL", "RIND", "BARK", "WOOD", "ROOT", "RHIZOME", "SEED", "FRUIT",
            "STEM", "HERB", "TWIG", "NEEDLE", "BUD", "RESIN", "GUM", "BALSAM", "BERRY", "BRANCH", "CONE", "LICHEN",
            "KERNEL", "NUT", "TOP", "TOPS");

    /** Parts whose pressed oils are fats; what smells comes from elsewhere. */
    private static final Set<String> FATTY_PARTS = Set.of("SEED", "KERNEL", "NUT", "GERM", "BRAN", "FRUIT");

    private static final Pattern PERFUME = Pattern.compile(
            "(?:PARFUM|PERFUME|FRAGRANCE|AROMA|FLAVOU?R|DUFTSTOFFE?|DUFTOL|PARFUMOL|PARFÜM|PARFÜMÖL)(?: .*|/.*)?|.* (?:PERFUME|FRAGRANCE|PARFUM|FLAVOU?R)"
                    + "|.*(?: ABSOLUTE| RESINOID|ESSENTIAL OIL|VOLATILE OIL)");

    private static final String WORDS = "SULPH=SULF ALUMINIUM=ALUMINUM CAESIUM=CESIUM COLOUR=COLOR";
    private static final Map<String, String> SPELLINGS = spellings(WORDS);
    private static final Map<String, String> GREEK = spellings(
            "\u0391=ALPHA \u0392=BETA \u0393=GAMMA \u0394=DELTA \u0395=EPSILON \u03a9=OMEGA \u039c=MU " + WORDS);

    private final String text;
    private final String normal;
    /** In normal form without footnotes and trade marks. */
    private final String marked;

    private WrittenName(String text) {
        this.text = text;
        this.normal = SubstanceName.normalise(text);
        Matcher raised = RAISED.matcher(text);
        String unmarked = raised.find() ? SubstanceName.normalise(raised.replaceAll(" ")) : normal;
        this.marked = unmarked.isEmpty() ? normal : unmarked;
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

    private static Map<String, String> spellings(String pairs) {
        Map<String, String> spellings = new LinkedHashMap<>();
        for (String pair : pairs.split(" ", -1)) {
            String[] sides = pair.split("=", -1);
            spellings.put(sides[0], sides[1]);
        }
        return spellings;
    }

    /**
     * The form in which spellings of one name agree that {@link SubstanceName} keeps apart: sulphide and sulfide, aluminium
     * and aluminum, Greek letters and their names, and spaces, hyphens and apostrophes anywhere. Only for a search: what is
     * found by it is told.
     *
     * @param name a name in any spelling
     * @return the form, in capital letters
     */
    public static String looseKey(String name) {
        return looseKeyOf(SubstanceName.normalise(name));
    }

    /** The same of a name in normal form. */
    static String looseKeyOf(String normal) {
        StringBuilder kept = new StringBuilder(normal.length());
        boolean greek = false;
        for (int i = 0; i < normal.length(); i++) {
            char c = normal.charAt(i);
            if (c != ' ' && c != '-' && c != '\'' && c != '.') {
                kept.append(c);
                greek |= c >= '\u0391' && c <= '\u03a9';
            }
        }
        String loose = kept.toString();
        for (Map.Entry<String, String> spelling : (greek ? GREEK : SPELLINGS).entrySet()) {
            if (loose.contains(spelling.getKey())) {
                loose = loose.replace(spelling.getKey(), spelling.getValue());
            }
        }
        return loose;
    }

    /**
     * The names of a blend that is written as one name.
     *
     * @return the names parted at "(and)", "and", {@code &} and the like, in their order, as written; one name if it is no blend
     */
    public List<String> parts() {
        List<String> parts = new ArrayList<>();
        for (String part : JOINED.split(marked, -1)) {
            if (!part.isBlank()) {
                parts.add(part.strip());
            }
        }
        return parts.size() > 1 ? parts.stream().flatMap(WrittenName::listed).toList() : List.of(text);
    }

    private static Stream<String> listed(String part) {
        return LISTED.splitAsStream(part)
                .map(one -> LEADING.matcher(one.strip()).replaceAll(""))
                .filter(one -> !one.isBlank());
    }

    /** The names of a list parted by commas, strokes or plus signs; a comma beside a digit is part of a chemical name. */
    List<String> listed() {
        List<String> listed = listed(marked).toList();
        return listed.size() > 1 || ONE_MATTER.matcher(marked).find()
                ? listed
                : SLASHED.splitAsStream(marked)
                        .map(String::strip)
                        .filter(one -> !one.isEmpty())
                        .toList();
    }

    /**
     * Whether the name is that of a preparation of a plant: an oil, an extract, an absolute.
     *
     * @return true if it ends like one
     */
    public boolean isPreparation() {
        return preparation(plainest()) != null;
    }

    /**
     * Whether the name bears a mark for nanomaterials, in round or square brackets, before or after it.
     *
     * @return false for "non-nano"
     */
    public boolean isNano() {
        return marked.contains("NANO")
                && !NOT_NANO.matcher(marked).find()
                && NANO_MARK.matcher(marked).find();
    }

    /**
     * The name without a mark for nanomaterials, in normal form.
     *
     * @return the name of the substance
     */
    public String withoutNano() {
        return marked.contains("NANO")
                ? tidy(NANO_MARK
                        .matcher(NOT_NANO.matcher(marked).replaceAll(" "))
                        .replaceAll(" "))
                : marked;
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
        String plain = NameVariants.withoutBrackets(withoutNano());
        if (PERFUME.matcher(plain).matches()) {
            return true;
        }
        String name = plainest();
        return CommonNames.isNamedOil(name) || isOfSmellingPlant(name);
    }

    private static boolean isOfSmellingPlant(String name) {
        Preparation made = preparation(name);
        if (made == null || made.forms().equals(List.of("EXTRACT"))) {
            return false;
        }
        boolean fatty = made.parts().stream().anyMatch(FATTY_PARTS::contains);
        if (CommonNames.isMaceratedGenus(name)) {
            return false;
        }
        return CommonNames.isAromaticGenus(name)
                ? !fatty || !made.parts().contains("SEED")
                : !fatty && !made.parts().isEmpty();
    }

    /**
     * Whether the name is that of an oil or another aromatic preparation of a plant which is no pressed fat as far as the name
     * tells: no oil of seeds, kernels, nuts or fruits.
     *
     * @return true for "Lavandula Angustifolia Oil" and "Citrus Limon Peel Oil"
     */
    public boolean isVolatileOil() {
        Preparation made = preparation(plainest());
        return made != null
                && (made.forms().contains("OIL") || made.forms().size() > 1)
                && made.parts().stream().noneMatch(FATTY_PARTS::contains);
    }

    /** Without brackets and words that tell no other substance. */
    private String plainest() {
        return NameVariants.unqualified(NameVariants.withoutBrackets(withoutNano()));
    }

    static String tidy(String name) {
        int from = 0;
        int to = name.length();
        while (from < to && " ,;".indexOf(name.charAt(from)) >= 0) {
            from++;
        }
        while (to > from && " ,;".indexOf(name.charAt(to - 1)) >= 0) {
            to--;
        }
        return SubstanceName.normalise(name.substring(from, to));
    }

    String normal() {
        return normal;
    }

    /** Names that may be meant, the surest first; each with what was done to come to it. */
    Map<String, NameBook.How> variants() {
        return NameVariants.of(normal, withoutNano(), isNano());
    }

    /**
     * The names that may be meant by this one, the surest first: those that {@link NameBook} looks for, what they are in
     * English, and what a common name stands for if it is one thing. The name itself is not among them.
     *
     * @return an unmodifiable map, from the names in normal form to what was done to come to them
     */
    public Map<String, NameBook.How> readings() {
        Map<String, NameBook.How> variants = variants();
        Map<String, NameBook.How> readings = new LinkedHashMap<>(variants);
        for (String variant : variants.keySet()) {
            String english = CommonNames.inEnglish(variant);
            readings.putIfAbsent(english, NameBook.How.COMMON_NAME);
            for (String name : List.of(variant, english)) {
                List<String> meant = CommonNames.meantBy(name);
                if (meant.size() == 1) {
                    readings.putIfAbsent(meant.get(0), NameBook.How.COMMON_NAME);
                }
            }
        }
        readings.remove(normal);
        return Collections.unmodifiableMap(readings);
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
            return named(plant.concat(" "));
        }

        /** The same preparation, part and all, of another plant. */
        List<String> ending(String other) {
            return new Preparation(other, parts, forms).withPart();
        }

        /** The names with the part, one for each form. */
        List<String> withPart() {
            StringBuilder beginning = new StringBuilder(plant).append(' ');
            parts.forEach(part -> beginning.append(part).append(' '));
            return named(beginning.toString());
        }

        private List<String> named(String beginning) {
            List<String> names = new ArrayList<>(forms.size());
            for (String form : forms) {
                names.add(beginning.concat(form));
            }
            return names;
        }
    }

    /** What a name in normal form says of a plant; null if it is no preparation of one. */
    static @Nullable Preparation preparation(String name) {
        List<String> forms = FORMS.get(name.substring(name.lastIndexOf(' ') + 1));
        if (forms == null) {
            return null;
        }
        String[] words = name.split(" ", -1);
        int end = words.length - 1;
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
        if (word.indexOf('/') < 0) {
            return PLANT_PARTS.contains(word);
        }
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
