package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.chemistry.AtomicMasses;
import io.github.formulationmath.chemistry.GravimetricFactor;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Wording;
import java.io.Reader;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Null is refused at every door of the two packages, by the name of the argument. */
class LimitNullsAreRefusedTest {

    private static final Formula FORMULA = Formula.inPercent("F")
            .quantitySufficient("Aqua")
            .line("Phenoxyethanol", "0.9 %")
            .build();
    private static final Weighed WEIGHED =
            HandWeighed.exactly(FORMULA, "20 g", Balance.of("0.1 g", "1 kg"), WeighingMethod.TARE_EACH);
    private static final LimitChecker CHECKER =
            LimitChecker.of(LimitTable.eu2024May(), Product.leaveOn(), DecisionRule.worstCase());
    private static final LimitReport REPORT = CHECKER.check(WEIGHED);

    private static Map<Class<?>, Object> samples() {
        Map<Class<?>, Object> samples = new HashMap<>();
        samples.put(String.class, "EU-V-29");
        samples.put(String[].class, new String[] {"face"});
        samples.put(int.class, 1);
        samples.put(boolean.class, true);
        samples.put(Ratio.class, Ratio.ONE);
        samples.put(MassFraction.class, MassFraction.ofPercent("1"));
        samples.put(Amount.class, Amount.mass("1 g"));
        samples.put(Density.class, Density.ofGramsPerMillilitre("1"));
        samples.put(Source.class, Source.user());
        samples.put(Map.class, Map.of("H", Ratio.ONE));
        samples.put(List.class, List.of());
        samples.put(Path.class, Path.of("x"));
        samples.put(Reader.class, new StringReader(""));
        samples.put(LocalDate.class, LocalDate.EPOCH);
        samples.put(Bounds.class, Bounds.point(Ratio.ONE));
        samples.put(Wording.class, Wording.english());
        samples.put(Formula.class, FORMULA);
        samples.put(FormulaLine.class, FORMULA.line("Phenoxyethanol"));
        samples.put(Substance.class, Substance.of("Aqua"));
        samples.put(Weighed.class, WEIGHED);
        samples.put(MolecularFormula.class, MolecularFormula.parse("H2O"));
        samples.put(MolarMass.class, MolarMass.of(MolecularFormula.parse("H2O")));
        samples.put(AtomicMasses.class, AtomicMasses.iupac2007());
        samples.put(SubstanceGroup.class, SubstanceGroup.of("Aqua"));
        samples.put(LimitKind.class, LimitKind.MAXIMUM);
        samples.put(SumRule.class, SumRule.SUM);
        samples.put(LimitBasis.class, LimitBasis.active());
        samples.put(Scope.class, Scope.any());
        samples.put(Citation.class, Citation.of("x", LocalDate.EPOCH));
        samples.put(EntryText.class, EntryText.NONE);
        samples.put(Product.class, Product.leaveOn());
        samples.put(DecisionRule.class, DecisionRule.worstCase());
        samples.put(LimitTable.class, LimitTable.eu2024May());
        samples.put(ProductWords.class, LimitTable.eu2024May().words());
        samples.put(LimitReport.class, REPORT);
        samples.put(LabelRule.class, LabelRule.eu());
        return samples;
    }

    @Test
    void every_public_door_refuses_null() throws IllegalAccessException {
        NullTester tester = new NullTester(samples());
        IngredientList list = Label.of(LabelRule.eu()).list(WEIGHED);
        Object[] instances = {
            MolecularFormula.parse("H2O"),
            AtomicMasses.iupac2007(),
            MolarMass.of(MolecularFormula.parse("H2O")),
            GravimetricFactor.of(MolecularFormula.parse("H2O"), MolecularFormula.parse("H2O")),
            LimitBasis.active(),
            GroupMember.of(Substance.of("Aqua")),
            SubstanceGroup.of("Aqua"),
            Citation.of("x", LocalDate.EPOCH),
            EntryText.NONE,
            LimitTable.eu2024May().limits().get(0),
            Scope.any(),
            Product.leaveOn(),
            LimitTable.eu2024May(),
            DecisionRule.worstCase(),
            Conformance.of(Bounds.all(), Ratio.ONE, Ratio.ONE),
            GlobalRisk.ofNormal(Ratio.ONE, Ratio.ONE, Ratio.ONE, Ratio.ONE, Ratio.ONE),
            CHECKER,
            REPORT,
            REPORT.binding().orElseThrow(),
            LabelRule.eu(),
            Label.of(LabelRule.eu()),
            list,
            list.all().get(0),
            NetContents.byMass(Amount.mass("10 g"), Amount.mass("1 g"))
        };
        SoftAssertions softly = new SoftAssertions();
        int[] tries = {0};
        for (Object instance : instances) {
            softly.check(() -> tries[0] += tester.test(instance.getClass(), instance));
        }
        softly.assertAll();
        assertThat(tries[0]).isGreaterThan(90);
    }
}
