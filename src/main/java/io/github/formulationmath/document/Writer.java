package io.github.formulationmath.document;

import java.util.Iterator;
import java.util.List;

/** Writes documents in one format. A new format is one writer, mostly a {@link PageWriter}, and its line in {@link Format}. */
abstract class Writer {

    final StringBuilder out = new StringBuilder();

    /** A document with its title at a level; the sections are one deeper. */
    abstract void document(Document document, int level);

    /** Whether the format prints a block at all. */
    abstract boolean hasPlaceFor(Block block);

    /** What parts one document from the next. */
    String between() {
        return "\n";
    }

    /** Everything around the documents of a page. */
    String page(String title, Document first, String documents) {
        return documents;
    }

    /** Documents one behind the other, as a whole in this format. */
    final String whole(String title, List<Document> documents) {
        StringBuilder all = new StringBuilder();
        for (Iterator<Document> each = documents.iterator(); each.hasNext(); ) {
            all.append(part(each.next(), 1)).append(each.hasNext() ? between() : "");
        }
        return page(title, documents.get(0), all.toString());
    }

    /** A document as a part of a page of the caller's. */
    final String part(Document document, int level) {
        out.setLength(0);
        document(document, level);
        return out.toString();
    }
}
