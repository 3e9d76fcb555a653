package io.github.formulationmath.sheet;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.planning.ExpectedLine;
import io.github.formulationmath.planning.ExpectedProduct;
import io.github.formulationmath.planning.Tolerances;
import java.util.ArrayList;
import java.util.List;

/** The part of a batch sheet that says what the balance guarantees, line by line, in numbers and in words. */
record Expectation(ExpectedProduct expected, Tolerances tolerances) {

    void addTo(List<Page.Block> blocks, SheetWords words) {
        List<List<String>> rows = new ArrayList<>();
        for (ExpectedLine line : expected.lines()) {
            rows.add(List.of(
                    line.subscript(),
                    line.name(),
                    SheetNumbers.percent(line.planned().target().line().fraction()),
                    SheetNumbers.interval(Bounds.closed(
                            line.bounds().least().canonical(),
                            line.bounds().greatest().canonical())),
                    words.say("sheet.verdict." + line.verdict(tolerances).name())));
        }
        blocks.add(new Page.Table(
                words.say("sheet.expected"),
                List.of(
                        words.say("sheet.column.number"),
                        words.say("sheet.column.ingredient"),
                        words.say("sheet.column.share"),
                        words.say("sheet.column.guaranteed"),
                        words.say("sheet.column.tolerance")),
                List.of(true, false, true, true, false),
                rows));
        blocks.add(new Page.Remark(words.say("sheet.guaranteed", tolerances.toString())));
    }
}
