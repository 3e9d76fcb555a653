package io.github.formulationmath.record;

import java.io.IOException;
import java.io.Writer;

/** Refuses to write what could not be read again. */
final class JsonLimitedWriter extends Writer {

    private final Writer to;
    private final String what;
    private final String remedy;
    private long written;

    JsonLimitedWriter(Writer to, String what, String remedy) {
        this.to = to;
        this.what = what;
        this.remedy = remedy;
    }

    @Override
    public void write(char[] buffer, int from, int length) throws IOException {
        written += length;
        if (written > JsonText.MAX_CHARACTERS) {
            throw new IllegalArgumentException(
                    what + " takes more than " + JsonText.MAX_CHARACTERS + " characters: " + remedy);
        }
        to.write(buffer, from, length);
    }

    @Override
    public void flush() throws IOException {
        to.flush();
    }

    @Override
    public void close() throws IOException {
        to.flush();
    }
}
