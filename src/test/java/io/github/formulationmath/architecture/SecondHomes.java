package io.github.formulationmath.architecture;

import static io.github.formulationmath.architecture.SecondHome.NOWHERE;
import static io.github.formulationmath.architecture.SecondHome.inTexts;
import static io.github.formulationmath.architecture.SecondHome.of;

import java.util.ArrayList;
import java.util.List;

/**
 * The signs of second homes, at least one for each idea of the house. The pieces that each must find were written by somebody who
 * played the developer in a hurry: what was not found made the sign sharper.
 */
final class SecondHomes {

    private SecondHomes() {}

    static List<SecondHome> all() {
        List<SecondHome> all = new ArrayList<>();
        all.addAll(numbers());
        all.addAll(things());
        all.addAll(pages());
        all.addAll(formulas());
        all.addAll(bench());
        all.addAll(judgements());
        return List.copyOf(all);
    }

    private static List<SecondHome> numbers() {
        return List.of(
                of(
                        "Ratio",
                        "lowest terms",
                        "[gG][cC][dD]\\b|greatestCommonDivisor|\\brecord \\w+\\((BigInteger|long) \\w+, (BigInteger|long) den\\w*\\)"
                                + "|\\w+ = \\w+ % \\w+;",
                        "^number/",
                        "BigInteger common = top.gcd(bottom);",
                        "private static long gcd(long a, long b) { return b == 0 ? a : gcd(b, a % b); }",
                        "record Fraction(long numerator, long denominator) {}",
                        "while (b != 0) { long t = a % b; a = b; b = t; }"),
                of(
                        "Ratio",
                        "numbers read from text",
                        "new (java\\.math\\.)?BigDecimal\\((?!\\w+\\.(numerator|denominator)\\(\\))|(Double|Float)\\.(parse\\w+|valueOf)\\("
                                + "|\\bNumberFormat\\b|new (java\\.util\\.)?Scanner\\("
                                + "|\\b(Long|Integer)\\.parse\\w+\\(",
                        "^number/"
                                + "|^chemistry/MolecularFormulaText|^csv/CsvRow|^quantity/CompoundUnit|^reckoning/(Superscript|Wording)|^record/BatchCode|^soap/FattyAcid\\.|^verification/Figure\\.java",
                        "Ratio read = Ratio.of(new BigDecimal(text.replace(',', '.')));",
                        "double grams = Double.parseDouble(text.trim());",
                        "Number n = NumberFormat.getInstance(locale).parse(text);",
                        "Ratio half = Ratio.of(Long.parseLong(halves[0]), Long.parseLong(halves[1]));"),
                of(
                        "Ratio",
                        "a pattern for numbers",
                        "Pattern\\.compile\\(\\s*\"[^\"\\n]*(\\[0-9]|\\\\\\\\d)[+*]*[^\"\\n]*(\\\\\\\\\\.|\\[[.,]{1,2}])[^\"\\n]*(\\[0-9]|\\\\\\\\d)",
                        // What a sheet shades, what a claim's figures show of their digits, and a strength within a
                        // name.
                        "^(number|quantity)/|^document/SheetWriter\\.java|^verification/Figure\\.java|^formula/NameVariants\\.java",
                        "static final Pattern NUMBER = Pattern.compile(\"([0-9]+)(\\\\.[0-9]+)?\");",
                        "Pattern decimal = Pattern.compile(\"\\\\d+[.,]\\\\d+\");"),
                of(
                        "Ratio",
                        "an interval that is reckoned with",
                        "(?s)\\b(record|class) \\w+[({][^{}]*\\b(low|lower|least|min|from)\\w*[,;][^{}]*\\b(high|upper|greatest|max|to)\\w*[);]"
                                + "[^{}]*\\{(?:(?!\\b(?:record|class) ).)*?\\b\\w+ (plus|add|minus|times|multiply)\\(\\w+ \\w+\\) \\{"
                                + "|record (\\w+)\\((Ratio|double|BigDecimal) \\w+, \\6 \\w+\\)[^{]*\\{(?:(?!record )[\\s\\S])*?\\b\\5 \\w+\\(\\5 ",
                        // Powers of ten are enclosed in decimals of forty digits, and no sum of them grows.
                        "^number/|^quantity/|^solution/Enclosure\\.java",
                        "record Range(Ratio low, Ratio high) {\n    Range plus(Range other) { return null; } }",
                        "record Span(double min, double max) {\n    Span times(Span other) { return null; } }",
                        "record Ends(Ratio a, Ratio b) { Ends sum(Ends other) { return null; } }"),
                of(
                        "Rounding",
                        "digits lost",
                        "\\.setScale\\(|\\bDecimalFormat\\(|Math\\.(round|rint|floor|ceil)\\(|\\bMathContext\\b"
                                + "|\\.divide\\([^;]*(RoundingMode|HALF_|CEILING|FLOOR)|\\.movePoint(Left|Right)\\("
                                + "|\\((int|long)\\) \\([^;]*\\+ 0?\\.5\\)"
                                + "|Math\\.floor(Div|Mod)\\(|toBigDecimal\\(\\)\\s*\\.(int|long|double)Value|/ 10+\\.0|toString\\(\\)\\.substring\\(",
                        // A place in a sorted list is counted up; the bulk planner proves each of its whole doubles;
                        // what is enclosed is
                        // rounded outwards.
                        "^number/|^simulation/(MonteCarlo|SortedTrials)\\.java|^plan/CompiledFormula\\.java|^solution/Enclosure\\.java"
                                + "|^size/Band\\.java",
                        "BigDecimal shown = price.setScale(2, RoundingMode.HALF_UP);",
                        "BigDecimal share = part.divide(total.max(one), 6, HALF_UP);",
                        "BigDecimal few = exact.round(new MathContext(3));",
                        "long steps = (long) (grams / step + 0.5);",
                        "String text = new DecimalFormat(\"0.00\").format(grams);",
                        "double shown = Math.floorDiv((long) (x * 100), 1) / 100.0;",
                        "int tenths = amount.exactValue().times(10).toBigDecimal().intValue();",
                        "String few = value.toString().substring(0, 6);"),
                of(
                        "Rounding",
                        "digits as text",
                        "\\bString\\.format\\(|\\.formatted\\(|\\bprintf\\(|toPlainString\\(|(Double|Float)\\.toString\\("
                                + "|String\\.valueOf\\([^;]*(doubleValue|toDouble)|new (java\\.util\\.)?Formatter\\(",
                        // The code of a character that cannot be read.
                        "^number/|^quantity/AmountText\\.java",
                        "return String.format(\"%.2f g\", grams);",
                        "return \"%.1f oz\".formatted(ounces);",
                        "return mass.exactValue().toBigDecimal().toPlainString() + \" g\";",
                        "return Double.toString(share);"),
                of(
                        "Rounding",
                        "a display's rounding",
                        "HALF_EVEN" + "|(?i:plus\\((half|Ratio\\.of\\(1, 2\\))\\w*\\))\\s*\\.(floor|toWhole)",
                        // What a learner may mistake is the mode itself.
                        "^number/|^exercise/(Mistake|WorksheetDocument)\\.java",
                        "Rounding r = x.with(HALF_EVEN);",
                        "Amount<Mass> reading = Amount.grams(step.times(target.dividedBy(step).plus(HALF).floor()));"),
                of(
                        "Rounding",
                        "a reading with the zeros of its display",
                        "(?s)toMultipleOf\\([^;]*RoundingMode\\.UNNECESSARY",
                        "^number/|^plan/BalanceUnit\\.java",
                        "return Rounding.toMultipleOf(step.exactValue())\n        .with(RoundingMode.UNNECESSARY).format(reading.exactValue());"));
    }

    private static List<SecondHome> things() {
        return List.of(
                of(
                        "Amount and Share",
                        "percent as text",
                        "\\+ \" ?%|NumberText\\.\\w+\\([^;\n]*\"%\"|append\\(\" ?%|append\\('%'\\)|concat\\(\" ?%",
                        // The tables of soap hand a text with its unit to a reader; they show none.
                        "^quantity/|/NumberText\\.java|^soap/(AlkaliGradeTable|FatTable)\\.java",
                        "return percent + \" %\";",
                        "throw refused(share.times(100) + \" %, more than 100 %\");",
                        "out.append(share.times(100)).append(\" %\");"),
                of(
                        "Amount and Share",
                        "a long number shortened",
                        "\"[^\"\\n]*(≈|\\\\u2248)",
                        "^(quantity|document)/|/(NumberText|LocalDigits|Numerals|WorkingDocument)\\.java",
                        "return \"≈ \" + rounded;",
                        "return \"\\u2248 \" + rounded;"),
                of(
                        "Amount and Share",
                        "factors of units",
                        "(?<![\\d.])(28\\.3[45]\\d*|453\\.5\\d*|0?\\.4535\\d*|0?\\.0283\\d*|0?\\.0648\\d*|29\\.57\\d*|28\\.41\\d*|4\\.928\\d*"
                                + "|14\\.78\\d*|236\\.5\\d*|3\\.785\\d*|35\\.27\\d*|2\\.2046\\d*|273\\.15)(?!\\d)"
                                + "|28_?349_?523|45_?359_?237|29_?573_?529",
                        // The wrong ounce of a claim, and the published formulas of air, which are in doubles.
                        "^quantity/|^verification/Habits\\.java|^weighing/AirDensity\\.java",
                        "Ratio ounce = Ratio.parse(\"28.349523125\");",
                        "double grams = ounces * 28.35;",
                        "double kilograms = pounds * 0.45359237;",
                        "Ratio kelvin = celsius.plus(Ratio.parse(\"273.15\"));",
                        "static final Ratio OUNCE = Ratio.of(28349523125L, 1_000_000_000L);"),
                of(
                        "Relation",
                        "a way to reckon",
                        "(implements|extends) [\\w<>, ]*\\bReckoning\\b",
                        "^reckoning/|^analysis/Sensitivities\\.java",
                        "final class Counting<V> implements Reckoning<V> {}",
                        "interface Noting<V> extends Reckoning<V> {}"),
                of(
                        "Relation",
                        "a relation written for numbers and for people",
                        "\\b(String|List<String>) (\\w*[fF]ormulaText|\\w*[eE]quation(s|Text)?|howReckoned|\\w*[dD]erivation|\\w*[cC]alculationText|showWork\\w*"
                                + "|steps?AsText)\\(|\" [×·÷] \" \\+ [\\w.()]+ \\+ \" = \""
                                + "|List<String> (steps|working)\\w*\\(",
                        "^(reckoning|document|exercise|classroom)/" + "|^csv/",
                        "String equation() { return share + \" · \" + batch; }",
                        "return w + \" × \" + batchMass + \" = \" + mass;",
                        "public List<String> steps() { return List.of(share + batch); }"),
                of(
                        "Explanation",
                        "a figure told in one method and explained in another",
                        "public \\w*(Working|Optional<Working>|Document) (\\w+Working|explain\\w*|why\\w*)\\(",
                        NOWHERE,
                        "public Working headroomWorking() {",
                        "public Working explainHeadroom() {",
                        "public Document whyThisReading() {"),
                of(
                        "Explanation",
                        "another record of how a number came about",
                        "\\b(class|record|interface) \\w*(Explanation|Derivation|Justification|WorkingStep|AuditTrail|Trace)\\b",
                        "^reckoning/",
                        "record Explanation(String question, List<String> steps) {}",
                        "final class MassDerivation {}"));
    }

    private static List<SecondHome> pages() {
        return List.of(
                inTexts(
                        "Document",
                        "HTML",
                        "</?(html|head|table|thead|tbody|tr|td|th|p|div|span|section|article|main|math|mrow|m[ion]|body|h[1-6]|ul|ol|li|dl|dd|dt|strong|em"
                                + "|b|i|br|style|svg)\\b[^<>\\n]*/?>?",
                        "/(Html|MathMl)\\w*\\.java",
                        "out.append(\"<td>\").append(cell);",
                        "String page = \"\"\"\n        <table>\n          <tr><td>%s</td></tr>\n        </table>\n        \"\"\";",
                        "return \"<b>\" + name + \"</b>\";",
                        "return \"<ul><li>\" + line;"),
                inTexts(
                        "Document",
                        "LaTeX",
                        "\\\\\\\\(begin|end|text\\w*|math\\w+|ensuremath|t?frac|sqrt|cdot|times|documentclass|section|hline|item)\\b",
                        "/Latex\\w*\\.java",
                        "out.append(\"\\\\begin{align*}\");",
                        "out.append(\"\\\\item \" + name);",
                        "out.append(\"\\\\mathrm{\").append(unit);"),
                inTexts(
                        "Document",
                        "Markdown",
                        "(?m)^(#{2,4} |\\| \\w+ \\||\\|[:-]{2,}|- \\[ ] |\\*\\*(\\w|$))",
                        "/Markdown\\w*\\.java",
                        "out.append(\"| Line | Mass |\\n\");",
                        "out.append(\"## \" + title);",
                        "out.append(\"**\" + name + \"**\");"),
                inTexts(
                        "Document",
                        "characters escaped for a page",
                        "&(amp|lt|gt|quot|nbsp|#\\d+|#x[0-9a-fA-F]+);",
                        "/(Html\\w*|Escape)\\.java",
                        "text.replace(\"<\", \"&lt;\")",
                        "text.replace(\"'\", \"&#39;\")"),
                of(
                        "Document",
                        "a writer of pages",
                        "\\b(extends (Page)?Writer\\b|class \\w*(Renderer|PageBuilder|ReportPrinter|SheetPrinter))"
                                + "|append\\('<'\\)",
                        // What holds back a text that grows too long.
                        "^document/|^json/Json\\.java",
                        "final class PlainWriter extends PageWriter {}",
                        "final class SheetRenderer {}",
                        "out.append('<').append(tag).append('>');"),
                of(
                        "Pot, Mending and Record",
                        "JSON",
                        "com\\.fasterxml|\"\\{\\\\\"|\"[,{\\[ ]*\\\\\"\\w+\\\\\" ?: ?(\"|\\\\|\\{|\\[)"
                                + "|append\\('[{\\\"]'\\)",
                        "/Json\\w*\\.java",
                        "import com.fasterxml.jackson.core.JsonParser;",
                        "return \"{\\\"mass\\\":\" + mass + \"}\";",
                        "out.append(\"\\\"grams\\\": \" + grams);",
                        "json.append('{').append('\"').append(key);"),
                of(
                        "Pot, Mending and Record",
                        "comma-separated values",
                        "\\.split\\(\"(\\\\\\\\s\\*)?(\\[[,;|\\\\t]+]|\\\\\\\\[t|]|[,;])(\\\\\\\\s\\*)?\"|StringTokenizer|useDelimiter"
                                + "|Pattern\\.compile\\(\\s*\"(\\\\\\\\s\\*)?[,;|](\\\\\\\\s\\*)?\"|(joining|String\\.join)\\(\"[,;|\\\\t]+\"(?!, \"_)"
                                + "|\\.split\\(\\w*(SEPARATOR|DELIMITER|COMMA|SEMICOLON|TAB)\\w*|SEPARATOR = \"",
                        // What stands below a symbol, and the words of a scope as they are read again.
                        "^csv/|^document/(ExpressionNode|LatexWriter)\\.java|^limit/Scope\\.java",
                        "String[] cells = line.split(\",\");",
                        "String[] cells = line.split(\"\\\\t\");",
                        "String[] cells = line.split(\"\\\\s*;\\\\s*\");",
                        "StringTokenizer cells = new StringTokenizer(line, \",\");",
                        "String row = String.join(\";\", cells);",
                        "for (String cell : line.split(SEPARATOR)) { cells.add(cell); }"));
    }

    private static List<SecondHome> formulas() {
        return List.of(
                of(
                        "Formula",
                        "an index counted from positions",
                        "position\\(\\) - 1|lines\\(\\)\\.indexOf\\(",
                        NOWHERE,
                        "at(line.position() - 1)",
                        "int i = formula.lines().indexOf(line);"),
                of(
                        "Formula",
                        "a line found by name",
                        "\\b(?!\\w*Builder\\b)[A-Z]\\w*(<\\w+>)? (line|lineNamed|lineByName|findLine|getLine|lookUpLine)\\(String \\w+(, String \\w+)?\\)",
                        "/Lines\\.java",
                        "public PlannedLine line(String name) {",
                        "Optional<PlannedLine> findLine(String name) {",
                        "FormulaLine lineNamed(String name) {"),
                of(
                        "Formula",
                        "a kind of line of one's own",
                        "\\b(record|class) \\w*Line\\w*\\((?=[^)]*\\bint (index|position|number|row|no)\\b)(?=[^)]*\\bString (name|ingredient|material)\\b)",
                        // The place of a line that two versions differ in.
                        "^formula/|^record/VersionComparison\\.java",
                        "record StockLine(int index, String name, Ratio grams) {}"),
                of(
                        "Formula",
                        "a formula written again line by line",
                        "(?s)\\.phase\\(\\w+\\.(phase|name)\\(\\)\\)|\\bphase = \\w+\\.phase\\(\\);[^}]*\\.phase\\(phase\\)"
                                + "|\\.phase\\(\\w+(\\.\\w+\\(\\w+\\))\\)\\s*\\.line\\(",
                        "^formula/",
                        "builder.phase(line.phase());",
                        "if (!line.phase().equals(phase)) { phase = line.phase(); builder.phase(phase); }",
                        "builder.phase(phases.get(i)).line(lines.get(i).ingredient(), amounts.get(i));"),
                of(
                        "Substance",
                        "names made alike",
                        "\\bNormalizer\\b|equalsIgnoreCase|toUpperCase\\(|compareToIgnoreCase|CASE_INSENSITIVE_ORDER|\\bCollator\\b"
                                + "|(?i)name(\\(\\))?\\)?\\.(strip|trim)\\(\\)\\.(toLowerCase|replace|equals)|name(\\(\\))?\\.replaceAll\\("
                                + "|name\\(\\)\\s*\\.replace\\(",
                        // Digits and units that somebody typed are no names; letters as a label prints them compare
                        // nothing.
                        "^formula/|^quantity/TypedText\\.java|^verification/Figure\\.java|^label/LabelName\\.java",
                        "if (name.equalsIgnoreCase(other)) {}",
                        "Map<String, Ratio> shares = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);",
                        "String key = substance.name().trim().toLowerCase(Locale.ROOT);",
                        "String key = name.replaceAll(\"[ -]\", \"\");",
                        "boolean same = one.name().replace(\" \", \"\").equals(key);"),
                of(
                        "Substance",
                        "the distance of two spellings",
                        "[lL]evenshtein|editDistance|[dD]amerau|[sS]oundex|[jJ]aroWinkler|int distance\\(String|\\bareSwapped\\(",
                        "^formula/PenSlip\\.java",
                        "static int levenshtein(String a, String b) { return 0; }",
                        "private static int distance(String a, String b) {"),
                of(
                        "Substance",
                        "a CAS number told from its form",
                        "\\\\\\\\d\\{2,7}|\\[0-9]\\{2,7}|matches\\(\"[^\"\\n]*-[^\"\\n]*\\{2}-|class \\w*Cas\\w*|record Cas\\w*",
                        "^formula/CasNumbers\\.java",
                        "boolean isCas = text.matches(\"[0-9]{2,7}-[0-9]{2}-[0-9]\");",
                        "record CasNumber(String text) {}"));
    }

    private static List<SecondHome> bench() {
        return List.of(
                of(
                        "Batch",
                        "the mass of a batch or of a line of it",
                        "Symbol\\.of\\([^)]*\"(batch-mass|line-mass)\"|(fraction|share|canonical)\\(\\)\\s*\\.times\\(\\s*(\\w+\\.)?batch(Mass|Grams|\\(\\)\\.mass"
                                + "|\\.mass)|\\bbatch(\\(\\))?\\.mass\\(\\)(\\.canonical\\(\\))?\\s*\\.times\\(\\s*\\w+\\.(fraction|share)\\(\\)"
                                + "|fraction\\(\\)\\s*\\.times\\(\\w*([sS]ize|[bB]atch|whole|total)\\w*(\\.canonical\\(\\))?\\)",
                        "^batch/" + "|^series/Portion\\.java",
                        "Symbol MASS = Symbol.of(\"m\", \"line-mass\", Kind.MASS);",
                        "Ratio grams = line.fraction().times(batch.mass().canonical());",
                        "Amount<Mass> mass = batch.mass().times(line.fraction());",
                        "Ratio grams = line.share().times(batchMass);",
                        "Ratio mass = line.fraction().times(size.canonical());"),
                of(
                        "Bench",
                        "too heavy or too full",
                        "\"[^\"\\n]*(?i:overload|overfill)(s|ed)? |compareTo\\([^;{}]*\\bcapacity(Under\\(\\w*\\))?(\\(\\)|\\b)|class \\w*(Over|Too)(load|fill"
                                + "|Heavy|Full|Much)\\w*Exception"
                                + "|capacity\\(\\)\\s*(\\.canonical\\(\\))?\\s*\\.minus\\(",
                        // A display of coarser steps than the balance carries is no load.
                        "^plan/(Overload|Overfill|TooMuch)Exception\\.java|^weighing/Balance\\.java|^size/CoarsestStep\\.java"
                                + "|^choice/Fitting\\.java|^size/Ceiling\\.java",
                        "throw new IllegalStateException(\"the batch overloads the balance\");",
                        "if (load.compareTo(balance.capacity()) > 0) { throw refused(load); }",
                        "if (grams.compareTo(bench.balance().capacity().canonical()) > 0) { return false; }",
                        "final class TooHeavyException extends RuntimeException {}",
                        "if (balance.capacity().minus(load).signum() < 0) { return false; }"),
                of(
                        "Bench",
                        "a balance or a vessel of one's own",
                        "\\b(class|record) \\w*(Scale|Balance|Vessel|Beaker|Bench)\\w*(<[^>]*>)?\\((?=[^)]*\\b(readability|division|step|capacity|volume)\\b)",
                        "^weighing/|^plan/|^choice/Equipment\\.java|^size/WindowOpening\\.java",
                        "record PocketScale(Ratio readability, Ratio capacity) {}",
                        "record Beaker(String name, Amount<Volume> volume) {}"),
                of(
                        "Plan",
                        "the largest remainder",
                        "(?<!Apportionment\\.)\\b(byRemainder|largestRemainders?)\\b|(?i)hamilton|fractionalParts?\\b"
                                + "|(?s)(quota|exact|target|share|division)s?\\w*(\\.get\\(\\w+\\))?\\.minus\\([^;]*floor\\(\\)\\)[^;]*;[^}]{0,400}(sort|Comparator|max\\()"
                                + "|\\.minus\\([^;]{0,40}\\.floor\\(\\)\\)",
                        // What a claim's figures tell of the rule by which they were closed.
                        "/Apportionment\\.java|^verification/FigureSet\\.java"
                                + "|^classroom/BalanceTopics\\.java|^plan/PlannedLoad\\.java",
                        "List<Integer> order = byRemainder(remainders);",
                        "Ratio rest = quota.minus(quota.floor());\n order.sort(Comparator.comparing(rests::get));",
                        "List<Ratio> fractionalParts = new ArrayList<>();",
                        "rest[i] = exact[i].minus(Ratio.of(exact[i].floor()));"),
                of(
                        "Plan",
                        "readings that are closed to a total",
                        "(?i)[\\w>] (closeTo(Total)?|adjustLast|fixTotal|spread(The)?(Rest|Difference)|distribute(Rest|Remainder|Difference))\\(",
                        "^plan/|^number/Apportionment\\.java",
                        "private static List<Ratio> distributeRest(List<Ratio> rounded, Ratio total) {",
                        "void fixTotal(List<Ratio> readings) {"),
                of(
                        "Weighed",
                        "masses beside a formula",
                        "(?m)^(?!\\s*private ).*\\(\\s*Formula \\w+,\\s*(MadeMasses|(List|Collection|Iterable)<(\\? extends )?(Amount<Mass>|Ratio|Addition)>"
                                + "|Map<\\w+, (Amount<Mass>|Ratio)>|Amount<Mass>\\[]|double\\[]|Ratio\\.{3}|(Function|UnaryOperator)<FormulaLine, (Amount<Mass>|Ratio)>)",
                        // How much of each line: two formulas are made of it, nothing is held against it.
                        "^size/Diluted\\.java",
                        "public LimitReport check(Formula formula, MadeMasses masses) {",
                        "LimitReport check(Formula formula, List<Ratio> grams) {",
                        "record WeighedFormula(Formula formula, Map<String, Amount<Mass>> masses) {}"));
    }

    private static List<SecondHome> judgements() {
        return List.of(
                of(
                        "Criterion and Sizes",
                        "a criterion parted from its sizes",
                        "\\b(class|interface|record) \\w*(Requirement|SizeRule|SizeCheck|SizeTest)\\b",
                        NOWHERE,
                        "final class CapRequirement {}",
                        "interface SizeRule { boolean holds(Ratio grams); }"),
                of(
                        "Criterion and Sizes",
                        "a search over sizes",
                        "(?s)while \\([^{]*\\{[^{}]*\\b(size|batch|mass|grams|least|candidate|m|g)\\w* = \\1\\w*\\.(plus|times|minus)\\("
                                + "|for \\((Amount<Mass>|Ratio) (size|batch|mass|grams|least|candidate|m|g)\\w* = [^)]*;[^;]*;[^)]*\\.(plus|times|minus)\\("
                                + "|\\b(Amount<Mass>|Ratio|Optional<Amount<Mass>>) (smallest|least|minimum)(Batch|Size)\\w*\\((Formula|Batch)\\b"
                                + "|\\bdo \\{[^{}]*\\.(plus|minus|times)\\(",
                        "^size/|^number/",
                        "while (!passes(size)) { size = size.plus(step); }",
                        "for (Ratio grams = one; grams.compareTo(most) < 0; grams = grams.plus(one)) {}",
                        "private static Amount<Mass> smallestBatch(Formula formula, Balance balance) {",
                        "do { grams = grams.plus(step); } while (!holds(grams));"),
                of(
                        "Limit and Verdict",
                        "a scale of verdicts",
                        "\\benum \\w+[^{]*\\{[^;}]*\\b(WITHIN|OUTSIDE|EXCEEDS|EXCEEDED|COMPL(IES|IANT)|PASS(ES|ED)?|FAIL(S|ED)?|TOO_(HIGH|LOW|MUCH|LITTLE)|OK"
                                + "|ABOVE|BELOW|OVER|UNDER|ALLOWED|FORBIDDEN|ACCEPTED|REJECTED|SAFE|UNSAFE)\\b"
                                + "|enum \\w*(Verdict|Judg\\w*|Conform\\w*|Compli\\w*|Severity|Status|Level)\\b|enum \\w+[^{]*\\{[^;}]*\\b(GREEN|RED|KEPT|NOT_KEPT|UNKNOWN)\\b",
                        // A share and a limit, a whole report, a line and its tolerance; whether additions are the
                        // smallest is no judgement on a share.
                        "^limit/(Conformity|LimitOutcome)\\.java|^plan/ToleranceVerdict\\.java|^mend/DisplayedAdditions\\.java"
                                + "|^soap/HydroxideVerdict\\.java",
                        "enum Judgement { WITHIN, OUTSIDE }",
                        "enum Status { OK, TOO_HIGH }",
                        "enum CapResult { NOT_CHECKED, PASSED, FAILED }",
                        "enum Level { GREEN, AMBER, RED }",
                        "public enum CapVerdict { KEPT, NOT_KEPT, UNKNOWN }"),
                of(
                        "Limit and Verdict",
                        "a share held against a limit",
                        "compareTo\\([^;{}]*\\b(limit|cap|maximum|threshold)(\\(\\))?\\.(value|share|fraction|most|maximum|amount)\\b"
                                + "|\\bboolean (exceeds|isAbove|isOver|violates)\\w*\\([^)]*\\b(UsageLimit|cap|limit)\\b",
                        // A printed least share that must stay above its cap.
                        "^limit/|^mend/ExceededCap\\.java",
                        "if (share.fraction().compareTo(limit.share().fraction()) > 0) { return true; }",
                        "private static boolean exceeds(Ratio share, UsageLimit limit) {"),
                of(
                        "Pot, Mending and Record",
                        "conditions of a mending",
                        "\\b(interface|class|record) \\w*(Condition|Constraint)s?\\b",
                        "^mend/|^annex/ProhibitedEntry\\.java|^size/BatchConstraints\\.java",
                        "interface DisplayCondition {}",
                        "record LineConstraint(FormulaLine line, Ratio most) {}"),
                of(
                        "Pot, Mending and Record",
                        "a mending reckoned by hand",
                        "\\b(class|record|interface) \\w*(Correction|Mending|Repair|TopUp|Restoration|Remedy)\\w*|\\b(Amount<Mass>|Ratio|List<LineAddition>) "
                                + "(toAdd|topUp|missing(Mass|Grams)|additionFor)\\w*\\("
                                + "|dividedBy\\(Ratio\\.ONE\\.minus\\(",
                        "^mend/|^soap/SoapMending\\.java|^quantity/Repairs\\.java"
                                + "|^(classroom|exercise)/|^size/ClosedBands\\.java|^soap/Unsaponified\\.java",
                        "final class QuickRepair {}",
                        "private static Ratio toAdd(MadeLine line, Ratio wanted) {",
                        "Ratio extra = wanted.times(total).minus(have).dividedBy(Ratio.ONE.minus(wanted));"),
                of(
                        "Pot, Mending and Record",
                        "a linear program solved",
                        "\\bpivot|\\b[sS]implex|tableau|reducedCost|[gG]aussian|optim\\.linear"
                                + "|(Ratio|double|BigInteger|BigDecimal)\\[\\]\\[\\] ",
                        "^number/" + "|^choice/Fitting\\.java",
                        "void pivot(int row, int column) {}",
                        "Ratio[][] tableau = new Ratio[rows][columns];",
                        "import org.apache.commons.math3.optim.linear.SimplexSolver;",
                        "private void eliminate(Ratio[][] matrix, int row) { }"),
                of(
                        "Pot, Mending and Record",
                        "a notebook of one's own",
                        "\\b(class|record|interface) \\w*(Notebook|Journal|Logbook|BatchLog|BenchLog|History)\\b",
                        "^record/",
                        "record BatchLog(Batch batch, List<String> entries) {}"));
    }
}
