package io.github.formulationmath.support;

import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;

/** By the table that ships, of 2024, and the worst case. */
public final class Checkers {

    public static final Product FACE_CREAM =
            Product.leaveOn().on("face").ofKind("face_cream").inForm("cream");

    /** Of what stays on the skin, wherever. */
    public static final LimitChecker LEAVE_ON = of(Product.leaveOn());

    private Checkers() {}

    public static LimitChecker of(Product product) {
        return LimitChecker.of(LimitTable.eu2024February(), product, DecisionRule.worstCase());
    }
}
