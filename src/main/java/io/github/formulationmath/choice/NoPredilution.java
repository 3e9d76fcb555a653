package io.github.formulationmath.choice;

import io.github.formulationmath.reckoning.Phrase;

/**
 * Why a line is not pre-diluted: it is large enough as it is, or the line that should give the diluent is too small.
 *
 * @param reason the reason in words
 */
public record NoPredilution(Phrase reason) implements Predilution {}
