package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How many characters the columns of the tables to work with need, by their names. */
record ColumnWidths(Map<String, Integer> longest) {

    /** Words in a table to work with break after so many characters. */
    private static final int TEXT_WIDTH = 10;

    /** Room to write on has space for a word of so many letters above it, on small paper too. */
    private static final int ROOM_WIDTH = 7;

    static ColumnWidths of(List<Block> blocks) {
        Map<String, Integer> longest = new HashMap<>();
        for (Block block : blocks) {
            if (block instanceof Block.Table table && table.isWorkedWith()) {
                for (int i = 0; i < table.columns().size(); i++) {
                    int at = i;
                    int cells = table.rows().stream()
                            .mapToInt(row -> Columns.width(row.cells().get(at)))
                            .max()
                            .orElse(0);
                    longest.merge(table.columns().get(i).name(), cells, Math::max);
                }
            }
        }
        return new ColumnWidths(longest);
    }

    /** Whether no table is worked with. */
    boolean isEmpty() {
        return longest.isEmpty();
    }

    /** Wide enough for the cells, and for the longest word of the head, which is bold and smaller. */
    private static String width(int cells, int head) {
        return " style=\"width: calc(max(var(--size, 1) * " + cells + "ch, " + head + "ch * 0.95) + 0.7em)\"";
    }

    /** A digit is as wide as {@code ch}; signs, letters and blanks hardly more. Words at the head may break. */
    String of(Column column) {
        int head = IntStream.of(Stream.of(column.name().split("[ \u00AD-]"))
                        .mapToInt(Columns::width)
                        .toArray())
                .max()
                .orElse(0);
        int cells = longest.getOrDefault(column.name(), 0);
        return switch (column.use()) {
            case NAME -> "";
            case ROOM -> head <= ROOM_WIDTH ? "" : width(1, head);
            case TICK -> width(2, head);
            case TEXT -> width(Math.max(Math.min(cells, TEXT_WIDTH), head), head);
            case NUMBER, READING, DETAIL -> width(Math.max(cells, 1), head);
        };
    }
}
