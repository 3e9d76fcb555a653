/**
 * What several rooms promise together, so that no one of them could be asked alone: one identity of a substance, messages of
 * a readable length, masses that belong to their formula, limits on what was made, lots from the shelf to the label.
 */
package io.github.formulationmath.promise;
