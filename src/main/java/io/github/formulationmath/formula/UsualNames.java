package io.github.formulationmath.formula;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Names of usual materials that are spelt like a name of the annexes and are something else: no slip of the pen. */
final class UsualNames {

    private static final Set<String> NAMES = Stream.of(
                    "ASCORBIC ACID",
                    "CETYL ALCOHOL",
                    "CITRUS AURANTIUM DULCIS FLOWER WATER",
                    "COCAMIDE MEA",
                    "COCAMIDE MIPA",
                    "ETHANOL",
                    "HYDROLYZED COLLAGEN",
                    "MAGNESIUM SULFATE",
                    "MILK",
                    "POLYQUATERNIUM-10",
                    "SERINE",
                    "SODIUM CHLORIDE",
                    "SODIUM CITRATE",
                    "SODIUM SULFATE",
                    "STYRENE/ACRYLATES COPOLYMER")
            .map(WrittenName::looseKey)
            .collect(Collectors.toUnmodifiableSet());

    private UsualNames() {}

    static boolean isOne(String normal) {
        return NAMES.contains(WrittenName.looseKey(normal));
    }
}
