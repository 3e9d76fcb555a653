/**
 * What is printed: batch sheets and reports as text, Markdown, HTML and CSV.
 *
 * <p>Reading order: {@link io.github.formulationmath.sheet.BatchSheet}, {@link
 * io.github.formulationmath.sheet.SheetFormat}. All sheets are put together from the same few blocks (a list of facts, a
 * table, a remark, a caution), so that they look alike in every format; all words come from the {@link
 * io.github.formulationmath.working.Wording}.
 *
 * <p>May depend on everything; nothing depends on it.
 */
@NullMarked
package io.github.formulationmath.sheet;

import org.jspecify.annotations.NullMarked;
