package io.github.formulationmath.limit;

/** One field with the place where it begins. */
record CsvField(String text, int line, int column) {

    LimitTableException wrong(String what) {
        return new LimitTableException(what, line, column);
    }
}
