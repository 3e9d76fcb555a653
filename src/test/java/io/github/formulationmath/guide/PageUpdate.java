package io.github.formulationmath.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes what the blocks of a page really print into the page. */
final class PageUpdate {

    private PageUpdate() {}

    /** Replaces the shown outputs of a page, and adds those that are missing, from the end to the beginning. */
    static void write(GuidePage page, List<String> outputs) {
        List<String> lines = new ArrayList<>(page.lines());
        List<Fence> blocks = page.in("java");
        for (int i = blocks.size() - 1; i >= 0; i--) {
            Fence block = blocks.get(i);
            Optional<Fence> shown = page.shownAfter(block);
            List<String> printed = outputs.get(i).lines().toList();
            if (shown.isPresent()) {
                lines.subList(shown.get().firstLine() + 1, shown.get().lastLine())
                        .clear();
                lines.addAll(shown.get().firstLine() + 1, printed);
            } else if (!printed.isEmpty()) {
                lines.addAll(block.lastLine() + 1, fenced(printed));
            }
        }
        write(page, String.join("\n", lines) + "\n");
    }

    private static void write(GuidePage page, String text) {
        try {
            Files.writeString(page.path(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Replaces the contents of blocks of a page. */
    static void replace(GuidePage page, List<Fence> blocks, List<List<String>> contents) {
        List<String> lines = new ArrayList<>(page.lines());
        for (int i = blocks.size() - 1; i >= 0; i--) {
            Fence block = blocks.get(i);
            lines.subList(block.firstLine() + 1, block.lastLine()).clear();
            lines.addAll(block.firstLine() + 1, contents.get(i));
        }
        write(page, String.join("\n", lines) + "\n");
    }

    private static List<String> fenced(List<String> printed) {
        List<String> fence = new ArrayList<>(List.of("", "```text"));
        fence.addAll(printed);
        fence.add("```");
        return fence;
    }
}
