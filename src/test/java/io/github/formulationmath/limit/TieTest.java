package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.chemistry.AtomicEnds;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A salt under a limit as acid, beside the limit: what is called within is within, and what is called above is above, for
 * all atomic masses that their printed uncertainties allow (Atomic weights of the elements 2007, Pure Appl. Chem. 81 (2009)
 * 2131-2156, table 1).
 */
class TieTest {

    private static final MathContext DIGITS = new MathContext(40);
    private static final List<Map<String, String>> SALTS = salts();

    /** Members with a formula that a row of the table converts, beside the formula of what they are converted into. */
    private static List<Map<String, String>> salts() {
        List<Map<String, String>> salts = new ArrayList<>();
        for (Map<String, String> limit : SnapshotTable.LIMITS) {
            for (Map<String, String> member : SnapshotTable.SUBSTANCES) {
                if (field(limit, "basis").equals("as_reference")
                        && !field(limit, "reference_formula").isEmpty()
                        && field(member, "group_id").equals(field(limit, "group_id"))
                        && field(member, "role").equals("member")
                        && !field(member, "molecular_formula").isEmpty()) {
                    Map<String, String> both = new HashMap<>(member);
                    both.put("reference", field(limit, "reference_formula"));
                    salts.add(both);
                }
            }
        }
        return salts;
    }

    /** The factor with every atomic mass at one end of its uncertainty or the other, as a pattern of bits says. */
    private static BigDecimal factor(Map<String, String> salt, long ends) {
        return AtomicEnds.factor(
                field(salt, "molecular_formula"), field(salt, "reference"), field(salt, "reference_units"), ends);
    }

    private static boolean isSimple(Map<String, String> salt) {
        return (field(salt, "molecular_formula") + field(salt, "reference")).matches("[A-Za-z0-9·]*")
                && field(salt, "reference_units").matches("\\d+");
    }

    /** Shares a few parts in 100 000 about the one that is at the limit. */
    @Property(tries = 300)
    void what_is_within_or_above_is_so_for_all_atomic_masses(@ForAll Random random) {
        Map<String, String> salt = SALTS.get(random.nextInt(SALTS.size()));
        if (!isSimple(salt)) {
            return;
        }
        BigDecimal cap = BigDecimal.valueOf(1 + random.nextInt(99), 3);
        BigDecimal share = cap.divide(factor(salt, random.nextLong()), DIGITS)
                .multiply(BigDecimal.ONE.add(BigDecimal.valueOf(random.nextInt(81) - 40, 5)))
                .setScale(12, RoundingMode.HALF_EVEN);
        if (share.compareTo(BigDecimal.ONE) >= 0) {
            return;
        }
        Verdict verdict = verdict(salt, cap, share);
        BigDecimal least = share.multiply(factor(salt, 0));
        BigDecimal greatest = least;
        for (int ends = 1; ends < 256; ends++) {
            BigDecimal counted = share.multiply(factor(salt, ends));
            least = least.min(counted);
            greatest = greatest.max(counted);
        }
        assertThat(verdict.conformity()).isIn(Conformity.WITHIN, Conformity.EXCEEDS, Conformity.NOT_SHOWN_WITHIN);
        if (verdict.conformity() == Conformity.WITHIN) {
            assertThat(greatest).as("%s %s %s", salt, cap, share).isLessThanOrEqualTo(cap.setScale(40));
        }
        if (verdict.conformity() == Conformity.EXCEEDS) {
            assertThat(least).as("%s %s %s", salt, cap, share).isGreaterThan(cap.setScale(40));
        }
        assertThat(verdict.isTie()).isEqualTo(verdict.conformity() == Conformity.NOT_SHOWN_WITHIN);
    }

    private static Verdict verdict(Map<String, String> salt, BigDecimal cap, BigDecimal share) {
        GroupMember member = GroupMember.of(Substance.of("Salt"))
                .withFormula(
                        MolecularFormula.parse(field(salt, "molecular_formula")),
                        Ratio.parse(field(salt, "reference_units")));
        UsageLimit limit = UsageLimit.of(
                        "T",
                        SubstanceGroup.of("salts", List.of(member)),
                        LimitKind.MAXIMUM,
                        MassFraction.of(Ratio.of(cap)))
                .on(LimitBasis.as("acid", MolecularFormula.parse(field(salt, "reference"))))
                .counting(SumRule.SUM);
        return LimitChecker.of(LimitTable.of("house", List.of(limit)), Product.leaveOn(), DecisionRule.worstCase())
                .check(Formula.inPercent("F")
                        .quantitySufficient("Aqua")
                        .line(Ingredient.of("Salt"), MassFraction.of(Ratio.of(share)))
                        .build())
                .binding()
                .orElseThrow();
    }

    /** Annex V, entry 1(c) and (a): 0.5 % and 2.5 % as benzoic acid; entry 3: the acid itself, which nothing converts. */
    @ParameterizedTest
    @CsvSource({
        "Sodium Benzoate, 0.59, NOT_SHOWN_WITHIN",
        "Sodium Benzoate, 0.5899, WITHIN",
        "Sodium Benzoate, 0.5901, EXCEEDS",
        "Benzoic Acid, 0.5, WITHIN",
        "Benzoic Acid, 0.50000001, EXCEEDS",
    })
    void a_tie_is_told_as_a_tie(String name, String percent, Conformity expected) {
        LimitReport report = LimitChecker.of(
                        LimitTable.eu2024February(),
                        Product.leaveOn().on("face").using(name, "preservative"),
                        DecisionRule.worstCase())
                .check(Formula.inPercent("F")
                        .quantitySufficient("Aqua")
                        .line(name, percent + " %")
                        .build());
        Verdict verdict = report.verdict("EU-V-1-c").orElseThrow();
        assertThat(verdict.conformity()).isEqualTo(expected);
        assertThat(verdict.isTie()).isEqualTo(expected == Conformity.NOT_SHOWN_WITHIN);
        assertThat(String.join("\n", verdict.describe(Wording.english())).contains("is exactly at the limit"))
                .isEqualTo(verdict.isTie());
    }

    @Test
    void there_are_many_salts_to_try() {
        assertThat(SALTS.stream().filter(TieTest::isSimple).count()).isGreaterThan(100);
    }
}
