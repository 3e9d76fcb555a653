package io.github.formulationmath.architecture;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A sign that an idea is said somewhere else than at its home.
 *
 * @param idea the idea, one of fifteen
 * @param name what the second home would hold
 * @param isInTexts whether the sign is looked for between quotes alone, text blocks among them
 * @param sign how it is recognised in source text without comments
 * @param home the files, as {@code room/Type.java}, where it belongs
 * @param planted pieces that are second homes, as somebody in a hurry would write them, to show that each would be found
 */
record SecondHome(String idea, String name, boolean isInTexts, Pattern sign, Pattern home, List<String> planted) {

    static final String NOWHERE = "(?!)";

    static SecondHome of(String idea, String name, String sign, String home, String... planted) {
        return new SecondHome(idea, name, false, Pattern.compile(sign), Pattern.compile(home), List.of(planted));
    }

    static SecondHome inTexts(String idea, String name, String sign, String home, String... planted) {
        return new SecondHome(idea, name, true, Pattern.compile(sign), Pattern.compile(home), List.of(planted));
    }

    String ratchet() {
        return "second home: " + name;
    }

    /** The files that hold the idea outside its home. */
    List<String> in(Map<String, String> code) {
        return code.entrySet().stream()
                .filter(file -> isIn(file.getKey(), file.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    boolean isIn(String file, String code) {
        return !home.matcher(file).find()
                && sign.matcher(isInTexts ? Sources.texts(code) : code).find();
    }
}
