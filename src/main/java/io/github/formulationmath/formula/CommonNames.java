package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What common names in English, German and French stand for, abbreviations, and older botanical names. Common trade knowledge
 * without a published source: whoever takes a name for another because of it says so ({@link NameBook.How#COMMON_NAME}).
 */
final class CommonNames {

    /** Names of one plant, the one that the annexes use last. */
    private static final Map<String, String> PLANTS = Map.ofEntries(
            Map.entry("SYZYGIUM AROMATICUM", "EUGENIA CARYOPHYLLUS"),
            Map.entry("EUGENIA CARYOPHYLLATA", "EUGENIA CARYOPHYLLUS"),
            Map.entry("CITRUS SINENSIS", "CITRUS AURANTIUM DULCIS"),
            Map.entry("CITRUS DULCIS", "CITRUS AURANTIUM DULCIS"),
            Map.entry("CITRUS BERGAMIA", "CITRUS AURANTIUM BERGAMIA"),
            Map.entry("CITRUS AMARA", "CITRUS AURANTIUM AMARA"),
            Map.entry("CITRUS MEDICA LIMONUM", "CITRUS LIMON"),
            Map.entry("CITRUS LIMONUM", "CITRUS LIMON"),
            Map.entry("CINNAMOMUM VERUM", "CINNAMOMUM ZEYLANICUM"),
            Map.entry("CINNAMOMUM AROMATICUM", "CINNAMOMUM CASSIA"),
            Map.entry("LAVANDULA OFFICINALIS", "LAVANDULA ANGUSTIFOLIA"),
            Map.entry("LAVANDULA VERA", "LAVANDULA ANGUSTIFOLIA"),
            Map.entry("MENTHA SPICATA", "MENTHA VIRIDIS"),
            Map.entry("ALOYSIA CITRODORA", "LIPPIA CITRIODORA"),
            Map.entry("ALOYSIA CITRIODORA", "LIPPIA CITRIODORA"),
            Map.entry("ALOYSIA TRIPHYLLA", "LIPPIA CITRIODORA"),
            Map.entry("PSEUDEVERNIA FURFURACEA", "EVERNIA FURFURACEA"),
            Map.entry("MYROXYLON BALSAMUM VAR. PEREIRAE", "MYROXYLON PEREIRAE"));

    /** Plants whose oils are volatile, and that the annexes do not name: only that they smell is of interest. */
    private static final Set<String> SMELLING = keys(
            "TEA TREE, ROSEMARY, WINTERGREEN, VETIVER, PETITGRAIN, GRAPEFRUIT, MANDARIN, TANGERINE, CLEMENTINE, LIME, SAGE, CLARY SAGE,"
                    + " CHAMOMILE, ROMAN CHAMOMILE, GERMAN CHAMOMILE, BLUE CHAMOMILE, THYME, OREGANO, MARJORAM, BASIL, FRANKINCENSE,"
                    + " MYRRH, GINGER, JUNIPER, JUNIPER BERRY, PINE, SCOTS PINE, FIR, FIR NEEDLE, SPRUCE, CYPRESS, FENNEL, ANISE, ANISEED,"
                    + " STAR ANISE, BAY, NUTMEG, CARDAMOM, CORIANDER, MAY CHANG, LITSEA, VERBENA, LEMON VERBENA, MELISSA, HELICHRYSUM,"
                    + " IMMORTELLE, AMYRIS, ROSEWOOD, PALMAROSA, CITRONELLA, CAJEPUT, NIAOULI, MANUKA, RAVINTSARA, HO WOOD, YARROW,"
                    + " HYSSOP, ELEMI, BENZOIN, LABDANUM, SPIKE LAVENDER, YUZU, BLACK PEPPER, CARROT SEED, DILL, CARAWAY, CELERY,"
                    + " TEEBAUM, ROSMARIN, WINTERGRUN, MANDARINEN, LIMETTEN, SALBEI, MUSKATELLERSALBEI, KAMILLEN, KAMILLE, THYMIAN,"
                    + " MAJORAN, BASILIKUM, WEIHRAUCH, MYRRHE, MYRRHEN, INGWER, WACHOLDER, WACHOLDERBEER, KIEFERN, KIEFERNNADEL,"
                    + " LATSCHENKIEFERN, FICHTENNADEL, ZYPRESSEN, FENCHEL, ANIS, STERNANIS, MUSKAT, KARDAMOM, KORIANDER, MELISSEN,"
                    + " ARBRE A THE, TEA TREE, ROMARIN, SAUGE, CAMOMILLE, THYM, ENCENS, PAMPLEMOUSSE, GENEVRIER, CYPRES");

    /** Genera of plants whose oils are volatile, unless they are pressed from seeds. */
    private static final Set<String> GENERA = Set.of(
            ("LAVANDULA MENTHA CITRUS PELARGONIUM POGOSTEMON SANTALUM CANANGA EUCALYPTUS EUGENIA SYZYGIUM CINNAMOMUM CYMBOPOGON"
                            + " JUNIPERUS CEDRUS LAURUS JASMINUM MYROXYLON CUMINUM MELALEUCA ROSMARINUS SALVIA THYMUS ORIGANUM OCIMUM"
                            + " VETIVERIA CHRYSOPOGON BOSWELLIA COMMIPHORA ZINGIBER PINUS ABIES PICEA CUPRESSUS FOENICULUM PIMPINELLA"
                            + " ILLICIUM ANTHEMIS CHAMOMILLA MATRICARIA CHAMAEMELUM GAULTHERIA PIMENTA MYRISTICA ELETTARIA CORIANDRUM"
                            + " LITSEA LIPPIA ALOYSIA MELISSA ARTEMISIA HELICHRYSUM CISTUS AMYRIS ANIBA ACHILLEA HYSSOPUS SATUREJA"
                            + " LEPTOSPERMUM RAVENSARA CANARIUM LIQUIDAMBAR OPOPANAX BACKHOUSIA TAGETES PIPER")
                    .split(" ", -1));

    private static final Set<String> NOT_VOLATILE = Set.of(
            "SEED",
            "KERNEL",
            "HIP",
            "HIPS",
            "INFUSED",
            "MACERATED",
            "MACERATE",
            "HYDROSOL",
            "HYDROLAT",
            "WATER",
            "HYDROLATE");

    /** Genera whose oils are macerates in fat, whatever the part. */
    private static final Set<String> MACERATED =
            Set.of("CALENDULA", "HYPERICUM", "ARNICA", "SYMPHYTUM", "PLANTAGO", "BELLIS");

    private static final List<String> BEFORE = List.of(
            "HUILEESSENTIELLEDELA",
            "HUILEESSENTIELLEDE",
            "HUILEESSENTIELLED",
            "HUILEESSENTIELLE",
            "HUILEDE",
            "HUILED",
            "HEDE",
            "HED",
            "HE",
            "ESSENCEDE",
            "ABSOLUEDE",
            "OILOF",
            "ATHERISCHES",
            "ATHEROL");

    private static final List<String> BEHIND =
            List.of("ESSENTIALOIL", "OIL", "ATHERISCHESOL", "OL", "OEL", "EO", "ABSOLUTE", "ABSOLUE");

    private static final Pattern JOINTS = Pattern.compile("[ ,-]+");
    private static final Map<String, List<String>> PLANT_NAMES = read(CommonNameLists.OILS);
    private static final Map<String, List<String>> CHEMICAL_NAMES =
            read(CommonNameLists.CHEMICALS + CommonNameLists.OF_ANNEXES);
    private static final Map<String, List<String>> HINTED = read(CommonNameLists.HINTS);
    private static final Map<Pattern, String> TRANSLATIONS = translations();

    private CommonNames() {}

    private static Map<String, List<String>> read(String lines) {
        Map<String, List<String>> meant = new HashMap<>();
        for (String line : lines.strip().split("\n", -1)) {
            int sign = line.indexOf(" = ");
            String meaning = line.substring(0, sign).strip();
            for (String name : listed(line.substring(sign + " = ".length()).strip())) {
                List<String> all = meant.computeIfAbsent(WrittenName.looseKeyOf(name), k -> new ArrayList<>(1));
                if (!all.contains(meaning)) {
                    all.add(meaning);
                }
            }
        }
        return meant;
    }

    /** Names parted by a comma and a space; a comma alone is part of a name. */
    private static List<String> listed(String names) {
        List<String> all = new ArrayList<>();
        int from = 0;
        for (int to = names.indexOf(", "); to >= 0; to = names.indexOf(", ", from)) {
            all.add(names.substring(from, to));
            from = to + ", ".length();
        }
        all.add(names.substring(from));
        return all;
    }

    private static Set<String> keys(String names) {
        Set<String> all = new HashSet<>();
        for (String name : listed(names)) {
            all.add(WrittenName.looseKeyOf(name));
        }
        return Set.copyOf(all);
    }

    /** German and French into English, in this order; what comes out is looked for, nothing else. */
    private static Map<Pattern, String> translations() {
        Map<Pattern, String> all = new LinkedHashMap<>();
        String lines = """
                ^ACIDE (.*)IQUE$ -> $1IC ACID
                ^ALCOOL (.*YL)IQUE$ -> $1 ALCOHOL
                ^(CHLORURE|BROMURE|SULFURE|[A-Z]*OXYDE|[A-Z]*ATE|[A-Z]*ITE) (?:DE |D')(.*)$ -> $2 $1
                YLE(?= |$) -> YL
                (CHLOR|BROM|SULF)URE$ -> $1IDE
                OXYDE$ -> OXIDE
                ^NATRIUM -> SODIUM
                ^KALIUM -> POTASSIUM
                ^ZINK -> ZINC
                WASSERSTOFF -> HYDROGEN
                HARNSTOFF$ -> UREA
                SAURE$ -> IC ACID
                ALKOHOL$ -> ALCOHOL
                ALDEHYD$ -> ALDEHYDE
                ([AI])T$ -> $1TE
                (?<!AC)ID$ -> IDE
                AMIN$ -> AMINE
                NITRIL$ -> NITRILE
                (IS|AS)ON$ -> $1ONE
                (NON|ENON|RON|TON)(?=$|-) -> $1E
                (LEN|NEN)$ -> $1E
                PARABENE?$ -> PARABEN
                """;
        for (String line : lines.strip().split("\n", -1)) {
            String[] sides = line.strip().split(" -> ", -1);
            all.put(Pattern.compile(sides[0]), sides[1]);
        }
        return all;
    }

    /** What a name stands for; several names if it stands for several. */
    static List<String> meantBy(String normal) {
        String key = key(normal);
        List<String> chemicals = CHEMICAL_NAMES.getOrDefault(key, List.of());
        return chemicals.isEmpty() ? List.copyOf(all(PLANT_NAMES, plants(key))) : chemicals;
    }

    /** What a name may stand for: the plant alone, an abbreviation of several things, a common name among other words. */
    static Set<String> of(String normal) {
        String key = key(normal);
        Set<String> plants = plants(key);
        Set<String> found = new LinkedHashSet<>(CHEMICAL_NAMES.getOrDefault(key, List.of()));
        found.addAll(HINTED.getOrDefault(key, List.of()));
        found.addAll(PLANT_NAMES.getOrDefault(key, List.of()));
        found.addAll(all(PLANT_NAMES, plants));
        found.addAll(all(HINTED, plants));
        if (found.isEmpty() && !plants.isEmpty()) {
            found.addAll(within(normal));
        }
        return found;
    }

    /** Whether it is the common name of a volatile oil, said to be one. */
    static boolean isNamedOil(String normal) {
        Set<String> plants = plants(key(normal));
        return !plants.isEmpty()
                && plants.stream().anyMatch(plant -> PLANT_NAMES.containsKey(plant) || SMELLING.contains(plant));
    }

    /** Whether it begins with the name of a plant whose oils are volatile. */
    static boolean isAromaticGenus(String normal) {
        return GENERA.contains(genus(normal));
    }

    /** Whether it begins with the name of a plant whose oils are macerates. */
    static boolean isMaceratedGenus(String normal) {
        return MACERATED.contains(genus(normal));
    }

    private static String genus(String normal) {
        int end = normal.indexOf(' ');
        return end > 0 ? normal.substring(0, end) : "";
    }

    private static Set<String> all(Map<String, List<String>> names, Set<String> keys) {
        Set<String> found = new LinkedHashSet<>();
        keys.forEach(key -> found.addAll(names.getOrDefault(key, List.of())));
        return found;
    }

    /** What is left of a loose key when a word for oil is taken from its beginning or its end; none if it has no such word. */
    static Set<String> plants(String key) {
        Set<String> left = new LinkedHashSet<>();
        for (String word : BEFORE) {
            if (key.startsWith(word)) {
                left.add(key.substring(word.length()));
            }
        }
        for (String word : BEHIND) {
            if (key.endsWith(word)) {
                left.add(key.substring(0, key.length() - word.length()));
            }
        }
        if (!left.isEmpty()) {
            for (String word : List.copyOf(left)) {
                BEHIND.stream()
                        .filter(word::endsWith)
                        .forEach(end -> left.add(word.substring(0, word.length() - end.length())));
            }
        }
        return left;
    }

    /** Common names that stand among other words: lavender in "spike lavender oil". */
    private static Set<String> within(String normal) {
        List<String> words = List.of(JOINTS.split(withoutAccents(normal), -1));
        Set<String> found = new LinkedHashSet<>();
        if (!Collections.disjoint(words, NOT_VOLATILE)) {
            return found;
        }
        for (int length = Math.min(words.size() - 1, 3); length > 0 && found.isEmpty(); length--) {
            for (int from = 0; from + length <= words.size(); from++) {
                String some = WrittenName.looseKey(String.join("", words.subList(from, from + length)));
                found.addAll(PLANT_NAMES.getOrDefault(some, List.of()));
            }
        }
        return found;
    }

    static String key(String normal) {
        return WrittenName.looseKeyOf(withoutAccents(normal));
    }

    private static String withoutAccents(String text) {
        return SubstanceName.withoutAccents(text);
    }

    /** A chemical name with its German or French words put into English, and without accents. */
    static String inEnglish(String normal) {
        String plain = withoutAccents(normal);
        String english = plain;
        for (Map.Entry<Pattern, String> word : TRANSLATIONS.entrySet()) {
            Matcher found = word.getKey().matcher(english);
            english = found.find() ? found.replaceAll(word.getValue()) : english;
        }
        return english;
    }

    /** The same preparation under the name that the annexes use for the plant; the name itself if it is no such plant. */
    static String underAcceptedName(String normal) {
        for (Map.Entry<String, String> plant : PLANTS.entrySet()) {
            if (normal.startsWith(plant.getKey() + " ")) {
                return plant.getValue() + normal.substring(plant.getKey().length());
            }
        }
        return normal;
    }

    /** Every name that another is said to stand for, so that a test can look for slips of the pen. */
    static Set<String> targets() {
        Set<String> all = new HashSet<>();
        for (Map<String, List<String>> names : List.of(PLANT_NAMES, CHEMICAL_NAMES)) {
            names.values().forEach(all::addAll);
        }
        return all;
    }
}
