package io.github.formulationmath.working;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One line of arithmetic, in no format yet.
 *
 * @param left what stands before the sign; null on a line that continues the one above
 * @param sign = or ≈, or the sign of a comparison
 * @param right what stands after the sign
 * @param outcome words after the line; empty for none
 */
record Line(@Nullable Consumer<Notation> left, String sign, Consumer<Notation> right, String outcome) {

    static Line first(Consumer<Notation> left, String sign, Consumer<Notation> right) {
        return new Line(left, sign, right, "");
    }

    static Line next(String sign, Consumer<Notation> right) {
        return new Line(null, sign, right, "");
    }

    boolean continuesLineAbove() {
        return left == null;
    }

    void writeTo(Notation out) {
        if (left != null) {
            left.accept(out);
        }
        out.relation(sign);
        right.accept(out);
    }
}
