package io.github.formulationmath.verification;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Comma-separated values as RFC 4180 writes them: a field with a comma, a quote or a line end stands in quotes, a quote in
 * it is doubled. Nothing is repaired.
 */
final class Cells {

    static final int MOST_CHARACTERS = 1_000_000;

    static final char BYTE_ORDER_MARK = '\uFEFF';

    private final String text;
    private int at;
    private int line = 1;
    private int lineStart;

    private Cells(String text) {
        this.text = text;
    }

    /**
     * Reads all rows.
     *
     * @param reader the text
     * @param first refuses a wrong first row, before what follows it is read as if it were right; there may be none
     */
    static List<List<Cell>> read(Reader reader, Consumer<List<Cell>> first) throws IOException {
        StringBuilder text = new StringBuilder();
        char[] buffer = new char[8192];
        for (int n = reader.read(buffer); n >= 0; n = reader.read(buffer)) {
            text.append(buffer, 0, n);
            if (text.length() > MOST_CHARACTERS) {
                throw new ClaimFormatException(1, 1, "longer than " + MOST_CHARACTERS + " characters: no claim is");
            }
        }
        // What a spreadsheet puts before UTF-8 says how the file is written, and is no part of it.
        boolean marked = text.length() > 0 && text.charAt(0) == BYTE_ORDER_MARK;
        return new Cells(text.substring(marked ? 1 : 0)).rows(first);
    }

    private List<List<Cell>> rows(Consumer<List<Cell>> first) {
        List<List<Cell>> rows = new ArrayList<>();
        while (at < text.length()) {
            List<Cell> row = new ArrayList<>();
            row.add(cell());
            while (at < text.length() && text.charAt(at) == ',') {
                at++;
                row.add(cell());
            }
            endOfLine();
            rows.add(row);
            if (rows.size() == 1) {
                first.accept(row);
            }
        }
        if (rows.isEmpty()) {
            first.accept(List.of());
        }
        return rows;
    }

    private Cell cell() {
        int column = at - lineStart + 1;
        int row = line;
        String content = at < text.length() && text.charAt(at) == '"' ? quoted() : plain();
        return new Cell(content, row, column);
    }

    private String plain() {
        int from = at;
        while (at < text.length() && ",\r\n".indexOf(text.charAt(at)) < 0) {
            if (text.charAt(at) == '"') {
                throw wrong("a quote inside a field without quotes: put the field in quotes and double this one");
            }
            at++;
        }
        return text.substring(from, at);
    }

    private String quoted() {
        StringBuilder content = new StringBuilder();
        int row = line;
        int column = at - lineStart + 1;
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == '"' && (at == text.length() || text.charAt(at) != '"')) {
                return content.toString();
            }
            at += c == '"' ? 1 : 0;
            content.append(c);
            if (c == '\n') {
                line++;
                lineStart = at;
            }
        }
        throw new ClaimFormatException(row, column, "the quote is never closed");
    }

    private void endOfLine() {
        if (text.startsWith("\r\n", at)) {
            at++;
        }
        if (at < text.length() && text.charAt(at) != '\n') {
            throw wrong("expected a comma or the end of the line");
        }
        at++;
        line++;
        lineStart = at;
    }

    private ClaimFormatException wrong(String message) {
        return new ClaimFormatException(line, at - lineStart + 1, message);
    }
}
