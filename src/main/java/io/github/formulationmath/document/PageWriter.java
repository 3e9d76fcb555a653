package io.github.formulationmath.document;

import java.util.List;
import java.util.Map;

/** Writes documents for people, block by block, each by a method of its own. */
abstract class PageWriter extends Writer {

    void title(Document document, int level) {
        heading(document.title(), level);
    }

    abstract void heading(String text, int level);

    abstract void paragraph(String text);

    abstract void caution(String text);

    abstract void facts(List<Block.Fact> facts);

    abstract void table(Block.Table table);

    abstract void equations(Block.Equations equations);

    abstract void note(Block.Note note);

    abstract void lines(List<String> labels);

    /** Blanks to fill in, each with its name. */
    void fields(Block.Fields fields) {
        paragraph(fields.inLine());
    }

    /** Whether a table may have columns to write on. */
    boolean hasRoom() {
        return false;
    }

    abstract void question(Block.Question question);

    /** What has to follow the last block of a document. */
    void end() {
        // In most formats nothing.
    }

    @Override
    final boolean hasPlaceFor(Block block) {
        return true;
    }

    @Override
    final void document(Document document, int level) {
        title(document, level);
        document.blocks().forEach(block -> block(block, level));
        end();
    }

    private void block(Block block, int level) {
        if (block instanceof Block.Heading heading) {
            heading(heading.text(), level + 1);
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph(paragraph.text());
        } else if (block instanceof Block.Caution caution) {
            caution(caution.text());
        } else if (block instanceof Block.Facts facts) {
            facts(facts.facts());
        } else if (block instanceof Block.Table table) {
            table(hasRoom() ? table : table.written());
        } else if (block instanceof Block.Fields fields) {
            fields(fields);
        } else if (block instanceof Block.Equations equations) {
            equations(equations);
        } else if (block instanceof Block.Note note) {
            note(note);
        } else if (block instanceof Block.Lines lines) {
            lines(lines.labels());
        } else if (block instanceof Block.Question question) {
            question(question);
        }
    }

    /** A text with some of its characters written in another way. */
    static String replaced(String text, Map<Integer, String> replacements) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            String replacement = replacements.get(c);
            if (replacement == null) {
                out.appendCodePoint(c);
            } else {
                out.append(replacement);
            }
        });
        return out.toString();
    }
}
