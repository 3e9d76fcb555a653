package io.github.formulationmath.size;

/**
 * A criterion that looks at what is weighed, whatever is in it: it is right as well for a line weighed as a dilution. That of
 * a cap is not, for a dilution holds less of the substance than its line.
 */
interface OfWeighings extends Criterion {}
