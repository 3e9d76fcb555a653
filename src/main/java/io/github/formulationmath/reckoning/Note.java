package io.github.formulationmath.reckoning;

/**
 * An assumption or a remark.
 *
 * @param phrase the words
 */
public record Note(Phrase phrase) implements Entry {}
