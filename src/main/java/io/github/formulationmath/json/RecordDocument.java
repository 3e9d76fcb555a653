package io.github.formulationmath.json;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.packing.Filling;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Instant;
import java.util.List;

/** A batch record as a document; needs no JSON library. */
final class RecordDocument {

    private static final String FORMAT = "formulation-math/batch-record";

    private RecordDocument() {}

    static Written write(BatchRecord record) {
        return ValueDocument.document(FORMAT)
                .with("code", record.code().toString())
                .with("formula", FormulaDocument.write(record.formula()))
                .with("batch", BenchDocument.write(record.plan().batch().size()))
                .with("bench", BenchDocument.write(record.plan().bench()))
                .with("method", ValueDocument.word(record.readings().method()))
                .with("readings", record.readings().taken(), RecordDocument::write)
                .with("tolerances", BenchDocument.write(record.tolerances()))
                .with("entries", record.entries(), RecordDocument::write)
                .with("filling", record.filling(), RecordDocument::write)
                .with("amendments", record.amendments(), RecordDocument::write);
    }

    private static Written write(Reading reading) {
        return Written.of("line", BenchDocument.number(reading.line()))
                .with("kind", ValueDocument.word(reading.kind()))
                .with("shown", reading.shown(), ValueDocument::amount)
                .with("balance", reading.balance(), BenchDocument::write)
                .with("time", reading.time(), Instant::toString);
    }

    private static Written write(BenchEntry entry) {
        Written written = Written.of("kind", ValueDocument.word(entry.kind()));
        if (entry.kind() == BenchEntry.Kind.OBSERVATION) {
            written.with("text", entry.text());
        }
        return written.with("line", entry.line(), BenchDocument::number)
                .with("mass", entry.mass(), ValueDocument::amount)
                .with("balance", entry.balance(), BenchDocument::write)
                .with("time", entry.time(), Instant::toString);
    }

    private static Written write(Filling filling) {
        PackFill fill = filling.fill();
        Written written = Written.of("residue", ValueDocument.amount(filling.residue()));
        return fill.volume().isEmpty()
                ? written.with("fillMass", ValueDocument.amount(fill.mass()))
                : written.with("fillVolume", fill.volume(), ValueDocument::amount)
                        .with("density", fill.density(), ValueDocument::density);
    }

    private static Written write(Amendment amendment) {
        return Written.of("who", amendment.who())
                .with("time", amendment.time().toString())
                .with("text", amendment.text());
    }

    static BatchRecord read(Node document) {
        return document.object(RecordDocument::read);
    }

    private static BatchRecord read(Node.Fields f) {
        ValueDocument.requireFormat(f, FORMAT);
        BatchCode code = f.get("code").parsed(BatchCode::parse);
        Readings readings = readings(f);
        Tolerances tolerances = BenchDocument.tolerances(f.get("tolerances"));
        Formula formula = readings.plan().batch().formula();
        BatchRecord begun = f.get("tolerances").reading(() -> BatchRecord.of(code, readings, tolerances));
        BatchRecord opened =
                f.find("entries").map(node -> entered(begun, node, formula)).orElse(begun);
        BatchRecord filled = f.find("filling")
                .map(node -> node.object(g -> opened.filled(ValueDocument.mass(g.get("residue")), fill(g))))
                .orElse(opened);
        BatchRecord[] record = {filled};
        f.list("amendments", node -> node.object(g -> record[0] = record[0].amended(amendment(g))));
        return record[0];
    }

    private static BatchRecord entered(BatchRecord begun, Node node, Formula formula) {
        List<BenchEntry> entries = node.list(item -> item.object(g -> entry(g, formula)));
        return node.readingItems(at -> begun.with(entries, at));
    }

    private static Readings readings(Node.Fields f) {
        Formula formula = FormulaDocument.read(f.get("formula"));
        Batch batch = Batch.of(formula, BenchDocument.size(f.get("batch"), formula));
        Bench bench = BenchDocument.bench(f.get("bench"));
        WeighingMethod method = ValueDocument.constant(f.get("method"), WeighingMethod.values());
        WeighingPlan plan = f.get("bench").reading(() -> WeighingPlan.of(batch, bench));
        Node list = f.get("readings");
        List<Reading> readings = list.list(node -> node.object(g -> reading(g, formula)));
        return list.readingItems(at -> Readings.of(plan, method, readings, at));
    }

    private static Reading reading(Node.Fields f, Formula formula) {
        Node line = f.get("line");
        Reading reading = switch (ValueDocument.constant(f.get("kind"), Reading.Kind.values())) {
            case SHOWN -> Reading.of(BenchDocument.line(line, formula), ValueDocument.mass(f.get("shown")));
            case LEFT_OUT -> Reading.leftOut(BenchDocument.line(line, formula));
            case NOT_WRITTEN_DOWN -> Reading.notWrittenDown(BenchDocument.line(line, formula));
        };
        return f.with(
                f.with(reading, "balance", BenchDocument::balance, Reading::on),
                "time",
                RecordDocument::time,
                Reading::at);
    }

    private static Instant time(Node node) {
        return node.parsed(Instant::parse);
    }

    private static BenchEntry entry(Node.Fields f, Formula formula) {
        BenchEntry entry = switch (ValueDocument.constant(f.get("kind"), BenchEntry.Kind.values())) {
            case OBSERVATION -> f.get("text").parsed(BenchEntry::observation);
            case ADDITION ->
                BenchEntry.addition(
                        LineAddition.of(BenchDocument.line(f.get("line"), formula), ValueDocument.mass(f.get("mass"))));
            case WEIGHED_AGAIN ->
                BenchEntry.weighedAgain(ValueDocument.mass(f.get("mass")), BenchDocument.line(f.get("line"), formula));
        };
        BenchEntry on = entry.kind() == BenchEntry.Kind.OBSERVATION
                ? entry
                : f.with(entry, "balance", BenchDocument::balance, BenchEntry::on);
        return f.with(on, "time", RecordDocument::time, BenchEntry::at);
    }

    private static PackFill fill(Node.Fields f) {
        return f.find("fillVolume").isPresent()
                ? PackFill.ofVolume(ValueDocument.volume(f.get("fillVolume")), ValueDocument.density(f.get("density")))
                : PackFill.ofMass(ValueDocument.mass(f.get("fillMass")));
    }

    private static Amendment amendment(Node.Fields f) {
        return Amendment.of(
                f.get("who").text(), time(f.get("time")), f.get("text").text());
    }
}
