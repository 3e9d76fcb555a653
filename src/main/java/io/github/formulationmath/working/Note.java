package io.github.formulationmath.working;

/**
 * An assumption or a remark.
 *
 * @param phrase the words
 */
public record Note(Phrase phrase) implements Entry {}
