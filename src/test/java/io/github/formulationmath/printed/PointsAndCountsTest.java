package io.github.formulationmath.printed;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.reckoning.Wording;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The difference of two percentages is told in percentage points and never in percent, which would be another number; a count is a whole
 * number without a point, without ≈ and without a unit.
 */
class PointsAndCountsTest {

    /** A line of a working where one share is taken from another, and the line of what comes of it. What is left of 100 % is a share. */
    private static final Pattern DIFFERENCE =
            Pattern.compile("= \\(?(?!100 %)([0-9][0-9.,/]*) %\\)? − \\(?[0-9][0-9.,/]* %\\)?\\R\\s*= ([^\\n]*)");

    /** A signed number in percent that a page says is a difference of shares. */
    private static final Pattern SIGNED =
            Pattern.compile("[+−][0-9.,]+[\\s\u00A0]%[\\s\u00A0](?:on purpose|gewollt|voulu)"
                    + "|(?:as read|wie abgelesen|tel que lu)[^\\n]*[+−][0-9.,]+[\\s\u00A0]%");

    private static final Pattern LEFT = Pattern.compile(
            "[0-9][\\s\u00A0]%(?: as [^,(]+)? left\\b|%[\\s\u00A0](?:frei\\b|als [^,(]+ frei)|\\breste (?:≈ )?[0-9.,]+[\\s\u00A0]%");

    private static final Pattern COUNT = Pattern.compile(
            "(?:≈ [0-9.,]+|[0-9]+[.,][0-9]+)[\\s\u00A0](?:packs?|Packungen|Packung|emballages?|lines?|Zeilen|lignes?|divisions?|Teilungswerte"
                    + "|pieces?|drops?|learners?|batch(?:es)?|Ansätze|préparations)\\b");

    private static final int CASES = 2 * Integer.getInteger("formulationmath.cases", 1);

    @Test
    void differences_of_percentages_are_percentage_points_and_counts_are_whole() {
        Map<String, String> found = new TreeMap<>();
        for (long seed = 160; seed < 160 + CASES; seed++) {
            for (Map.Entry<String, Callable<?>> asked :
                    Workshop.answers(Workshop.GRAMS, seed).entrySet()) {
                Everything.of(asked.getKey(), UnitsOfTheBenchTest.answer(asked.getValue()), 2, (way, text) -> {
                    int at = slip(text);
                    if (at >= 0) {
                        found.putIfAbsent(
                                UnitsOfTheBenchTest.last(way), way + ": " + UnitsOfTheBenchTest.excerpt(text, at));
                    }
                });
            }
        }
        assertThat(found.values().stream().map(each -> "\n" + each)).isEmpty();
    }

    /** Where a text tells points as percent, or a count as a measured number; -1 if it does not. */
    private static int slip(String text) {
        Matcher m = DIFFERENCE.matcher(text);
        while (m.find()) {
            if (m.group(2).endsWith("%")) {
                return m.start();
            }
        }
        for (Pattern wrong : List.of(SIGNED, LEFT, COUNT)) {
            m = wrong.matcher(text);
            if (m.find()) {
                return m.start();
            }
        }
        return -1;
    }

    @Test
    void pages_that_tell_it_wrongly_are_called_wrong() {
        for (String wrong : List.of(
                "    G = C − s\n      = 1 % − 0.85 %\n      = 0.15 %",
                "    Δ = w_2 − w_1\n      = (400/19 %) − 20 %\n      = 20/19 % ≈ 1.05263 %",
                "Glycerin: +2 % on purpose, and it is there",
                "Aqua: gewollt gleich; wie abgelesen −0,5 %, sicher",
                "within, ≈ 0.0947737 % left, 0.189 g",
                "innerhalb, 0,2\u00A0% als benzoic acid frei",
                "3.0 packs of 50 g",
                "≈ 7 Packungen",
                "reste 0,15\u00A0%")) {
            assertThat(slip(wrong)).as(wrong).isNotNegative();
        }
        for (String right : List.of(
                "    G = C − s\n      = 1 % − 0.85 %\n      = 0.15 pp",
                "    w_1 = 1 − w_2\n      = 100 % − 20 %\n      = 80 %",
                "7 packs of 50.5 g and 43.6 g left",
                "Glycerin: +2 on purpose; as read +1.9, surely +0.8 to +3 percentage points")) {
            assertThat(slip(right)).as(right).isEqualTo(-1);
        }
    }

    @Test
    void lines_that_miss_100_percent_miss_it_by_points() {
        Random random = new Random(16);
        for (int i = 0; i < 20 * CASES; i++) {
            int tenths = 1 + random.nextInt(1999);
            if (tenths == 1000) {
                continue;
            }
            int missed = Math.abs(tenths - 1000);
            try {
                Formula.inPercent("F")
                        .line("Aqua", tenths / 20 + "." + tenths % 20 * 5 / 10 + "" + tenths % 20 * 5 % 10 + " %")
                        .line("Oil", tenths / 20 + "." + tenths % 20 * 5 / 10 + "" + tenths % 20 * 5 % 10 + " %")
                        .build();
                throw new AssertionError("taken: " + tenths);
            } catch (IllegalArgumentException e) {
                String points = missed % 10 == 0 ? String.valueOf(missed / 10) : missed / 10 + "." + missed % 10;
                assertThat(e)
                        .hasMessageContaining(
                                "in percentage points " + points + " too " + (tenths > 1000 ? "many" : "few"));
                assertThat(Wording.german().text((Refusal) e))
                        .contains("in Prozentpunkten " + points.replace('.', ',') + " zu "
                                + (tenths > 1000 ? "viel" : "wenig"));
                assertThat(Wording.french().text((Refusal) e))
                        .contains("en points de pourcentage")
                        .doesNotContain(points.replace('.', ',') + "\u00A0% de");
            }
        }
    }
}
