package io.github.formulationmath.falsefine;

/** A case whose answer is known before anybody is asked. */
interface Proven {

    /** The inequality between whole numbers by which the case is wrong, or right. */
    boolean holds();
}
