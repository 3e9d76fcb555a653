package io.github.formulationmath.limit;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The words by which a table tells products apart, and the purposes it asks for: what {@link Product#on},
 * {@link Product#ofKind}, {@link Product#inForm}, {@link Product#forUsers} and {@link Product#using} can say that settles
 * anything.
 *
 * <p>A word that is not among them settles nothing: limits that ask for such a word are reported as ones that may apply.
 * The word {@code other} is always among them; it says that the product is none of the things the table names.
 *
 * <p>Example: {@code LimitTable.eu2024February().words().forms()} holds {@code spray} and {@code loose_powder}, and
 * {@code cream}, which is neither.
 *
 * <p>The sets are sorted and unmodifiable.
 *
 * @param areas parts of the body
 * @param kinds kinds of product
 * @param forms forms of product
 * @param purposes what a substance may be used for; empty if the table does not ask
 * @param users who may use a product; the same in every table
 */
public record ProductWords(
        Set<String> areas, Set<String> kinds, Set<String> forms, Set<String> purposes, Set<String> users) {

    /** None of the things a table names. */
    static final String OTHER = "other";

    private static final String MUCOUS = "mucous_membranes";
    private static final String SPRAY = "spray";
    private static final String INHALED = "inhaled";

    private static final Pattern GAP = Pattern.compile("[\\s_-]+");
    private static final int MOST_CLOSE = 5;

    /** What a word also is, directly: a pump spray is a spray. */
    private static final Map<String, List<String>> ALSO = Map.ofEntries(
            also("face", "skin"),
            also("hands", "skin"),
            also("feet", "skin"),
            also("underarms", "skin"),
            also("body", "skin"),
            also("large_area", "body"),
            also("nappy_area", "body"),
            also("lips", MUCOUS),
            also("eyes", MUCOUS),
            also("intimate", MUCOUS),
            also("oral", MUCOUS),
            also("mouth", "oral"),
            also("teeth", "oral"),
            also("propellant_spray", SPRAY),
            also("pump_spray", SPRAY),
            also("aerosol", "propellant_spray"),
            also("loose_powder", "powder"),
            also("pressed_powder", "powder"),
            also(SPRAY, INHALED),
            also("hand_soap", "hand_wash", "soap"),
            also("hand_wash", "hand_soap"),
            also("body_soap", "soap"),
            also("toilet_soap", "soap"),
            also("body_wash", "shower_gel"),
            also("bath_foam", "bath_product"),
            also("bath_salt", "bath_product"),
            also("bath_oil", "bath_product"),
            also("antidandruff_shampoo", "shampoo"),
            also("baby_shampoo", "shampoo"),
            also("mouth_rinse", "mouthwash"),
            also("mouthwash_age_6_to_10", "mouthwash"),
            also("tooth_paste", "toothpaste"),
            also("roll_on_deodorant", "deodorant"),
            also("body_milk", "body_lotion"),
            also("face_makeup_remover", "makeup_remover"),
            also("fine_fragrance", "hydroalcoholic_fragrance"),
            also("eau_de_toilette", "hydroalcoholic_fragrance"),
            also("hydroalcoholic_fragrance", "hydroalcoholic"),
            also("foot_cream", "foot_care"),
            also("bath_bomb", "bath_product"),
            also("foundation", "face_makeup"),
            also("concealer", "face_makeup"),
            also("mascara", "eye_makeup"),
            also("eyeliner", "eye_makeup"),
            also("eye_shadow", "eye_makeup"),
            also("nappy_cream", "nappy_product"),
            also("nappy_balm", "nappy_product"),
            also("diaper_cream", "nappy_product"));

    /** What a word may be as well, although it does not say so: what stands there is never settled by that word. */
    private static final Map<String, Set<String>> MAY_BE = Map.of(
            "loose_powder", Set.of(INHALED),
            "powder", Set.of(INHALED),
            "eyelashes", Set.of("eyes", MUCOUS),
            "hydroalcoholic", Set.of("fine_fragrance", "eau_de_toilette"),
            "body_butter", Set.of("body_lotion", "body_cream"),
            "toner", Set.of("astringent_lotion"),
            "cleanser", Set.of("makeup_remover", "soap", "body_soap"),
            "concealer", Set.of("blemish_concealer"));

    /** Kinds of product that no table names so far, and that are none of those that one names, beside what they may be. */
    private static final Set<String> OTHER_KINDS = Set.of(
            "baby_cream",
            "baby_lotion",
            "baby_oil",
            "baby_powder",
            "baby_wipes",
            "body_butter",
            "body_oil",
            "body_scrub",
            "body_spray",
            "cleanser",
            "conditioner",
            "eye_cream",
            "face_mask",
            "face_mist",
            "face_oil",
            "hair_mask",
            "hand_cream",
            "lip_balm",
            "lip_gloss",
            "massage_oil",
            "nail_polish",
            "serum",
            "shaving_cream",
            "toner");

    /** Everything that a word is, through all steps. */
    private static final Map<String, Set<String>> IMPLIED =
            ALSO.keySet().stream().collect(Collectors.toUnmodifiableMap(word -> word, ProductWords::implied));

    private static final Set<String> SPRAY_PARTS = Set.of("spray", "aerosol", "mist");

    private static Map.Entry<String, List<String>> also(String word, String... more) {
        return Map.entry(word, List.of(more));
    }

    private static final Set<String> AIRBORNE =
            Set.of(SPRAY, "propellant_spray", "pump_spray", "aerosol", "loose_powder", "powder", INHALED);

    /** Forms that are no spray and no powder, whatever else a table may name. */
    private static final Set<String> NOT_AIRBORNE = Set.of(
            "cream",
            "gel",
            "ointment",
            "balm",
            "paste",
            "stick",
            "bar",
            "lotion",
            "emulsion",
            "oil",
            "serum",
            "wax",
            "wipe",
            "pencil",
            "butter",
            "milk",
            "roll_on",
            "pressed_powder");

    /**
     * Sorts and copies.
     *
     * @param areas parts of the body
     * @param kinds kinds of product
     * @param forms forms of product
     * @param purposes purposes of a substance
     * @param users who may use a product
     */
    public ProductWords {
        areas = sorted(Objects.requireNonNull(areas, "areas"));
        kinds = sorted(Objects.requireNonNull(kinds, "kinds"));
        forms = sorted(Objects.requireNonNull(forms, "forms"));
        purposes = sorted(Objects.requireNonNull(purposes, "purposes"));
        users = sorted(Objects.requireNonNull(users, "users"));
    }

    /** A word as it is compared: letter case, spaces and hyphens make no difference. */
    static String term(String word) {
        return GAP.matcher(word.strip().toLowerCase(Locale.ROOT)).replaceAll("_");
    }

    static ProductWords of(List<UsageLimit> limits) {
        return new ProductWords(
                side(limits, Scope::areas),
                kinds(side(limits, Scope::products)),
                side(limits, Scope::forms),
                purposes(limits),
                UserWords.all());
    }

    private static Set<String> kinds(Set<String> named) {
        if (!named.equals(Set.of(OTHER))) {
            named.addAll(OTHER_KINDS);
        }
        return named;
    }

    private static Set<String> side(List<UsageLimit> limits, Function<Scope, Set<String>> terms) {
        Set<String> words = new TreeSet<>();
        for (UsageLimit limit : limits) {
            for (String word : terms.apply(limit.scope())) {
                words.add(word.substring(Scope.prefix(word).length()));
            }
        }
        Set<String> named = Set.copyOf(words);
        for (String word : ALSO.keySet()) {
            if (withImplied(word).anyMatch(named::contains)) {
                words.add(word);
            }
        }
        if (named.stream().anyMatch(AIRBORNE::contains)) {
            words.addAll(NOT_AIRBORNE);
        }
        words.add(OTHER);
        return words;
    }

    private static Set<String> purposes(List<UsageLimit> limits) {
        Set<String> words = new TreeSet<>();
        for (UsageLimit limit : limits) {
            if (!limit.scope().purpose().equals(Scope.ANY)) {
                words.add(limit.scope().purpose());
                words.add(limit.scope().otherPurpose());
            }
        }
        return words;
    }

    private static Set<String> sorted(Set<String> words) {
        return java.util.Collections.unmodifiableSet(new LinkedHashSet<>(new TreeSet<>(words)));
    }

    /** A word with everything else that it is. */
    static Stream<String> withImplied(String word) {
        return IMPLIED.getOrDefault(word, Set.of(word)).stream();
    }

    private static Set<String> implied(String word) {
        Set<String> all = new LinkedHashSet<>(List.of(word));
        Deque<String> left = new ArrayDeque<>(all);
        while (!left.isEmpty()) {
            for (String more : ALSO.getOrDefault(left.remove(), List.of())) {
                if (all.add(more)) {
                    left.add(more);
                }
            }
        }
        return Set.copyOf(all);
    }

    /** Whether a word leaves open that the product is another thing as well. */
    static boolean mayBe(String word, String term) {
        return withImplied(word)
                .anyMatch(part -> MAY_BE.getOrDefault(part, Set.of()).contains(term));
    }

    /** What is stated of the form, and that a kind of product called a spray is one. */
    static Set<String> withFormsFrom(Set<String> kinds, Set<String> forms) {
        boolean sprayed =
                kinds.stream().anyMatch(kind -> Stream.of(kind.split("_", -1)).anyMatch(SPRAY_PARTS::contains));
        return sprayed && forms.stream().noneMatch(AIRBORNE::contains) ? with(forms, SPRAY) : forms;
    }

    /** What is stated of the kind, and that a product for the nappy area is one. */
    static Set<String> withKindsFrom(Set<String> areas, Set<String> kinds) {
        return areas.contains("nappy_area") ? with(kinds, "nappy_product") : kinds;
    }

    private static Set<String> with(Set<String> words, String word) {
        Set<String> more = new LinkedHashSet<>(words);
        more.add(word);
        return more;
    }

    /** Whether a form is surely none of the terms, although no table may name it. */
    static boolean isSurelyNot(String word, String term) {
        return word.equals(OTHER) || NOT_AIRBORNE.contains(word) && AIRBORNE.contains(term);
    }

    /** Whether a word says nothing but that the product is no spray and no powder. */
    static boolean isPlain(String word) {
        return NOT_AIRBORNE.contains(word);
    }

    /** Known words that may be meant by one that is not: spelt alike, of the same letters, or with a part in common. */
    static List<String> close(String word, Collection<String> known) {
        List<String> alike = new KnownNames(known).alike(word, MOST_CLOSE);
        List<String> parts = List.of(word.split("_", -1));
        return alike.isEmpty()
                ? known.stream()
                        .filter(other -> letters(other).equals(letters(word))
                                || Stream.of(other.split("_", -1)).anyMatch(parts::contains))
                        .sorted()
                        .limit(MOST_CLOSE)
                        .toList()
                : alike;
    }

    private static List<Integer> letters(String word) {
        return word.chars().sorted().boxed().toList();
    }
}
