/**
 * Solutions: strengths of stocks, diluting and blending them, ethanol with water, acids and bases at a pH.
 *
 * <p>Masses add, volumes of liquids that contract do not: a strength by volume becomes one by mass through a density, and only then is
 * anything blended. What rests on a model says so beside the number.
 */
@NullMarked
package io.github.formulationmath.solution;

import org.jspecify.annotations.NullMarked;
