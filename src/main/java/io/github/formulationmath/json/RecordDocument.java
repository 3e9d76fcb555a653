package io.github.formulationmath.json;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.packing.Filling;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import java.time.Instant;
import java.util.List;

/** A batch record as a document; needs no JSON library. */
final class RecordDocument {

    private static final String FORMAT = "formulation-math/batch-record";

    private RecordDocument() {}

    static Written write(BatchRecord record) {
        Written begun =
                ValueDocument.document(FORMAT).with("code", record.code().toString());
        if (record.hasOwnBatchNumber()) {
            begun.with("batchNumber", record.batchNumber());
        }
        if (!record.preparations().isEmpty()) {
            begun.with(
                    "preparations",
                    record.preparations(),
                    made -> PlanDocument.readings(PlanDocument.plan(Written.empty(), made.plan()), made));
        }
        return PlanDocument.readings(PlanDocument.plan(begun, record.plan()), record.readings())
                .with("tolerances", BenchDocument.write(record.tolerances()))
                .with("entries", record.entries(), RecordDocument::write)
                .with("filling", record.filling(), RecordDocument::write)
                .with("amendments", record.amendments(), RecordDocument::write);
    }

    private static Written write(BenchEntry entry) {
        Written written = Written.of("kind", ValueDocument.word(entry.kind()));
        if (entry.kind() == BenchEntry.Kind.OBSERVATION) {
            written.with("text", entry.text());
        }
        written.with("line", entry.line(), BenchDocument::number)
                .with("mass", entry.mass(), ValueDocument::amount)
                .with("balance", entry.balance(), BenchDocument::write)
                .with("time", entry.time(), Instant::toString)
                .with("person", entry.person(), text -> text);
        return PlanDocument.lots(written, entry.lots());
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
        Readings readings = PlanDocument.readings(f);
        Tolerances tolerances = BenchDocument.tolerances(f.get("tolerances"));
        Formula formula = readings.plan().batch().formula();
        BatchRecord unnumbered = f.get("tolerances").reading(() -> BatchRecord.of(code, readings, tolerances));
        BatchRecord[] numbered = {f.with(unnumbered, "batchNumber", Node::text, BatchRecord::withBatchNumber)};
        f.list("preparations", node -> {
            Readings made = node.object(g -> PlanDocument.readings(g));
            numbered[0] = node.reading(() -> numbered[0].withPreparation(made));
            return made;
        });
        BatchRecord begun = numbered[0];
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

    static Instant time(Node node) {
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
        BenchEntry timed = f.with(entry, "time", RecordDocument::time, BenchEntry::at);
        if (entry.kind() == BenchEntry.Kind.OBSERVATION) {
            return timed;
        }
        BenchEntry on = f.with(timed, "balance", BenchDocument::balance, BenchEntry::on);
        return PlanDocument.lots(f, f.with(on, "person", Node::text, BenchEntry::by), BenchEntry::from);
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
