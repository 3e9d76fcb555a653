package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/** Whatever is told to open a window is done here, by other means, and must open it. */
class WindowOpeningsTest {

    private record Case(Formula formula, Bench bench, BatchConstraints constraints) {}

    private static Case apply(Case to, WindowOpening opening) {
        Bench bench = to.bench();
        Balance old = bench.balance();
        if (opening instanceof WindowOpening.FinerBalance finer) {
            return on(to, bench(bench, Balance.of(finer.readability(), old.capacity()), bench.vessel()));
        } else if (opening instanceof WindowOpening.HigherCapacity higher) {
            return on(to, bench(bench, Balance.of(old.readability(), higher.capacity()), bench.vessel()));
        } else if (opening instanceof WindowOpening.LighterVessel lighter) {
            Vessel vessel = Vessel.of("lighter", lighter.mass())
                    .holding(
                            bench.vessel().workingVolume().orElseThrow(),
                            bench.vessel().workingVolume().orElseThrow());
            return on(to, bench(bench, old, vessel));
        } else if (opening instanceof WindowOpening.LargerVessel larger) {
            Vessel vessel =
                    Vessel.of("larger", bench.vessel().mass()).holding(larger.workingVolume(), larger.workingVolume());
            return on(to, bench(bench, old, vessel));
        } else if (opening instanceof WindowOpening.MoreStock more) {
            return new Case(to.formula(), bench, to.constraints().withStock(more.ingredientName(), more.mass()));
        } else if (opening instanceof WindowOpening.PreDilute dilute) {
            return new Case(weighed(to.formula(), dilute), bench, to.constraints());
        }
        Case all = to;
        for (WindowOpening each : ((WindowOpening.Together) opening).all()) {
            all = apply(all, each);
        }
        return all;
    }

    private static Case on(Case old, Bench bench) {
        return new Case(old.formula(), bench, old.constraints());
    }

    private static Bench bench(Bench old, Balance balance, Vessel vessel) {
        Bench bench = Bench.of(balance).with(vessel).closing(old.closure());
        return old.productDensity().map(bench::withProductDensity).orElse(bench);
    }

    /** Aliquots in place of the lines, the carrier without what is in them; its share must stay above 0. */
    private static Formula weighed(Formula formula, WindowOpening.PreDilute dilute) {
        FormulaBuilder builder = Formula.inParts("weighed");
        formula.lines().forEach(line -> {
            Ratio share = line.fraction();
            for (WindowOpening.Dilution dilution : dilute.dilutions()) {
                assertThat(dilution.factor().compareTo(Ratio.ONE)).isPositive();
                if (dilution.line().equals(line)) {
                    share = share.times(dilution.factor());
                } else if (dilute.carrier().equals(line)) {
                    Ratio more = dilution.factor().minus(Ratio.ONE);
                    share = share.minus(dilution.line().fraction().times(more));
                }
            }
            assertThat(share.signum()).isPositive();
            builder.line(line.ingredient(), share);
        });
        return builder.build();
    }

    private static Criterion criterion(RandomFormulas random) {
        Tolerances tolerances = Tolerances.of((2 + random.below(15)) + " %");
        return switch (random.below(4)) {
            case 0 -> Criterion.oneDivision();
            case 1 -> Criterion.errorBound(tolerances, WeighingMethod.TARE_EACH);
            case 2 -> Criterion.roundingWithin(tolerances);
            default -> Criterion.madeWithin(tolerances);
        };
    }

    private static Case some(RandomFormulas random) {
        Formula formula = RandomFormulas.formula(random.parts(100));
        String d = new String[] {"1 g", "2 g", "5 g", "0.5 g"}[random.below(4)];
        Bench bench = Bench.of(Balance.of(d, (20 + random.below(60)) + " g"))
                .with(Vessel.of("jar", random.below(20) + " g").holding((8 + random.below(80)) + " mL"))
                .closing(random.below(2) == 0 ? Closure.INDEPENDENT : Closure.CLOSED);
        bench = random.below(2) == 0 ? bench : bench.withProductDensity("0.95 g/mL");
        BatchConstraints constraints = BatchConstraints.of(criterion(random));
        return new Case(
                formula,
                bench,
                random.below(4) == 0 ? constraints.withStock("material 1", (1 + random.below(9)) + " g") : constraints);
    }

    @Test
    void every_opening_that_is_told_opens_the_window() {
        RandomFormulas random = new RandomFormulas(1121);
        int told = 0;
        int dilutions = 0;
        for (int run = 0; run < 300; run++) {
            Case some = some(random);
            if (!(BatchWindow.of(some.formula(), some.bench(), some.constraints()) instanceof BatchWindow.Empty none)) {
                continue;
            }
            for (WindowOpening opening : none.openings()) {
                Case opened = apply(some, opening);
                // Stock is of the materials, not of their dilutions.
                boolean inStock = opening instanceof WindowOpening.PreDilute
                        && !some.constraints().stock().isEmpty();
                if (!inStock) {
                    assertThat(BatchWindow.of(opened.formula(), opened.bench(), opened.constraints()))
                            .as("%s of %s", opening, some)
                            .isInstanceOf(BatchWindow.Feasible.class);
                }
                assertThat(Wording.english().text(opening.phrase())).doesNotContain("{");
                told++;
                dilutions += opening instanceof WindowOpening.PreDilute ? 1 : 0;
            }
        }
        assertThat(told).isGreaterThan(200);
        assertThat(dilutions).isGreaterThan(10);
    }

    /** Preservative and perfume are both too little for 1 g in 100 g: 0.5 % and 0.6 % twice make a division each. */
    @Test
    void as_many_lines_are_diluted_as_bind() {
        Formula lotion = Formula.inPercent("lotion")
                .quantitySufficient("Aqua")
                .line("Preservative", "0.5 %")
                .line("Perfume", "0.6 %")
                .build();
        BatchWindow.Empty none =
                (BatchWindow.Empty) BatchWindow.of(lotion, Balance.of("1 g", "100 g"), Criterion.oneDivision());
        assertThat(none.openings())
                .filteredOn(WindowOpening.PreDilute.class::isInstance)
                .extracting(opening -> opening.phrase().toString())
                .containsExactly("pre-diluting in Aqua: Preservative 2 times; Perfume 2 times");
    }

    /** 93 % and 7 %: fifteen times the second is more than the whole, so no dilution is told. */
    @Test
    void no_more_diluent_is_asked_for_than_there_is() {
        Formula two =
                Formula.inPercent("two").line("A", "93 %").line("B", "7 %").build();
        BatchWindow.Empty none =
                (BatchWindow.Empty) BatchWindow.of(two, Balance.of("1 g", "1 g"), Criterion.oneDivision());
        assertThat(none.openings()).noneMatch(WindowOpening.PreDilute.class::isInstance);
    }

    /** 97 + 3 % in 5 g within 5 %: 0.05 g shows 3 divisions of 0.15 g, 0.02 g would show 7.5 as 8, 6.7 % too much. */
    @Test
    void a_finer_balance_is_the_one_that_was_tried() {
        Formula two =
                Formula.inPercent("two").line("A", "97 %").line("B", "3 %").build();
        BatchWindow.Empty none = (BatchWindow.Empty) BatchWindow.of(
                two,
                Bench.of(Balance.of("0.1 g", "5 g")),
                BatchConstraints.of(Criterion.roundingWithin(Tolerances.of("5 %")))
                        .inStepsOf("5 g"));
        assertThat(none.openings())
                .filteredOn(WindowOpening.FinerBalance.class::isInstance)
                .containsExactly(new WindowOpening.FinerBalance(Amount.mass("0.05 g")))
                .extracting(opening -> opening.phrase().toString())
                .containsExactly("a balance with d = 0.05 g");
    }
}
