package io.github.formulationmath.promise;

import static io.github.formulationmath.support.TwoBalances.BENCH;
import static io.github.formulationmath.support.TwoBalances.PLAN;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.weighing.WeighingMethod;
import org.junit.jupiter.api.Test;

/** A limit is judged by the balance that the line is weighed on. */
class LimitsByBalanceTest {

    /** 0.98 g within 0.2 g, or within 0.02 g, against 1 % (Regulation (EC) No 1223/2009, Annex V, entry 29). */
    @Test
    void a_limit_is_judged_by_the_balance_of_the_line() {
        LimitChecker checker = Checkers.of(Product.leaveOn().on("face"));
        WeighingPlan coarse = WeighingPlan.of(PLAN.batch(), BENCH);
        assertThat(conformity(checker, coarse)).isNotEqualTo(Conformity.WITHIN);
        assertThat(conformity(checker, PLAN)).isEqualTo(Conformity.WITHIN);
    }

    private static Conformity conformity(LimitChecker checker, WeighingPlan plan) {
        return checker.check(ExpectedProduct.of(plan, WeighingMethod.TARE_EACH))
                .verdict("EU-V-29")
                .orElseThrow()
                .conformity();
    }
}
