package io.github.formulationmath.oracle;

import java.util.ArrayList;
import java.util.List;

/** Finds the arithmetic in the plain text of a working; where a line stands and how far in tells what it is. */
final class TextReader {

    private static final int GIVEN_INDENT = 2;
    private static final int GIVEN_CARRIED = 6;
    private static final int STEP_INDENT = 4;

    private final PrintedWorking.Builder found = new PrintedWorking.Builder();
    private String section = "";
    private final List<String> block = new ArrayList<>();
    private String remark = "";
    private boolean note;

    PrintedWorking read(String page) {
        boolean afterBlank = false;
        for (String line : page.split("\n")) {
            if (line.isEmpty()) {
                afterBlank = true;
                continue;
            }
            int indent = indent(line);
            if (indent == 0) {
                endBlock();
                section = afterBlank ? line : "";
            } else {
                line(line.substring(indent), indent);
            }
            afterBlank = false;
        }
        endBlock();
        return found.build();
    }

    private void line(String text, int indent) {
        switch (section) {
            case "Given" -> given(text, indent);
            case "Working" -> working(text, indent);
            case "Answer" -> answer(text, indent);
            default -> {
                // The question.
            }
        }
    }

    private void given(String text, int indent) {
        if (indent == GIVEN_INDENT) {
            int end = text.indexOf("  ");
            found.givens.add(end < 0 ? text : text.substring(0, end));
        } else if (indent == GIVEN_CARRIED) {
            int last = found.givens.size() - 1;
            found.givens.set(last, joined(found.givens.get(last), text));
        }
    }

    private void working(String text, int indent) {
        if (indent < STEP_INDENT) {
            endBlock();
            note = text.startsWith("Note: ");
        } else if (note) {
            // More words.
            return;
        } else if (indent == STEP_INDENT) {
            begin(text);
        } else {
            carry(text);
        }
    }

    private void answer(String text, int indent) {
        if (indent >= STEP_INDENT) {
            working(text, indent);
        }
    }

    private void begin(String text) {
        boolean isRemark = !block.isEmpty() && text.startsWith("Rounding ");
        if (isRemark) {
            remark = text;
        } else {
            block.add(text);
        }
    }

    private void carry(String text) {
        int last = block.size() - 1;
        if (!remark.isEmpty()) {
            remark = joined(remark, text);
        } else if (last < 0) {
            throw new OracleException("nothing to carry on with: " + text);
        } else {
            block.set(last, joined(block.get(last), text));
        }
    }

    /** A word that was too long for its line ends in a backslash. */
    static String joined(String line, String next) {
        return line.endsWith("\\") ? line.substring(0, line.length() - 1) + next : line + " " + next;
    }

    private void endBlock() {
        if (!block.isEmpty() && section.equals("Answer")) {
            found.answer = String.join(" ", block);
        } else if (!block.isEmpty()) {
            found.block(block, remark);
        }
        block.clear();
        remark = "";
    }

    private static int indent(String line) {
        int i = 0;
        while (line.charAt(i) == ' ') {
            i++;
        }
        return i;
    }
}
