package io.github.formulationmath.falsefine;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;

/**
 * One substance in the many ways in which it is written: letter case, white space, Unicode form, characters that nobody
 * sees, with and without its CAS number, under another name with the same number.
 *
 * @param name the name as written
 * @param cas the number, or nothing
 * @param synonyms other names that are written beside it
 */
record Spelling(String name, String cas, List<String> synonyms) {

    static Spelling of(String name, String cas) {
        return new Spelling(name, cas, List.of());
    }

    /** The same substance in some other spelling; {@code other} is a name that nothing else has. */
    static Spelling disguised(Dice dice, String name, String cas, String other) {
        return switch (dice.between(0, cas.isEmpty() ? 2 : 4)) {
            case 0 -> of(name, "");
            case 1 -> of(mask(dice, name), "");
            case 2 -> new Spelling(other, "", List.of(mask(dice, name)));
            case 3 -> of(mask(dice, name), cas);
            default -> of(other, cas);
        };
    }

    /** A name as people, spreadsheets and web pages write it. */
    static String mask(Dice dice, String name) {
        String text = name;
        int changes = dice.between(1, 3);
        for (int i = 0; i < changes; i++) {
            text = switch (dice.between(0, 8)) {
                case 0 -> text.toUpperCase(Locale.ROOT);
                case 1 -> text.toLowerCase(Locale.ROOT);
                case 2 -> text.replaceFirst(" ", "  ");
                case 3 -> text.replaceFirst(" ", "\u00A0");
                case 4 -> text + " ";
                case 5 -> "\u00A0" + text;
                case 6 -> put(dice, text, dice.of("\u200B", "\u200D", "\uFEFF", "\u00AD", "\u2060"));
                case 7 -> Normalizer.normalize(text, Normalizer.Form.NFD);
                default -> text.replaceFirst(" ", dice.of("\u2009", "\u202F", "\t", "\u3000"));
            };
        }
        return text;
    }

    private static String put(Dice dice, String text, String sign) {
        int at = dice.between(1, text.length() - 1);
        return text.substring(0, at) + sign + text.substring(at);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        name.chars()
                .forEach(c -> text.append(c >= ' ' && c < 127 ? (char) c + "" : "<" + Integer.toHexString(c) + ">"));
        return text + (cas.isEmpty() ? "" : " (" + cas + ")") + (synonyms.isEmpty() ? "" : " = " + synonyms);
    }
}
