/**
 * Documents: formulas and records as JSON, and back, and workings as JSON for whoever checks them without Java. The only
 * room that needs Jackson, which is optional, and for reading alone.
 *
 * <p><b>What comes in:</b> values that are written down, or a text. <b>What goes out:</b> the text, or the value: {@link
 * io.github.formulationmath.json.Json} writes and reads, and a {@link io.github.formulationmath.json.Json.Read} is the value with what was
 * not understood. Numbers are exact text.
 *
 * <p>Reading order: {@link io.github.formulationmath.json.Json}, {@code FormulaDocument}, {@code RecordDocument}, {@code Node}, {@code
 * ReckonedDocument}, {@code JsonWriter}.
 *
 * <p><b>Why it is right:</b> a document is read by the same factories that made the value, so that it brings in nothing that nobody could
 * make; a mistake is told with its place, and schemas come with the library.
 */
@NullMarked
package io.github.formulationmath.json;

import org.jspecify.annotations.NullMarked;
