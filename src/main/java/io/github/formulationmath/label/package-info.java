/**
 * What the label has to say: the list of ingredients in its order, and net contents.
 *
 * <p><b>What comes in:</b> a formula as written, or what was weighed. <b>What goes out:</b> {@link
 * io.github.formulationmath.label.IngredientList} with what is doubtful in its order, {@link io.github.formulationmath.label.NetContents}.
 *
 * <p>Reading order: {@link io.github.formulationmath.label.Label}, {@link io.github.formulationmath.label.LabelRule}, {@link
 * io.github.formulationmath.label.IngredientList}.
 *
 * <p><b>Why it is right:</b> materials are broken up into their substances before anything is put in order, equal names are merged, and
 * shares are compared exactly; a place that the errors of the balance leave open is told. A list defers to the law where the product is sold and to a qualified safety assessment.
 */
@NullMarked
package io.github.formulationmath.label;

import org.jspecify.annotations.NullMarked;
