package io.github.formulationmath.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A Markdown page: its lines and its fenced blocks.
 *
 * @param path where it stands, relative to the root of the project
 * @param lines its lines
 * @param fences its fenced blocks in order
 */
record GuidePage(Path path, List<String> lines, List<Fence> fences) {

    private static final String MARK = "```";

    static GuidePage read(Path path) {
        try {
            List<String> lines = Files.readAllLines(path);
            return new GuidePage(path, lines, fences(path, lines));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Fence> fences(Path path, List<String> lines) {
        List<Fence> fences = new ArrayList<>();
        int open = -1;
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).startsWith(MARK)) {
                continue;
            }
            if (open < 0) {
                open = i;
            } else {
                String info = lines.get(open).substring(MARK.length()).strip();
                fences.add(new Fence(info, open, List.copyOf(lines.subList(open + 1, i))));
                open = -1;
            }
        }
        if (open >= 0) {
            throw new IllegalStateException(path + ":" + (open + 1) + ": the block is not closed");
        }
        return List.copyOf(fences);
    }

    /** The blocks in a language, but for parts of files: those are compiled where the file is. */
    List<Fence> in(String language) {
        return fences.stream()
                .filter(fence ->
                        fence.language().equals(language) && fence.file().isEmpty())
                .toList();
    }

    /** The block of text that follows a block, and so shows what it prints. */
    Optional<Fence> shownAfter(Fence fence) {
        int next = fences.indexOf(fence) + 1;
        return next < fences.size() && fences.get(next).language().equals("text")
                ? Optional.of(fences.get(next))
                : Optional.empty();
    }

    /** The lines outside fenced blocks; those inside are empty, so that numbers of lines stay the same. */
    List<String> prose() {
        List<String> prose = new ArrayList<>(lines);
        for (Fence fence : fences) {
            for (int i = fence.firstLine(); i <= fence.lastLine(); i++) {
                prose.set(i, "");
            }
        }
        return prose;
    }

    String at(Fence fence) {
        return path + ":" + (fence.firstLine() + 1);
    }

    @Override
    public String toString() {
        return path.toString();
    }
}
