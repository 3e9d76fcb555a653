package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.security.CodeSource;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** No public method takes a formula and, beside it, masses that could be another formula's. */
class MassesBelongToTheirFormulaTest {

    /** Every spelling that must be found; the first is the one that the library once had. */
    public interface Forbidden {
        void check(Formula formula, MadeMasses masses);

        void list(Formula formula, List<Amount<Mass>> masses);

        void collection(Collection<? extends Addition> masses, Formula formula);

        void map(Formula formula, Map<Integer, Ratio> byPosition);

        void varargs(Formula formula, Ratio... grams);

        void generic(Batch batch, Amount<Mass>[] masses);

        void primitive(WeighingPlan plan, double[] grams);

        void function(Formula formula, Function<FormulaLine, Amount<Mass>> masses);

        void nested(Formula formula, List<List<Ratio>> grams);
    }

    /** What is no such thing. */
    public interface Permitted {
        void weighed(Weighed weighed);

        void one(Formula formula, Amount<Mass> whole);

        void masses(List<Addition> additions);

        void formulas(List<Formula> formulas, Ratio share);
    }

    @Test
    void the_library_has_no_door_for_stray_masses() {
        CodeSource library = Formula.class.getProtectionDomain().getCodeSource();
        List<Class<?>> types = new ClassFileImporter()
                .importPackages(Ladder.ROOT).stream()
                        .filter(type -> !type.isAnonymousClass())
                        .<Class<?>>map(JavaClass::reflect)
                        .filter(type ->
                                library.equals(type.getProtectionDomain().getCodeSource()))
                        .toList();
        assertThat(types).hasSizeGreaterThan(300).contains(Weighed.class);
        assertThat(NoStrayMasses.in(types)).isEmpty();
    }

    @Test
    void the_rule_sees_every_spelling() {
        assertThat(NoStrayMasses.in(List.of(Forbidden.class)))
                .hasSize(Forbidden.class.getDeclaredMethods().length)
                .anyMatch(found -> found.contains("check"));
        assertThat(NoStrayMasses.in(List.of(Permitted.class))).isEmpty();
    }
}
