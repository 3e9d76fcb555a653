package io.github.formulationmath.guide;

import java.util.List;
import java.util.Optional;

/**
 * A fenced block of a page.
 *
 * @param info what stands behind the opening fence, for example {@code java} or {@code kotlin file=src/it/…}
 * @param firstLine the number of the opening line, counted from 0
 * @param content the lines between the fences
 */
record Fence(String info, int firstLine, List<String> content) {

    String language() {
        return info.split(" ", 2)[0];
    }

    /** The lines as they would be printed, each ended by a line feed. */
    String text() {
        return content.isEmpty() ? "" : String.join("\n", content) + "\n";
    }

    /** The file that holds this block word for word, if the block says so. */
    Optional<String> file() {
        int at = info.indexOf("file=");
        return at < 0
                ? Optional.empty()
                : Optional.of(info.substring(at + "file=".length()).strip());
    }

    /** Whether names of earlier blocks are forgotten before this one. */
    boolean startsAnew() {
        return info.contains(" new");
    }

    int lastLine() {
        return firstLine + content.size() + 1;
    }
}
