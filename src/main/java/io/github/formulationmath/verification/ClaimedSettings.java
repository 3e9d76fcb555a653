package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Balance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.quantity.Mass;

/** What a claim has one of: the name and kind of its formula, its size, its balance, its total. */
final class ClaimedSettings {

    /** A size is given in one of these ways. */
    private static final List<Set<String>> SIZES = List.of(
            Set.of("size mass"),
            Set.of("size packs", "size fill mass", "size overage"),
            Set.of("size volume", "size density"));

    private static final Set<String> KNOWN = known();

    private final Map<String, CsvRow.Field> fields = new LinkedHashMap<>();
    private final CsvRow.Field last;

    ClaimedSettings(CsvRow.Field last) {
        this.last = last;
    }

    private static Set<String> known() {
        Set<String> known =
                new TreeSet<>(Set.of("formula", "formula value", "balance readability", "balance capacity", "total"));
        SIZES.forEach(known::addAll);
        return known;
    }

    void set(CsvRow row, String key, String column) {
        if (fields.putIfAbsent(key, row.field(column)) != null) {
            throw row.field("record").wrong("\"" + key + "\" stands twice: a claim has one; keep one of the two rows");
        }
    }

    Optional<CsvRow.Field> get(String key) {
        return Optional.ofNullable(fields.get(key));
    }

    CsvRow.Field required(String key) {
        return get(key).orElseThrow(() -> last.wrong("the claim ends without a row for \"" + key + "\""));
    }

    /** The place of what the claim as a whole has not. */
    CsvRow.Field last() {
        return last;
    }

    /** Nothing that is not known; and no second size beside the first, which would be silently left aside. */
    void requireWhole() {
        fields.forEach((key, field) -> {
            if (!KNOWN.contains(key)) {
                throw field.wrong("\"" + key + "\" is not known: choose from " + KNOWN);
            }
        });
        List<String> given =
                fields.keySet().stream().filter(key -> key.startsWith("size ")).toList();
        for (String key : given) {
            String first = given.get(0);
            if (SIZES.stream().noneMatch(way -> way.contains(first) && way.contains(key))) {
                throw Objects.requireNonNull(fields.get(key))
                        .wrong("\"" + key + "\" stands beside \"" + first + "\": a size is a mass; or packs, fill mass "
                                + "and, if there is one, overage; or volume and density; keep the rows of one of them");
            }
        }
    }

    Optional<Balance> balance() {
        if (get("balance readability").or(() -> get("balance capacity")).isEmpty()) {
            return Optional.empty();
        }
        String capacity = required("balance capacity").text();
        return Optional.of(required("balance readability").as(d -> Balance.of(d, capacity)));
    }

    BatchSize size() {
        if (get("size mass").isPresent()) {
            return required("size mass").as(text -> BatchSize.ofMass(text));
        }
        if (get("size volume").isPresent()) {
            Density density = required("size density").as(Density::parse);
            return required("size volume").as(text -> BatchSize.ofVolume(Amount.volume(text), density));
        }
        int packs = required("size packs").as(ClaimedSettings::packCount);
        Amount<Mass> fill = required("size fill mass").as(Amount::mass);
        MassFraction extra =
                get("size overage").map(field -> field.as(MassFraction::parse)).orElse(MassFraction.ZERO);
        return required("size packs").as(text -> BatchSize.ofPacks(packs, fill, extra));
    }

    private static int packCount(String text) {
        Ratio packs = Ratio.parse(text);
        if (!packs.isInteger() || packs.abs().compareTo(Ratio.of(Integer.MAX_VALUE)) > 0) {
            throw new IllegalArgumentException(
                    "packs is " + Excerpt.of(text) + ": it must be a whole number that can be counted");
        }
        return packs.numerator().intValueExact();
    }
}
