/**
 * Soap: what alkali fats can take, how much is weighed, and whether any hydroxide is left.
 *
 * <p><b>What comes in:</b> fats with the ranges of their saponification values, grades of alkali with the ranges of their hydroxide, acids, and what
 * was weighed. <b>What goes out:</b> the alkali and the water to weigh, the interval of fat that stays unsaponified, and the judgement
 * whether hydroxide is left, each with what it rests on and what it does not cover.
 *
 * <p>Reading order: {@link io.github.formulationmath.soap.Fat}, {@link io.github.formulationmath.soap.AlkaliGrade}, {@link
 * io.github.formulationmath.soap.LyeCalculation} (what to weigh), {@link io.github.formulationmath.soap.Soap} (a formula with its lines
 * declared), {@link io.github.formulationmath.soap.AlkaliBalance} (the judgement). In the house a soap is asked like any other formula:
 * {@link io.github.formulationmath.soap.Soap#shortfallWithin} is a criterion of batch sizes, {@link
 * io.github.formulationmath.soap.Soap#leaving} a condition of mending; both are the one weighted sum of {@code ShortfallEnd}.
 *
 * <p><b>Why it is right:</b> what is left is a weighted sum of the masses in which every figure stands at the end of its range that does
 * the most harm, so that a judgement called sure holds for every lot and every error of the balances; a line that nothing is said
 * of leaves the judgement open.
 */
@NullMarked
package io.github.formulationmath.soap;

import org.jspecify.annotations.NullMarked;
