/**
 * Soap: what alkali fats can take, how much is weighed, and whether any hydroxide is left.
 *
 * <p>In come fats with the ranges of their saponification values, grades of alkali with the ranges of their hydroxide, acids, and what
 * was weighed. Out come the alkali and the water to weigh, the interval of fat that stays unsaponified, and the judgement
 * whether hydroxide is left, each with what it rests on and what it does not cover.
 */
@NullMarked
package io.github.formulationmath.soap;

import org.jspecify.annotations.NullMarked;
