package io.github.formulationmath.sheet;

import java.util.List;

/** A sheet as data: the language of its words, a title and the blocks below it, in order. All texts are final words, nothing is looked up later. */
record Page(String language, String title, List<Block> blocks) {

    /** One part of a page. */
    sealed interface Block permits Facts, Table, Remark, Caution {}

    /** Names and what stands beside them. */
    record Facts(List<Fact> facts) implements Block {}

    /** A name and what stands beside it. */
    record Fact(String name, String value) {}

    /**
     * A table under a heading.
     *
     * @param heading the heading; may be empty
     * @param columns the names of the columns
     * @param numeric for each column whether it holds numbers, which are set flush right
     * @param rows the rows, each as long as the columns
     */
    record Table(String heading, List<String> columns, List<Boolean> numeric, List<List<String>> rows)
            implements Block {}

    /** A sentence of its own. */
    record Remark(String text) implements Block {}

    /** A warning. */
    record Caution(String text) implements Block {}

    Page {
        blocks = List.copyOf(blocks);
    }

    List<Table> tables() {
        return blocks.stream()
                .filter(Table.class::isInstance)
                .map(Table.class::cast)
                .toList();
    }
}
