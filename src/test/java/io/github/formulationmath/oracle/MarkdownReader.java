package io.github.formulationmath.oracle;

import java.util.ArrayList;
import java.util.List;

/** Finds the arithmetic in the Markdown of a working: the first cells of the table, and the fenced blocks. */
final class MarkdownReader {

    private final PrintedWorking.Builder found = new PrintedWorking.Builder();
    private List<String> block = new ArrayList<>();
    private String section = "";
    private String fence = "";

    PrintedWorking read(String page) {
        for (String line : page.split("\n")) {
            if (!fence.isEmpty()) {
                fenced(line);
            } else if (line.startsWith("```")) {
                fence = line.substring(0, line.lastIndexOf('`') + 1);
            } else {
                prose(line);
            }
        }
        endBlock("");
        return found.build();
    }

    private void fenced(String line) {
        if (line.equals(fence)) {
            fence = "";
            if (section.equals("Answer")) {
                found.answer = String.join(" ", block);
                block = new ArrayList<>();
            }
        } else if (line.startsWith(" ")) {
            int last = block.size() - 1;
            block.set(last, TextReader.joined(block.get(last), line.strip()));
        } else {
            block.add(line);
        }
    }

    private void prose(String line) {
        String text = line.replaceAll("\\\\([!-/:-@\\[-`{-~])", "$1");
        if (line.startsWith("#")) {
            endBlock("");
            section = text.replaceAll("^#+ ", "");
        } else if (section.equals("Given") && line.startsWith("| ") && line.contains(" = ".replace("=", "\\="))) {
            found.givens.add(text.substring(2, text.indexOf(" | ")));
        } else if (section.equals("Working") && !line.isEmpty()) {
            endBlock(text.startsWith("Rounding ") ? text : "");
        }
    }

    private void endBlock(String remark) {
        if (!block.isEmpty()) {
            found.block(block, remark);
            block = new ArrayList<>();
        }
    }
}
