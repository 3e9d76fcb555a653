package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.amendment.AsOf;
import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What later acts make of a verdict, on a day that the caller gives. Dates and figures: (EU) 2024/858, 2024/996, 2025/877,
 * 2026/78, as far as their text was seen.
 */
class LaterActsTest {

    private static final LimitTable EU = LimitTable.eu2024February();
    private static final Product FACE = Checkers.FACE_CREAM.forUsers("adults");

    private static LimitReport check(Product product, String day, boolean placing, String ingredient, String percent) {
        LimitChecker checker = LimitChecker.of(EU, product, DecisionRule.worstCase());
        if (!day.isEmpty()) {
            LocalDate date = LocalDate.parse(day);
            checker = checker.asOf(placing ? AsOf.placing(date) : AsOf.makingAvailable(date));
        }
        return checker.check(Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(ingredient, percent + " %")
                .build());
    }

    private static String text(LimitReport report) {
        return String.join("\n", report.describe(Wording.english()));
    }

    /** Printed: from 1 May 2025 not placed, from 1 May 2026 not made available; from 1 September 2025; and so on. */
    @ParameterizedTest
    @CsvSource({
        "4-Methylbenzylidene Camphor, 4, 2025-04-30, true, CONDITIONS_OPEN_OR_LESS",
        "4-Methylbenzylidene Camphor, 4, 2025-05-01, true, PROHIBITED",
        "4-Methylbenzylidene Camphor, 4, 2026-04-30, false, CONDITIONS_OPEN_OR_LESS",
        "4-Methylbenzylidene Camphor, 4, 2026-05-01, false, PROHIBITED",
        "Trimethylbenzoyl Diphenylphosphine Oxide, 1, 2025-08-31, true, CONDITIONS_OPEN_OR_LESS",
        "Trimethylbenzoyl Diphenylphosphine Oxide, 1, 2025-09-01, false, PROHIBITED",
        "Retinol, 1, 2025-10-31, true, CONDITIONS_OPEN_OR_LESS",
        "Retinol, 1, 2025-11-01, true, EXCEEDS",
        "Retinol, 1, 2027-04-30, false, CONDITIONS_OPEN_OR_LESS",
        "Retinol, 1, 2027-05-01, false, EXCEEDS",
        "Retinyl Palmitate, 1, 2026-11-25, true, EXCEEDS", // 54.6 % of it is retinol
        "Retinyl Palmitate, 0.5, 2026-11-25, true, CONDITIONS_OPEN_OR_LESS",
        "Kojic Acid, 2, 2026-11-25, true, EXCEEDS",
        "Kojic Acid, 1, 2026-11-25, true, CONDITIONS_OPEN_OR_LESS",
        "Alpha-Arbutin, 3, 2026-11-25, true, EXCEEDS",
        "Genistein, 0.008, 2025-01-31, true, CONDITIONS_OPEN_OR_LESS",
        "Genistein, 0.008, 2025-02-01, true, EXCEEDS",
        "Genistein, 0.008, 2025-10-31, false, CONDITIONS_OPEN_OR_LESS",
        "Genistein, 0.008, 2025-11-01, false, EXCEEDS",
        "Hexyl Salicylate, 0.4, 2026-04-30, true, CONDITIONS_OPEN_OR_LESS",
        "Hexyl Salicylate, 0.4, 2026-05-01, false, EXCEEDS",
    })
    void an_act_decides_from_the_day_on_which_it_binds(
            String ingredient, String percent, String day, boolean placing, String outcome) {
        LimitReport report = check(FACE, day, placing, ingredient, percent);
        if (outcome.equals("CONDITIONS_OPEN_OR_LESS")) {
            assertThat(report.outcome()).as(report.toString()).isLessThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
        } else {
            assertThat(report.outcome()).as(report.toString()).isEqualTo(LimitOutcome.valueOf(outcome));
        }
        assertThat(report.amended()).hasSize(1);
        assertThat(text(report)).contains("changed since the table was made, (EU) 20");
    }

    @Test
    void without_a_day_nothing_is_decided_by_a_later_act_and_nothing_is_called_fine() {
        for (String ingredient : List.of("4-Methylbenzylidene Camphor", "Retinol", "Kojic Acid", "Hexyl Salicylate")) {
            LimitReport report = check(FACE, "", true, ingredient, "3");
            assertThat(report.outcome()).as(ingredient).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
            assertThat(report.laterVerdicts()).as(ingredient).isNotEmpty();
            assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Aqua");
            assertThat(text(report)).contains("No date was given", "By a later act, which is only told here");
        }
    }

    @Test
    void the_age_of_the_table_stands_first_and_once() {
        List<String> dated =
                check(FACE, "2026-11-25", true, "Phenoxyethanol", "0.9").describe(Wording.english());
        assertThat(dated.get(0))
                .startsWith("This table is 2 years 9 months old on the day you gave")
                .contains("3 older transitions have ended on it")
                .contains("5 acts are known to have been published since, 4 of them apply");
        assertThat(dated.subList(1, dated.size())).noneMatch(line -> line.contains("months old"));
        List<String> undated = check(FACE, "", true, "Phenoxyethanol", "0.9").describe(Wording.english());
        assertThat(undated.get(0)).startsWith("No date was given: this table is of 2024-02-25, and 5 acts");
    }

    /** Placing: 31 July 2024, 31 July 2026, 31 December 2024; making available: the second is until 31 July 2028. */
    @Test
    void transitions_that_ended_before_the_table_was_made_are_not_counted() {
        LocalDate day = LocalDate.parse("2026-11-25");
        LocalDate made = EU.snapshot().orElseThrow();
        assertThat(EU.amendments().endedTransitions(made, AsOf.placing(day)))
                .hasSize(3)
                .contains("(EU) 2022/1181", "(EU) 2023/1545");
        assertThat(EU.amendments().endedTransitions(made, AsOf.makingAvailable(day)))
                .hasSize(2)
                .contains("(EU) 2022/1181")
                .doesNotContain("(EU) 2023/1545");
    }

    /** The transition of (EU) 2023/1545 is told at every row that it added or changed, and at no other. */
    @Test
    void every_row_of_an_act_with_a_transition_tells_it() {
        for (UsageLimit limit : EU.limits()) {
            boolean told = EU.amendments().touching(limit.place()).stream()
                    .anyMatch(change -> change.act().equals("(EU) 2023/1545"));
            boolean ofTheAct = EU.limits().stream()
                    .filter(other -> other.place().equals(limit.place()))
                    .anyMatch(other -> other.citation().amendingAct().equals("(EU) 2023/1545"));
            assertThat(told).as(limit.id()).isEqualTo(ofTheAct);
        }
    }

    @Test
    void what_no_act_touches_is_as_before() {
        LimitReport report = check(FACE, "2026-11-25", true, "Phenoxyethanol", "0.9");
        assertThat(report.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(report.amended()).isEmpty();
        assertThat(report.asOf()).contains(AsOf.placing(LocalDate.of(2026, 11, 25)));
    }

    @Test
    void every_verdict_on_an_entry_that_is_touched_names_act_and_tag() {
        Map<String, String> touched = Map.of(
                "4-Methylbenzylidene Camphor", "(EU) 2024/996 [SEEN]",
                "o-Phenylphenol", "(EU) 2026/78 [SEEN-2ND]",
                "Triclosan", "(EU) 2024/996 [SEEN]",
                "Benzyl Salicylate", "(EU) 2026/909 [SEEN-2ND]",
                "DMDM Hydantoin", "(EU) 2022/1181 [SEEN]",
                "Homosalate", "(Annex VI, entry 3) [SEEN]");
        touched.forEach((ingredient, act) -> {
            LimitReport report = check(FACE, "2026-11-25", true, ingredient, "0.1");
            Verdict old = report.verdicts().stream()
                    .filter(verdict -> verdict.limit().id().startsWith("EU-"))
                    .findFirst()
                    .orElseThrow();
            assertThat(String.join("\n", old.describe(Wording.english())))
                    .as(ingredient)
                    .contains(act);
        });
    }

    /** The figures of an act that applies from 2027 and whose text nobody has read are not in the jar. */
    @Test
    void what_is_only_coming_is_told_and_has_no_figure() {
        LimitReport report = check(FACE, "2026-11-25", true, "Benzyl Salicylate", "0.0001");
        assertThat(text(report)).contains("(EU) 2026/909 [SEEN-2ND], coming", "it does not bind for placing");
        assertThat(EU.later().orElseThrow().limits())
                .noneMatch(limit -> limit.citation().amendingAct().contains("2026/909"));
    }

    @Test
    void a_triclosan_mouthwash_that_the_table_lets_through_is_prohibited_since() {
        Product wash = Product.rinseOff().on("mouth").ofKind("mouthwash").inForm("other");
        assertThat(check(wash, "2024-12-31", true, "Triclosan", "0.2").outcome())
                .isLessThan(LimitOutcome.EXCEEDS);
        assertThat(check(wash, "2025-01-01", true, "Triclosan", "0.2").outcome())
                .isEqualTo(LimitOutcome.PROHIBITED);
    }

    /** Each later figure has an amendment of the same act that names what it counts, or its entry. */
    @Test
    void every_later_limit_has_its_act_and_its_tag() {
        Map<String, LegalChange> acts = new HashMap<>();
        EU.amendments().all().forEach(amendment -> acts.put(amendment.act(), amendment));
        for (UsageLimit limit : EU.later().orElseThrow().limits()) {
            String act = limit.citation().amendingAct();
            assertThat(acts).containsKey(act);
            assertThat(limit.citation().text())
                    .endsWith("[" + acts.get(act).tag().code() + "]");
            for (GroupMember member : limit.group().members()) {
                boolean named = EU.amendments().of(member.substance()).stream()
                        .anyMatch(amendment -> amendment.act().equals(act));
                boolean touched = EU.limitsFor(member.substance()).stream()
                        .flatMap(own -> EU.amendments().touching(own.place()).stream())
                        .anyMatch(amendment -> amendment.act().equals(act));
                assertThat(named || touched || !member.isCounted())
                        .as("%s %s", limit.id(), member)
                        .isTrue();
            }
        }
    }
}
