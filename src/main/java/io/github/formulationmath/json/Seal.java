package io.github.formulationmath.json;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * The SHA-256 of a document (FIPS 180-4, in hexadecimal) over the UTF-8 of its canonical form (RFC 8785) without the field
 * that holds it. It shows a slip of the pen or of a program, not a forgery: whoever changes the text on purpose can seal it
 * anew.
 */
final class Seal {

    private static final String FIELD = "sha256";

    private Seal() {}

    /** The document with its seal as the last field. */
    static Written on(Written document) {
        return document.with(FIELD, of(document));
    }

    private static String of(Written document) {
        try {
            StringWriter text = new StringWriter();
            JsonWriter.writeCanonical(document, text);
            ByteBuffer bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text.getBuffer()));
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(bytes);
            return HexFormat.of().formatHex(digest.digest());
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException(
                    "a text of the working holds half of a surrogate pair, which is no character: mend the name", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
