package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Equality, text and name of what questions about batch sizes are made of. */
class CriteriaContractTest {

    private static final Tolerances FIVE = Tolerances.of("5 %");
    private static final Tolerances FOUR = Tolerances.of("4 %");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static final List<Criterion> CRITERIA = List.of(
            Criterion.oneDivision(),
            Criterion.exactReadings(),
            Criterion.minimumWeight(),
            Criterion.leastNetMass(Amount.mass("1.5 g")),
            Criterion.roundingWithin(FIVE),
            Criterion.madeWithin(FIVE),
            Criterion.madeWithin(FIVE, Amount.mass("0.1 g")),
            Criterion.errorBound(FIVE, WeighingMethod.TARE_EACH),
            Criterion.capKept(Substance.of("Wax"), MassFraction.parse("25 %"), WeighingMethod.TARE_EACH),
            Criterion.limitKept(verdict("Phenoxyethanol", "EU-V-29"), WeighingMethod.TARE_EACH));

    private static Formula cream(String preservative) {
        return Formula.inPercent("Cream")
                .quantitySufficient("Aqua")
                .line(preservative, "0.9 %")
                .build();
    }

    static Verdict verdict(String preservative, String limit) {
        return Checkers.LEAVE_ON.check(cream(preservative)).verdict(limit).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0; every line at least one division",
                "1; every line a whole number of divisions",
                "2; every line at least the minimum weight at 0.1 %",
                "3; every line at least 1.5 g",
                "4; rounding of each line within ± 5 %",
                "5; every share as made within ± 5 %",
                "6; every share as made within ± 5 %, readings off by up to 0.1 g",
                "7; worst error of every addition within ± 5 %",
                "8; Wax never above 25 %",
                "9; PHENOXYETHANOL keeps limit EU-V-29"
            })
    void a_criterion_says_what_it_asks(int index, String text) {
        assertThat(CRITERIA.get(index)).hasToString(text);
    }

    private static Phrase name(Criterion criterion) {
        boolean ofVerdict = criterion.toString().contains("EU-V-29");
        Formula formula = ofVerdict ? cream("Phenoxyethanol") : cream("Wax");
        return criterion.on(formula, Bench.of(TENTH)).asked().get(0);
    }

    @Test
    void a_criterion_has_a_name_in_words_with_its_figures() {
        List<Phrase> names = CRITERIA.stream().map(CriteriaContractTest::name).toList();
        assertThat(names)
                .extracting(Phrase::key)
                .containsExactly(
                        "criterion.one-division",
                        "criterion.exact-readings",
                        "criterion.minimum-weight",
                        "criterion.least-net-mass",
                        "criterion.rounding-within",
                        "criterion.made-within",
                        "criterion.made-within-error",
                        "criterion.error-bound",
                        "criterion.cap-kept",
                        "criterion.limit-kept");
        names.forEach(
                name -> assertThat(Wording.english().text(name)).isNotBlank().doesNotContain("{"));
    }

    @Nested
    class LimitKeptContract implements ValueContract<Criterion> {
        @Override
        public List<Criterion> different() {
            return List.of(
                    Criterion.limitKept(verdict("Phenoxyethanol", "EU-V-29"), WeighingMethod.TARE_EACH),
                    Criterion.limitKept(verdict("Benzyl Alcohol", "EU-V-34"), WeighingMethod.TARE_EACH));
        }

        @Override
        public List<Criterion> same() {
            return different();
        }
    }

    @Nested
    class MadeWithinContract implements ValueContract<Criterion> {
        @Override
        public List<Criterion> different() {
            return List.of(
                    Criterion.madeWithin(FIVE),
                    Criterion.madeWithin(FOUR),
                    Criterion.madeWithin(FIVE, Amount.mass("0.1 g")),
                    Criterion.madeWithin(FIVE, Amount.mass("0.2 g")));
        }

        @Override
        public List<Criterion> same() {
            return different();
        }
    }

    @Nested
    class LeastNetMassContract implements ValueContract<Criterion> {
        @Override
        public List<Criterion> different() {
            return List.of(
                    Criterion.leastNetMass(Amount.mass("1 g")),
                    Criterion.leastNetMass(Amount.mass("2 g")),
                    Criterion.leastNetMass(Amount.mass("3 g")));
        }

        @Override
        public List<Criterion> same() {
            return different();
        }
    }

    @Nested
    class MinimumWeightContract implements ValueContract<Criterion> {
        @Override
        public List<Criterion> different() {
            return List.of(
                    Criterion.minimumWeight(),
                    Criterion.minimumWeight(MassFraction.parse("1 %"), CoverageFactor.of(2)),
                    Criterion.minimumWeight(MassFraction.parse("5 %"), CoverageFactor.of(3)));
        }

        @Override
        public List<Criterion> same() {
            return List.of(
                    Criterion.minimumWeight(MassFraction.parse("0.1 %"), CoverageFactor.of(2)),
                    Criterion.minimumWeight(MassFraction.parse("1 %"), CoverageFactor.of(2)),
                    Criterion.minimumWeight(MassFraction.parse("5 %"), CoverageFactor.of(3)));
        }
    }

    /** Criteria that hold only where readings close in their way ask for that bench. */
    @Test
    void a_criterion_names_the_bench_that_shows_it() {
        Bench grams = Bench.of(Balance.of("1 g", "100 kg"));
        assertThat(Criterion.oneDivision().showing(grams)).isEmpty();
        assertThat(Criterion.madeWithin(FIVE, Amount.mass("0.1 g")).showing(grams))
                .contains(grams.closingWithin(FIVE, Amount.mass("0.1 g")));
    }
}
