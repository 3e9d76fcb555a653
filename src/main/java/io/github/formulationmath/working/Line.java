package io.github.formulationmath.working;

import java.util.function.Consumer;

/**
 * One line of arithmetic, in no format yet.
 *
 * @param left what stands before the sign; writes nothing on a line that continues the one above
 * @param sign = or ≈, or the sign of a comparison
 * @param right what stands after the sign
 * @param outcome words after the line; empty for none
 */
record Line(Consumer<Notation> left, String sign, Consumer<Notation> right, String outcome) {

    private static final Consumer<Notation> NOTHING = out -> {};

    static Line first(Consumer<Notation> left, String sign, Consumer<Notation> right) {
        return new Line(left, sign, right, "");
    }

    static Line next(String sign, Consumer<Notation> right) {
        return new Line(NOTHING, sign, right, "");
    }

    boolean continuesLineAbove() {
        return left == NOTHING;
    }

    void writeTo(Notation out) {
        left.accept(out);
        out.relation(sign);
        right.accept(out);
    }
}
