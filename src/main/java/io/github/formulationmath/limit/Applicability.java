package io.github.formulationmath.limit;

/** Whether a limit is meant for a product. */
public enum Applicability {
    /** It is. */
    APPLIES,
    /** It depends on something the product did not state: the area it is for, its kind, or its form. */
    MAY_APPLY,
    /** It is meant for other products. */
    OUT_OF_SCOPE;

    Applicability and(Applicability other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
