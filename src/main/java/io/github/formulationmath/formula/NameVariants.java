package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a written name may stand for, the surest first; each with what was done to come to it. */
final class NameVariants {

    static final Pattern BRACKET = Pattern.compile("[(\\[]([^()\\[\\]]*)[)\\]]");

    private static final Pattern STRENGTH = Pattern.compile(
            "[ ,(\\[]*(?:MIN\\.? |MAX\\.? |CA\\.? |~|>|<|≥)?[0-9]+(?:[.,][0-9]+)?(?:-[0-9]+(?:[.,][0-9]+)?)? ?%(?: ?(?:W/W|M/M|W/V|V/V|SOLUTION|SOL\\.|AQ\\.))?[)\\]]?");
    private static final Pattern BEFORE = Pattern.compile(
            "^(?:[A-Z][A-Z ]+: ?|(?:CERTIFIED |100 ?% )?(?:ORGANIC|NATURAL|PURE|REFINED|UNREFINED|VIRGIN|WILD|BIO|NAT\\.|COSMETIC|SYNTHETIC|MICRONI[SZ]ED|POWDERED|ANHYDROUS) )");
    private static final Pattern WITHIN = Pattern.compile(
            " (?:ESSENTIAL|VOLATILE|PURE|ORGANIC|CO2)(?= (?:OIL|EXTRACT))| X (?=[A-Z]{3})| [A-Z]{1,6}\\.(?: F\\.)?(?= |$)|\\(L\\.?\\)");
    private static final Pattern BEHIND = Pattern.compile(
            "(?: |,|-)(?:POWDER|(?:UN)?COATED|CRYSTALS?|FLAKES|PEARLS|PRILLS|BEADS|GRANULES|PELLETS|SOLUTION|LIQUID"
                    + "|USP|BP|EP|NF|FCC|PH\\.? ?EUR\\.?|DAB|PURISS\\.?|PHARMA|TECHNICAL|COSMETIC GRADE|FOOD GRADE|PHARMA GRADE|NATURAL|ORGANIC|BIO|FCF"
                    + "|BERGAPTENE? FREE|STEAM DISTILLED|COLD PRESSED|EXPRESSED)$|,(?:FROM|EX|OBTAINED FROM|NATURALLY OCCURRING) ?.*$");
    private static final Pattern MARKS = Pattern.compile("[*®†‡§°]+| ?\\[[0-9]\\]|(?<=[A-Z]) [0-9]$");
    private static final Pattern ISOMER =
            Pattern.compile("^(?:DL|D|L|R|S|RAC)[- ]|,(?:DL|D|L)-$|(?:,| )(?:RACEMIC|ISOMERS?|MIXED ISOMERS)$");
    private static final Pattern OIL = Pattern.compile(" (?:E\\.?O\\.?|OL|OEL|ÖL|ATHERISCHES OL|ÄTHERISCHES ÖL)$");

    /** Words left out of one name. */
    private static final int MOST_WORDS = 4;

    private final Map<String, NameBook.How> found = new LinkedHashMap<>();
    private final String nano;

    private NameVariants(String nano) {
        this.nano = nano;
    }

    /** Of a name in normal form, which may be a nanomaterial or not. */
    static Map<String, NameBook.How> of(String normal, String plain, boolean isNano) {
        NameVariants variants = new NameVariants(isNano ? WrittenName.NANO : "");
        variants.found.put(normal, NameBook.How.SPELLING);
        variants.put(plain, NameBook.How.SPELLING);
        variants.putStages(plain, NameBook.How.QUALIFIER);
        String weak = plain.indexOf('%') < 0 ? plain : STRENGTH.matcher(plain).replaceAll("");
        if (!weak.equals(plain)) {
            variants.putStages(weak, NameBook.How.STRENGTH);
        }
        variants.brackets(weak);
        variants.isomers(weak);
        if (isNano) {
            Map<String, NameBook.How> coarse = of(plain, plain, false);
            coarse.keySet().forEach(name -> variants.found.putIfAbsent(name, NameBook.How.NANO));
        }
        return variants.found;
    }

    private static boolean hasBracket(String name) {
        return name.indexOf('(') >= 0 || name.indexOf('[') >= 0;
    }

    private void brackets(String plain) {
        if (!hasBracket(plain)) {
            return;
        }
        Matcher each = BRACKET.matcher(plain);
        while (each.find()) {
            String rest = plain.substring(0, each.start()) + " " + plain.substring(each.end());
            putStages(rest, NameBook.How.BRACKET);
        }
        putStages(withoutBrackets(plain), NameBook.How.BRACKET);
        String outside = unqualified(withoutBrackets(plain));
        Matcher inside = BRACKET.matcher(plain);
        while (inside.find()) {
            String name = unqualified(inside.group(1));
            put(name, NameBook.How.BRACKET);
            put(unqualified(inside.group(1) + " " + plain.substring(inside.end())), NameBook.How.BRACKET);
            WrittenName.Preparation made = WrittenName.preparation(outside);
            if (made != null) {
                made.ending(name).forEach(one -> put(one, NameBook.How.BRACKET));
            }
        }
    }

    private void isomers(String plain) {
        for (String name : List.of(unqualified(plain), unqualified(withoutBrackets(plain)))) {
            String any =
                    WrittenName.tidy(ISOMER.matcher(name.replaceAll("^-", "")).replaceAll(""));
            if (!any.equals(name)) {
                put(any, NameBook.How.QUALIFIER);
            }
        }
    }

    private void putStages(String name, NameBook.How how) {
        stages(name).forEach(stage -> put(stage, how));
    }

    private void put(String name, NameBook.How how) {
        if (!name.isEmpty()) {
            found.putIfAbsent(name + nano, how);
        }
    }

    static String withoutBrackets(String name) {
        return hasBracket(name) ? WrittenName.tidy(BRACKET.matcher(name).replaceAll(" ")) : name;
    }

    /** Without words that tell no other substance: origin, grade, shape, footnotes, the author of a botanical name. */
    static String unqualified(String name) {
        List<String> stages = stages(name);
        return stages.get(stages.size() - 1);
    }

    /** One word less each; the first with nothing left out. */
    private static List<String> stages(String name) {
        List<String> stages = new ArrayList<>(4);
        stages.add(WrittenName.tidy(name));
        boolean shorter = true;
        for (int i = 0; i < MOST_WORDS && shorter; i++) {
            shorter = without(MARKS, " ", stages);
            shorter |= without(OIL, " OIL", stages);
            shorter |= without(BEFORE, " ", stages);
            shorter |= without(WITHIN, " ", stages);
            shorter |= without(BEHIND, " ", stages);
        }
        return stages;
    }

    private static boolean without(Pattern words, String instead, List<String> stages) {
        String last = stages.get(stages.size() - 1);
        Matcher found = words.matcher(last);
        if (!found.find()) {
            return false;
        }
        String left = WrittenName.tidy(found.replaceAll(instead));
        if (left.isEmpty() || left.equals(last)) {
            return false;
        }
        stages.add(left);
        return true;
    }
}
