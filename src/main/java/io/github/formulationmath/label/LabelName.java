package io.github.formulationmath.label;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.WrittenName;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * How names are printed in one list: colorants by their colour index number, "(nano)" behind nanomaterials, and one style of
 * letters. Names that somebody wrote in mixed letters stay as they are; names all in capitals or all in small letters, as
 * tables have them, take the style of the rest.
 *
 * @param capitals whether everything is printed in capitals
 */
record LabelName(boolean capitals) {

    /** Short forms that stay in capitals among other words. */
    private static final Set<String> SHORT_FORMS = Set.of(
            "BHT", "BHA", "PEG", "PPG", "PVP", "PCA", "EDTA", "TEA", "MEA", "DEA", "CI", "HCL", "MIPA", "TIPA", "AMP",
            "HC", "VP", "VA", "PABA", "DMDM", "DNA", "RNA", "PG", "SD", "AHTN", "MDM", "TBHQ", "DMAPA", "HDI", "IPDI",
            "SMDI", "PTFE", "NO", "II", "III");

    /** The style of a formula: capitals if all its names are written so. */
    static LabelName of(Formula formula, boolean capitals) {
        boolean allCapitals = formula.lines().stream()
                .flatMap(line -> line.ingredient().parts().keySet().stream())
                .allMatch(substance -> isCapitals(substance.name()));
        return new LabelName(capitals || allCapitals);
    }

    private static boolean isCapitals(String name) {
        return name.equals(name.toUpperCase(Locale.ROOT));
    }

    private static boolean isSmall(String name) {
        return name.equals(name.toLowerCase(Locale.ROOT));
    }

    String printed(String name) {
        WrittenName written = WrittenName.of(name);
        String number = written.colourIndex().orElse("");
        if (!number.isEmpty()) {
            return number;
        }
        String plain = written.isNano() ? withoutNano(name) : name;
        String styled =
                capitals ? plain.toUpperCase(Locale.ROOT) : isCapitals(plain) || isSmall(plain) ? titled(plain) : plain;
        return written.isNano() ? styled + " (nano)" : styled;
    }

    private static String withoutNano(String name) {
        return name.replaceAll("(?i)[(\\[]\\s*nano\\s*[)\\]]|^nano[- ]|[ ,-]nano$", " ")
                .strip()
                .replaceAll("\\s+", " ");
    }

    private static String titled(String name) {
        List<String> words = new ArrayList<>();
        for (String word : name.split("(?<=[^\\p{L}\\p{M}\\p{Cf}'])|(?=[^\\p{L}\\p{M}\\p{Cf}'])", -1)) {
            String upper = word.toUpperCase(Locale.ROOT);
            words.add(
                    SHORT_FORMS.contains(upper) || word.isEmpty()
                            ? upper
                            : upper.charAt(0) + word.substring(1).toLowerCase(Locale.ROOT));
        }
        return String.join("", words);
    }
}
