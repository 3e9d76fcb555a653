package io.github.formulationmath.sheet;

import io.github.formulationmath.planning.ExpectedLine;
import io.github.formulationmath.planning.ExpectedProduct;
import io.github.formulationmath.planning.Tolerances;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.List;

/** The part of a batch sheet that says what the balance guarantees, line by line, in numbers and in words. */
record Expectation(ExpectedProduct expected, Tolerances tolerances) {

    void addTo(List<Page.Block> blocks, Wording wording) {
        List<List<String>> rows = new ArrayList<>();
        for (ExpectedLine line : expected.lines()) {
            rows.add(List.of(
                    line.subscript(),
                    line.name(),
                    SheetNumbers.percent(line.planned().target().line().fraction()),
                    SheetNumbers.interval(line.bounds()),
                    wording.text(Phrase.of(
                            "sheet.verdict." + line.verdict(tolerances).name()))));
        }
        blocks.add(new Page.Table(
                wording.text(Phrase.of("sheet.expected")),
                List.of(
                        wording.text(Phrase.of("sheet.column.number")),
                        wording.text(Phrase.of("sheet.column.ingredient")),
                        wording.text(Phrase.of("sheet.column.share")),
                        wording.text(Phrase.of("sheet.column.guaranteed")),
                        wording.text(Phrase.of("sheet.column.tolerance"))),
                List.of(true, false, true, true, false),
                rows));
        blocks.add(new Page.Remark(wording.text(Phrase.of("sheet.guaranteed", tolerances.toString()))));
    }
}
