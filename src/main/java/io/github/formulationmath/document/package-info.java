/**
 * Documents: what is said to a reader, before it is text in some format.
 *
 * <p>Workings, sheets, labels, reports and worksheets for teachers all become a {@link
 * io.github.formulationmath.document.Document} and print through it, so that there is one way in which a name is made
 * harmless, a page tells its language and a column is as wide as its letters.
 *
 * <pre>
 *   words, numbers as text              Expression  (numbers, symbols, sums, roots, relations, blanks to fill in)
 *            \                              /
 *             Document: title, language, blocks in order          each text is cleaned here, once
 *                            |
 *                    Format.print(document)
 *        /          /          |          \          \
 *      text     Markdown     HTML       LaTeX       CSV           one writer, one file each
 * </pre>
 *
 * <p><b>What comes in:</b> final words and final numbers: nothing is looked up, rounded or translated here. <b>What goes
 * out:</b> a text in one {@link io.github.formulationmath.document.Format}; lines end with a line feed, in CSV with carriage
 * return and line feed. Only CSV has no place for all blocks, and {@code leftOut} tells which.
 *
 * <p><b>Reading order:</b> {@link io.github.formulationmath.document.Document}, {@code Block} (the kinds of blocks; each
 * cleans its texts when it is made), {@link io.github.formulationmath.document.Expression} and {@code ExpressionNode} (the tree of a
 * formula), {@link io.github.formulationmath.document.Format}, then {@code Writer}, {@code PageWriter} and the writers. {@code Notation}
 * walks a formula and sets its brackets; a writer says how each sign looks.
 *
 * <p><b>A new format</b> is one writer, with a notation if formulas are more than a line of text there, and one line in {@code Format}.
 *
 * <p><b>Why it is right:</b> a block that is not known to a writer does not compile away, it fails the tests of all kinds of
 * blocks; texts are data until a writer escapes them, and hostile names are among the tests of every format; whatever
 * arithmetic is printed is read back from text, Markdown, LaTeX and HTML and evaluated by an oracle that shares no code.
 *
 * <p>It uses {@code csv}, and nothing else of the library.
 */
@NullMarked
package io.github.formulationmath.document;

import org.jspecify.annotations.NullMarked;
