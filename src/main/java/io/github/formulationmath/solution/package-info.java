/**
 * Solutions: strengths of stocks, diluting and blending them, ethanol with water, acids and bases at a pH.
 *
 * <p><b>What comes in:</b> stocks with their strengths as ranges; acids with constants that were measured, concentrations, a pH. <b>What
 * goes out:</b> how much of each stock to blend, the contraction of ethanol with water, the enclosed pH of a solution, the share of an
 * acid that has kept its protons.
 *
 * <p>Reading order: {@link io.github.formulationmath.solution.Stock}, {@link io.github.formulationmath.solution.Alligation}, {@link
 * io.github.formulationmath.solution.StrengthBlend}, {@link io.github.formulationmath.solution.DilutionSeries}; {@link
 * io.github.formulationmath.solution.EthanolWater}, {@link io.github.formulationmath.solution.AlcoholDilution}; {@link
 * io.github.formulationmath.solution.Ph}, {@link io.github.formulationmath.solution.AcidConstants}, {@link
 * io.github.formulationmath.solution.UndissociatedShare}, {@link io.github.formulationmath.solution.ChargeBalance}, {@link
 * io.github.formulationmath.solution.Neutralisation}.
 *
 * <p><b>Why it is right:</b> blends are programs solved exactly, with their proof; powers of ten are enclosed, and a pH is the root of a
 * sum that falls throughout, halved with a sign that is certain. Masses add, volumes of liquids that contract do not: a strength by volume becomes one by mass through a density, and only then is
 * anything blended. What rests on a model says so beside the number.
 */
@NullMarked
package io.github.formulationmath.solution;

import org.jspecify.annotations.NullMarked;
