/**
 * What lies on the bench and goes into the file: the batch sheet, the record sheet, the words of a label.
 *
 * <pre>
 *   WeighingPlan, ExpectedProduct ── BatchSheet  ──\
 *   BatchRecord                   ── RecordSheet ─── Document ── in any format
 *   BatchRecord, IngredientList   ── LabelText   ──/
 * </pre>
 *
 * <p><b>What comes in:</b> a plan, a record, and the {@link io.github.formulationmath.reckoning.Wording}. <b>What goes out:</b> a
 * {@link io.github.formulationmath.document.Document}; nothing is computed here, numbers are only put into words.
 *
 * <p><b>Reading order:</b> {@link io.github.formulationmath.sheet.BatchSheet}, {@link
 * io.github.formulationmath.sheet.RecordSheet}, {@link io.github.formulationmath.sheet.LabelText}, {@code SheetNumbers}.
 *
 * <p><b>Why it is right:</b> a reading keeps the zeros of its display, a guaranteed interval is rounded outwards, all other
 * numbers are {@link io.github.formulationmath.number.NumberText}; what a line cannot do is said in words below the tables,
 * never by leaving it out.
 *
 * <p>Nothing depends on this room.
 */
@NullMarked
package io.github.formulationmath.sheet;

import org.jspecify.annotations.NullMarked;
