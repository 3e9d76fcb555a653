package io.github.formulationmath.document;

/** Text in a fixed number of columns, as a terminal shows it. */
final class Columns {

    static final int PAGE = 80;

    /** Ends a line whose last word goes on in the next one. */
    static final String BROKEN = "\\";

    private Columns() {}

    /** The columns that a text takes. */
    static int width(CharSequence text) {
        return text.codePoints().map(Columns::width).sum();
    }

    static int width(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK || type == Character.FORMAT) {
            return 0;
        }
        return isWide(c) ? 2 : 1;
    }

    private static boolean isWide(int c) {
        return c >= 0x1100
                && (c <= 0x115F
                        || c >= 0x2E80 && c <= 0xA4CF
                        || c >= 0xAC00 && c <= 0xD7A3
                        || c >= 0xF900 && c <= 0xFAFF
                        || c >= 0xFE30 && c <= 0xFE6F
                        || c >= 0xFF00 && c <= 0xFF60
                        || c >= 0xFFE0 && c <= 0xFFE6
                        || c >= 0x1F300 && c <= 0x1FAFF
                        || c >= 0x20000 && c <= 0x3FFFD);
    }

    /**
     * Fills lines.
     *
     * @param out where to
     * @param first what the first line begins with
     * @param rest what the other lines begin with
     * @param text the text; it may be broken at each {@code separator}
     * @param separator a space for words; a line end, printed as a space, for formulas
     */
    static void fill(StringBuilder out, String first, String rest, String text, char separator) {
        Filler filler = new Filler(out, rest);
        filler.begin(first);
        int from = 0;
        while (from <= text.length()) {
            int to = text.indexOf(separator, from);
            to = to < 0 ? text.length() : to;
            filler.word(text.substring(from, to));
            from = to + 1;
        }
        out.append('\n');
    }

    private static final class Filler {

        private final StringBuilder out;
        private final String indent;
        private int column;
        private boolean atStart;

        Filler(StringBuilder out, String indent) {
            this.out = out;
            this.indent = indent;
        }

        void begin(String prefix) {
            out.append(prefix);
            column = width(prefix);
            atStart = true;
        }

        void word(String word) {
            int needed = width(word);
            if (!atStart && column + 1 + needed > PAGE) {
                newLine();
            } else if (!atStart) {
                out.append(' ');
                column++;
            }
            if (column + needed <= PAGE) {
                out.append(word);
                column += needed;
            } else {
                pieces(word);
            }
            atStart = false;
        }

        /** A word longer than a line. */
        private void pieces(String word) {
            word.codePoints().forEach(c -> {
                if (column + width(c) >= PAGE) {
                    out.append(c == ' ' ? "" : BROKEN);
                    newLine();
                    if (c == ' ') {
                        return;
                    }
                }
                out.appendCodePoint(c);
                column += width(c);
            });
        }

        private void newLine() {
            out.append('\n');
            begin(indent);
        }
    }
}
