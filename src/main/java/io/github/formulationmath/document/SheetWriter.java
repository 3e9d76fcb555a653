package io.github.formulationmath.document;

import io.github.formulationmath.csv.CsvWriter;
import io.github.formulationmath.document.Document.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The facts and tables of a document for a spreadsheet, each text guarded by the {@link CsvWriter}; numbers stay. */
final class SheetWriter extends Writer {

    /** As our own numbers are printed; the unit has no digit and no bracket. */
    private static final Pattern NUMBER =
            Pattern.compile("[+\\-−]?(?:≈ )?[0-9]++(?:[.,/][0-9]++)?(?: [\\p{L}%‰°³µ/ ]*+)?(?: \\?)?");

    static Writer writer() {
        return new SheetWriter();
    }

    @Override
    boolean hasPlaceFor(Block block) {
        return block instanceof Block.Facts || block instanceof Block.Table;
    }

    @Override
    void document(Document document, int level) {
        for (Block block : document.blocks()) {
            out.append(out.isEmpty() || !hasPlaceFor(block) ? "" : "\r\n");
            if (block instanceof Block.Facts facts) {
                facts.facts().forEach(fact -> row(List.of(fact.name(), fact.value())));
            } else if (block instanceof Block.Table table) {
                table(table);
            }
        }
    }

    private void table(Block.Table whole) {
        Block.Table table = whole.written();
        row(table.columns().stream().map(Column::name).toList());
        for (Block.Row row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.cells().size(); i++) {
                String cell = row.cells().get(i);
                boolean safe = table.columns().get(i).isNumber()
                        && NUMBER.matcher(cell).matches();
                cells.add(safe ? cell : guarded(cell));
            }
            out.append(CsvWriter.row(cells));
        }
    }

    private void row(List<String> cells) {
        out.append(CsvWriter.row(cells.stream().map(SheetWriter::guarded).toList()));
    }

    /** A cell stands by itself and needs no isolating marks. */
    private static String guarded(String cell) {
        return CsvWriter.guarded(cell.replace("\u2068", "").replace("\u2069", ""));
    }

    @Override
    String between() {
        return "\r\n";
    }
}
