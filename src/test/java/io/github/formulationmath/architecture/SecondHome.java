package io.github.formulationmath.architecture;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A sign that an idea is said somewhere else than at its home.
 *
 * @param idea the idea, one of fifteen
 * @param name what the second home would hold
 * @param sign how it is recognised in source text without comments
 * @param home the files, as {@code room/Type.java}, where it belongs
 * @param planted a line that is a second home, to show that it would be found
 */
record SecondHome(String idea, String name, Pattern sign, Pattern home, String planted) {

    private static final String NOWHERE = "(?!)";

    private static SecondHome of(String idea, String name, String sign, String home, String planted) {
        return new SecondHome(idea, name, Pattern.compile(sign), Pattern.compile(home), planted);
    }

    /** The signs, at least one for each idea of the house. */
    static List<SecondHome> all() {
        return List.of(
                of("Ratio", "lowest terms", "\\.gcd\\(", "^number/", "BigInteger common = top.gcd(bottom);"),
                of(
                        "Rounding",
                        "digits lost",
                        "\\.setScale\\(|new (java\\.text\\.)?DecimalFormat\\(|Math\\.(round|rint|floor|ceil)\\("
                                + "|\\.divide\\([^()]*RoundingMode",
                        // A place in a sorted list is counted up; the bulk planner proves each of its whole doubles.
                        "^number/|^simulation/(MonteCarlo|SortedTrials)\\.java|^plan/CompiledFormula\\.java",
                        "BigDecimal shown = price.setScale(2, RoundingMode.HALF_UP);"),
                of(
                        "Rounding",
                        "a display's rounding",
                        "HALF_EVEN",
                        // What a learner may mistake is the mode itself.
                        "^number/|^exercise/(Mistake|WorksheetDocument)\\.java",
                        "Rounding r = x.with(HALF_EVEN);"),
                of(
                        "Amount and Share",
                        "percent as text",
                        "\\+ \" ?%\"|NumberText\\.\\w+\\([^;\n]*\"%\"",
                        // The tables of soap hand a text with its unit to a reader; they show none.
                        "^quantity/|/NumberText\\.java|^soap/(AlkaliGradeTable|FatTable)\\.java",
                        "return percent + \" %\";"),
                of(
                        "Amount and Share",
                        "a long number shortened",
                        "\"[^\"\\n]*≈",
                        "^(quantity|document)/|/(NumberText|LocalDigits|Numerals|WorkingDocument)\\.java",
                        "return \"≈ \" + rounded;"),
                of(
                        "Amount and Share",
                        "factors of units",
                        "\\b(28\\.349523125|453\\.59237|0?\\.06479891)\\b",
                        "^quantity/",
                        "Ratio ounce = Ratio.parse(\"28.349523125\");"),
                of(
                        "Relation",
                        "a way to reckon",
                        "implements [\\w<>, ]*\\bReckoning\\b",
                        "^reckoning/|^analysis/Sensitivities\\.java",
                        "final class Counting<V> implements Reckoning<V> {}"),
                of(
                        "Explanation",
                        "a figure told in one method and explained in another",
                        "public (Working|Optional<Working>) \\w+Working\\(",
                        NOWHERE,
                        "public Working headroomWorking() {"),
                of(
                        "Document",
                        "HTML",
                        "\"[^\"\\n]*</?(html|table|tr|td|th|p|div|span|section|math|mrow|body|h[1-6])\\b",
                        "/(Html|MathMl)\\w*\\.java",
                        "out.append(\"<td>\").append(cell);"),
                of(
                        "Document",
                        "LaTeX",
                        "\"[^\"\\n]*\\\\\\\\(begin|text|frac|documentclass|section)\\b",
                        "/Latex\\w*\\.java",
                        "out.append(\"\\\\begin{align*}\");"),
                of(
                        "Document",
                        "characters escaped for HTML",
                        "\"[^\"\\n]*&(amp|lt|gt|quot);",
                        "/(Html\\w*|Escape)\\.java",
                        "text.replace(\"<\", \"&lt;\")"),
                of(
                        "Formula",
                        "an index counted from positions",
                        "position\\(\\) - 1",
                        NOWHERE,
                        "at(line.position() - 1)"),
                of(
                        "Formula",
                        "a line found by name",
                        "\\b(?!\\w*Builder\\b)[A-Z]\\w* line\\(String \\w+(, String \\w+)?\\) \\{",
                        "/Lines\\.java",
                        "public PlannedLine line(String name) {"),
                of(
                        "Substance",
                        "names made alike",
                        "\\bNormalizer\\b|equalsIgnoreCase|toUpperCase\\(",
                        // Digits and units that somebody typed are no names; letters as a label prints them compare
                        // nothing.
                        "/SubstanceName\\.java|^quantity/TypedText\\.java|^verification/Figure\\.java|^label/LabelName\\.java",
                        "if (name.equalsIgnoreCase(other)) {}"),
                of(
                        "Batch",
                        "the mass of a batch or of a line of it",
                        "Symbol\\.of\\([^)]*\"(batch-mass|line-mass)\"",
                        "^batch/",
                        "Symbol MASS = Symbol.of(\"m\", \"line-mass\", Kind.MASS);"),
                of(
                        "Bench",
                        "too heavy or too full",
                        "\"[^\"\\n]*(overloads|overfills)",
                        "/(Overload|Overfill)Exception\\.java",
                        "throw new IllegalStateException(\"the batch overloads the balance\");"),
                of(
                        "Plan",
                        "the largest remainder",
                        "(?<!Apportionment\\.)\\b(byRemainder|largestRemainders?)\\b",
                        "/Apportionment\\.java",
                        "List<Integer> order = byRemainder(remainders);"),
                of(
                        "Weighed",
                        "masses beside a formula",
                        "(?m)^(?!\\s*private ).*\\(\\s*Formula \\w+,\\s*(MadeMasses|List<Amount<Mass>>|Map<FormulaLine, Amount<Mass>>)",
                        NOWHERE,
                        "public LimitReport check(Formula formula, MadeMasses masses) {"),
                of(
                        "Criterion and Sizes",
                        "a criterion parted from its sizes",
                        "\\b(class|interface|record) \\w*Requirement\\b",
                        NOWHERE,
                        "final class CapRequirement {}"),
                of(
                        "Limit and Verdict",
                        "a scale of verdicts",
                        "(?s)\\benum \\w+[^{]*\\{\\s*(@\\w+\\s*)?WITHIN\\b",
                        "/Conformity\\.java",
                        "enum Judgement { WITHIN, OUTSIDE }"),
                of(
                        "Pot, Mending and Record",
                        "conditions of a mending",
                        "\\binterface \\w*Condition\\b",
                        "/Condition\\.java",
                        "interface DisplayCondition {}"),
                of(
                        "Pot, Mending and Record",
                        "a linear program solved",
                        "\\bpivot",
                        "^number/",
                        "void pivot(int row, int column) {}"),
                of(
                        "Pot, Mending and Record",
                        "JSON",
                        "com\\.fasterxml",
                        "/Json\\w*\\.java",
                        "import com.fasterxml.jackson.core.JsonParser;"),
                of(
                        "Pot, Mending and Record",
                        "comma-separated values",
                        "\\.split\\(\"[,;]\"",
                        "^csv/",
                        "String[] cells = line.split(\",\");"));
    }

    String ratchet() {
        return "second home: " + name;
    }

    /** The files that hold the idea outside its home. */
    List<String> in(Map<String, String> code) {
        return code.entrySet().stream()
                .filter(file -> !home.matcher(file.getKey()).find())
                .filter(file -> sign.matcher(file.getValue()).find())
                .map(Map.Entry::getKey)
                .toList();
    }
}
