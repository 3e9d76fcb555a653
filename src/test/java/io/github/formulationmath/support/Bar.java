package io.github.formulationmath.support;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.weighing.Balance;
import javax.measure.quantity.Mass;

/** A bar of three fats with 139.6 g of flakes of 97 to 99 %: 0.275 to 9.42 % of the fats stay unsaponified before any weighing. */
public final class Bar {

    public static final Source EXAMPLE = Source.published("worked example of this test", "");

    /** 97 to 99 %, with up to 2 % of carbonate. */
    public static final AlkaliGrade FLAKES = AlkaliGrade.assay(
                    Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.HYDROXIDE)
            .carbonate("0 %", "2 %", Evidence.MAXIMUM_ERROR, EXAMPLE);

    public static final Formula FORMULA = Formula.inMasses("bar")
            .line("Olive", "700 g")
            .line("Coconut", "200 g")
            .line("Shea", "100 g")
            .line("Sodium Hydroxide", "139.6 g")
            .line("Aqua", "300 g")
            .build();

    public static final Soap SOAP = Soap.of(FORMULA)
            .fat("Olive", fat("Olive", "184", "196"))
            .fat("Coconut", fat("Coconut", "248", "265"))
            .fat("Shea", fat("Shea", "160", "195"))
            .alkali("Sodium Hydroxide", FLAKES)
            .neither("Aqua");

    private Bar() {}

    /** By the least and the greatest mg KOH/g of a standard. */
    public static Fat fat(String name, String least, String greatest) {
        return Fat.triglycerides(
                name,
                SaponificationValue.ofStandard(least + " mg KOH/g", greatest + " mg KOH/g", EXAMPLE),
                InertMatter.countedInTheValue());
    }

    /** A batch of it. */
    public static WeighingPlan plan(Amount<Mass> size, Balance balance) {
        return WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass(size)), balance);
    }
}
