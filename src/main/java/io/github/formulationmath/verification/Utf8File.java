package io.github.formulationmath.verification;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a whole file in UTF-8, and says where it stops being one. */
final class Utf8File {

    /** No character takes more bytes; one more character shows that there are too many. */
    private static final int MOST_BYTES = 4 * (Cells.MOST_CHARACTERS + 1);

    private Utf8File() {}

    static String read(Path file) throws IOException {
        ByteBuffer bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = ByteBuffer.wrap(in.readNBytes(MOST_BYTES));
        }
        // A cut in the middle of a character is one beyond the limit, where the text is refused as too long.
        boolean whole = bytes.remaining() < MOST_BYTES;
        CharBuffer text = CharBuffer.allocate(bytes.remaining() + 1);
        CoderResult result = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(bytes, text, whole);
        text.flip();
        if (result.isError()) {
            throw notUtf8(file, text.toString());
        }
        return text.toString();
    }

    private static ClaimFormatException notUtf8(Path file, String before) {
        int lineStart = before.lastIndexOf('\n') + 1;
        int mark = lineStart == 0 && !before.isEmpty() && before.charAt(0) == Cells.BYTE_ORDER_MARK ? 1 : 0;
        int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
        return new ClaimFormatException(
                line,
                before.length() - lineStart - mark + 1,
                "from here on " + file + " is not in UTF-8: save it as CSV in UTF-8");
    }
}
