package io.github.formulationmath.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.Serial;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;

/**
 * Decodes UTF-8 and gives every character before the first byte that is none. The reader of the JDK throws away what it
 * decoded together with that byte, so that nobody can say where the byte stands.
 */
final class Utf8Reader extends Reader {

    private final InputStream in;

    /** A new decoder reports what it cannot decode. */
    private final CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();

    private final ByteBuffer bytes = ByteBuffer.allocate(8192).limit(0);
    private boolean ended;

    Utf8Reader(InputStream in) {
        this.in = in;
    }

    /** What follows is not in UTF-8. */
    static final class Malformed extends CharacterCodingException {
        @Serial
        private static final long serialVersionUID = 1L;
    }

    /** {@inheritDoc} The array must have room for a character of two halves, as that of a {@code BufferedReader} has. */
    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
        CharBuffer chars = CharBuffer.wrap(buffer, offset, length);
        CoderResult result = decoder.decode(bytes, chars, ended);
        while (chars.position() == 0 && result.isUnderflow() && !ended) {
            fill();
            result = decoder.decode(bytes, chars, ended);
        }
        if (chars.position() > 0) {
            return chars.position();
        }
        if (result.isError()) {
            throw new Malformed();
        }
        return -1;
    }

    private void fill() throws IOException {
        bytes.compact();
        int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
        ended = count < 0;
        bytes.position(bytes.position() + Math.max(count, 0)).flip();
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
