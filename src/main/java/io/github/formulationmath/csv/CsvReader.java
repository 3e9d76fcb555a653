package io.github.formulationmath.csv;

import io.github.formulationmath.number.Refusal.Place;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads comma-separated values strictly as RFC 4180 writes them: a field that holds a comma, a quote or a line end stands
 * in quotes, a quote in it is doubled. Lines end with LF or CR LF. A byte order mark at the beginning says how the text is
 * written, and is no part of it.
 *
 * <p>Nothing is repaired. Fields, rows, their number and the whole text are bounded, so that no input can fill the memory.
 */
final class CsvReader {

    static final int MAX_FIELD = 20_000;
    static final int MAX_FIELDS = 100;
    static final int MAX_RECORDS = 50_000;

    private static final int END = -1;
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private final String file;
    private final Reader reader;
    private final int longest;

    /** What was read ahead, from the character behind {@link #next} on. */
    private final char[] ahead = new char[8192];

    private int at;
    private int end;
    private int taken;
    private int records;

    /** The place of {@link #next}. */
    private int line = 1;

    private int column = 1;
    private int next;

    /** The place where the field or comment that is being read begins. */
    private Place start;

    CsvReader(String file, Reader text, int longest) throws IOException {
        this.file = file;
        this.reader = text;
        this.longest = longest;
        this.start = here();
        take();
        if (next == BYTE_ORDER_MARK) {
            take();
        }
    }

    /** The lines at the head that begin with {@code #}, without it. */
    List<String> comments() throws IOException {
        List<String> comments = new ArrayList<>();
        while (next == '#') {
            begin();
            advance();
            StringBuilder text = new StringBuilder();
            while (next != END && next != '\n' && next != '\r') {
                append(text);
            }
            endOfLine();
            comments.add(text.toString().strip());
        }
        return comments;
    }

    boolean hasNext() {
        return next != END;
    }

    /** The next line's fields, with the names of their columns as far as there are any. */
    List<CsvRow.Field> next(List<String> columns) throws IOException {
        if (++records > MAX_RECORDS) {
            throw wrong("more than " + MAX_RECORDS + " rows: split the table");
        }
        List<CsvRow.Field> fields = new ArrayList<>();
        fields.add(field(columns, 0));
        while (next == ',') {
            advance();
            if (fields.size() == MAX_FIELDS) {
                throw wrong("more than " + MAX_FIELDS + " fields in a row: end each row with a line end");
            }
            fields.add(field(columns, fields.size()));
        }
        endOfLine();
        return fields;
    }

    CsvException wrong(String what) {
        return new CsvException(here(), what);
    }

    private CsvRow.Field field(List<String> columns, int place) throws IOException {
        begin();
        String text = next == '"' ? quoted() : plain();
        return new CsvRow.Field(start, place < columns.size() ? columns.get(place) : "", text);
    }

    private String plain() throws IOException {
        int last = at;
        while (last < end && isOrdinary(ahead[last])) {
            last++;
        }
        int length = last - at + 1;
        boolean whole = last < end && (ahead[last] == ',' || ahead[last] == '\n');
        if (whole && isOrdinary((char) next) && length <= MAX_FIELD && taken + length <= longest) {
            return runTo(last, length);
        }
        StringBuilder text = new StringBuilder();
        while (!endsField()) {
            if (next == '"') {
                throw wrong(
                        "a quote inside a field that does not begin with one: put the field in quotes and double it");
            }
            append(text);
        }
        return text.toString();
    }

    /** The field from {@link #next} on that ends, without anything to look at, before a place in what was read ahead. */
    private String runTo(int last, int length) {
        String text = new String(ahead, at - 1, length);
        column += length;
        taken += length;
        next = ahead[last];
        at = last + 1;
        return text;
    }

    private String quoted() throws IOException {
        StringBuilder text = new StringBuilder();
        advance();
        while (true) {
            if (next == END) {
                throw wrongFromStart("this quote is never closed: write one more where the field ends");
            }
            if (next == '"') {
                advance();
                if (next != '"') {
                    break;
                }
            }
            append(text);
        }
        if (!endsField()) {
            throw wrong("text after the closing quote: expected a comma or the end of the line; double the quotes "
                    + "inside a field");
        }
        return text.toString();
    }

    private boolean endsField() {
        return next == END || next == ',' || next == '\n' || next == '\r';
    }

    private void endOfLine() throws IOException {
        if (next == '\r') {
            advance();
            if (next != '\n') {
                throw wrong("a carriage return without a line feed: end lines with LF or CR LF");
            }
        }
        if (next == '\n') {
            advance();
        }
    }

    private void append(StringBuilder text) throws IOException {
        if (text.length() == MAX_FIELD) {
            throw wrongFromStart("a field longer than " + MAX_FIELD + " characters: shorten it, or close its quote");
        }
        if (Character.isISOControl(next) && next != '\n' && next != '\r' && next != '\t') {
            throw wrong("a control character (number " + next + "), which no text holds: take it out");
        }
        int from = at;
        int most = Math.min(end, at + Math.min(MAX_FIELD - 1 - text.length(), longest - taken));
        while (at < most && isOrdinary(ahead[at])) {
            at++;
        }
        text.append((char) next).append(ahead, from, at - from);
        place((char) next);
        column += at - from;
        taken += at - from;
        take();
    }

    /** What ends nothing, is refused nowhere and takes one column, so that a run of them is taken at once. */
    private static boolean isOrdinary(char c) {
        return c >= ' ' && c <= '~' && c != ',' && c != '"';
    }

    private Place here() {
        return new Place(file, line, column);
    }

    private void begin() {
        start = here();
    }

    /** The only place where lines and columns are counted; two halves of a character are one column. */
    private void advance() throws IOException {
        place((char) next);
        take();
    }

    /** Counts the place behind a character. */
    private void place(char passed) {
        if (passed == '\n') {
            line++;
            column = 1;
        } else if (!Character.isLowSurrogate(passed)) {
            column++;
        }
    }

    private void take() throws IOException {
        try {
            if (at == end) {
                end = Math.max(reader.read(ahead), 0);
                at = 0;
            }
            next = end == 0 ? END : ahead[at++];
        } catch (Utf8Reader.Malformed e) {
            throw wrong("from here on the file is not in UTF-8: save it as CSV in UTF-8");
        }
        if (next != END && taken++ == longest) {
            throw wrong("the text is longer than " + longest + " characters: split the table");
        }
    }

    private CsvException wrongFromStart(String what) {
        return new CsvException(start, what);
    }
}
