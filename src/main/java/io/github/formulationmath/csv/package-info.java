/**
 * Comma-separated values, read and written: the one home of RFC 4180 (common format for comma-separated values) in this
 * library.
 *
 * <p><b>What comes in:</b> a text that somebody else wrote, so nothing of it is trusted and nothing is repaired. <b>What goes
 * out:</b> its fields, each with its place; and the other way, lines of text:
 *
 * <pre>
 * bytes --Utf8Reader--> characters --CsvReader--> fields --CsvFormat--> CsvTable of CsvRows of CsvFields
 *                                                                     any step --> CsvException with its place
 * cells --CsvWriter--> a line of text, no cell of which is a formula for a spreadsheet
 * </pre>
 *
 * <p>Reading order: {@link io.github.formulationmath.csv.CsvFormat} says what a file must look like, and reads it; {@link
 * io.github.formulationmath.csv.CsvFormat.Table}, {@link io.github.formulationmath.csv.CsvRow} and {@link
 * io.github.formulationmath.csv.CsvRow.Field} are what was read, each field with its place; {@link
 * io.github.formulationmath.csv.CsvException} is every complaint, of this room or of who makes something of a field; {@link
 * io.github.formulationmath.csv.CsvWriter} is the way out.
 *
 * <p><b>Why it is right, and cannot hang:</b> the reader looks at each character once and one ahead, and each of a field, a row, a table and the
 * whole text is refused as soon as it is longer than its bound. Why a place is right: line and column are counted by the one
 * method that takes a character, and a field keeps where it began.
 *
 * <p>Users need {@link io.github.formulationmath.csv.CsvException}, and {@link io.github.formulationmath.csv.CsvWriter} to
 * have back what a sheet guarded. Public only to cross the wall: {@link io.github.formulationmath.csv.CsvFormat}, {@link
 * io.github.formulationmath.csv.CsvFormat.Table}, {@link io.github.formulationmath.csv.CsvRow} and {@link
 * io.github.formulationmath.csv.CsvRow.Field}, since every room with tables of its
 * own columns reads them through these.
 */
@NullMarked
package io.github.formulationmath.csv;

import org.jspecify.annotations.NullMarked;
