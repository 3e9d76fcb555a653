package io.github.formulationmath.limit;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads comma-separated values strictly as RFC 4180 writes them: a field that holds a comma, a quote or a line end stands
 * in quotes, a quote in it is doubled. Lines end with LF or CR LF. Lines that begin with {@code #} may stand at the head.
 *
 * <p>Nothing is repaired. Fields, lines and the file are bounded, so that no input can fill the memory.
 */
final class CsvReader {

    static final int MAX_FIELD = 20_000;
    static final int MAX_FIELDS = 100;
    static final int MAX_RECORDS = 50_000;

    private static final int END = -1;

    private final Reader reader;
    private final List<String> comments = new ArrayList<>();
    private int line = 1;
    private int column = 1;
    private int next;
    private int records;

    CsvReader(Reader reader) throws IOException {
        this.reader = reader;
        this.next = reader.read();
        if (next == '\ufeff') {
            throw wrong("the file begins with a byte order mark: save it as UTF-8 without one");
        }
        while (next == '#') {
            comments.add(comment());
        }
    }

    /** The lines at the head that begin with {@code #}, without it. */
    List<String> comments() {
        return comments;
    }

    boolean hasNext() {
        return next != END;
    }

    /** The next line's fields. */
    List<CsvField> next() throws IOException {
        if (++records > MAX_RECORDS) {
            throw wrong("more than " + MAX_RECORDS + " rows: split the table");
        }
        List<CsvField> fields = new ArrayList<>();
        do {
            if (fields.size() == MAX_FIELDS) {
                throw wrong("more than " + MAX_FIELDS + " fields in a row");
            }
            fields.add(next == '"' ? quoted() : plain());
        } while (skipComma());
        endOfLine();
        return fields;
    }

    private String comment() throws IOException {
        advance();
        StringBuilder text = new StringBuilder();
        while (next != END && next != '\n' && next != '\r') {
            append(text);
        }
        endOfLine();
        return text.toString().strip();
    }

    private CsvField plain() throws IOException {
        int startLine = line;
        int startColumn = column;
        StringBuilder text = new StringBuilder();
        while (next != END && next != ',' && next != '\n' && next != '\r') {
            if (next == '"') {
                throw wrong(
                        "a quote inside a field that does not begin with one: put the field in quotes and double it");
            }
            append(text);
        }
        return new CsvField(text.toString(), startLine, startColumn);
    }

    private CsvField quoted() throws IOException {
        int startLine = line;
        int startColumn = column;
        StringBuilder text = new StringBuilder();
        advance();
        while (true) {
            if (next == END) {
                throw new LimitTableException("this quote is never closed", startLine, startColumn);
            }
            if (next == '"') {
                advance();
                if (next != '"') {
                    break;
                }
            }
            append(text);
        }
        if (next != END && next != ',' && next != '\n' && next != '\r') {
            throw wrong("text after the closing quote: double the quotes inside a field");
        }
        return new CsvField(text.toString(), startLine, startColumn);
    }

    private boolean skipComma() throws IOException {
        if (next != ',') {
            return false;
        }
        advance();
        return true;
    }

    private void endOfLine() throws IOException {
        if (next == '\r') {
            advance();
            if (next != '\n') {
                throw wrong("a carriage return without a line feed");
            }
        }
        if (next == '\n') {
            advance();
        }
    }

    private void append(StringBuilder text) throws IOException {
        if (text.length() == MAX_FIELD) {
            throw wrong("a field of more than " + MAX_FIELD + " characters");
        }
        if (next < ' ' && next != '\n' && next != '\r' && next != '\t') {
            throw wrong("a control character (number " + next + "), which no text holds");
        }
        text.append((char) next);
        advance();
    }

    private void advance() throws IOException {
        if (next == '\n') {
            line++;
            column = 1;
        } else {
            column++;
        }
        next = reader.read();
    }

    private LimitTableException wrong(String what) {
        return new LimitTableException(what, line, column);
    }
}
