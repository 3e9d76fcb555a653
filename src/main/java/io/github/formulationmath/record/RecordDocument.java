package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.planning.Bench;
import io.github.formulationmath.planning.Tolerances;
import io.github.formulationmath.planning.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** A batch record as a document of maps, lists and texts, version {@value #VERSION}; needs no JSON library. */
final class RecordDocument {

    static final String FORMAT = "formulation-math/batch-record";
    static final String VERSION = "1";

    private RecordDocument() {}

    static Map<String, Object> write(BatchRecord record) {
        Map<String, Object> map = new LinkedHashMap<>();
        ValueDocument.putFormat(map, FORMAT, VERSION);
        map.put("code", record.code().toString());
        map.put("formula", FormulaDocument.write(record.formula()));
        map.put("batch", BenchDocument.write(record.plan().batch().size()));
        map.put("bench", BenchDocument.write(record.plan().bench()));
        map.put("method", ValueDocument.word(record.readings().method()));
        map.put("readings", each(record.readings().taken(), RecordDocument::write));
        map.put("tolerances", write(record.tolerances()));
        map.put("entries", each(record.entries(), RecordDocument::write));
        record.filling().ifPresent(filling -> map.put("filling", write(filling)));
        map.put("amendments", each(record.amendments(), RecordDocument::write));
        return map;
    }

    private static <T> List<Object> each(List<T> items, java.util.function.Function<T, Object> writer) {
        List<Object> all = new ArrayList<>(items.size());
        items.forEach(item -> all.add(writer.apply(item)));
        return all;
    }

    private static Map<String, Object> write(Reading reading) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("line", Integer.toString(reading.line().position()));
        map.put("kind", ValueDocument.word(reading.kind()));
        reading.shown().ifPresent(shown -> map.put("shown", ValueDocument.amount(shown)));
        reading.balance().ifPresent(balance -> map.put("balance", BenchDocument.write(balance)));
        reading.time().ifPresent(time -> map.put("time", time.toString()));
        return map;
    }

    static Map<String, Object> write(Tolerances tolerances) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("general", ValueDocument.share(tolerances.general()));
        map.put("phases", named(tolerances.byPhase()));
        map.put("ingredients", named(tolerances.byIngredient()));
        return map;
    }

    private static List<Object> named(Map<String, MassFraction> tolerances) {
        List<Object> all = new ArrayList<>();
        tolerances.forEach((name, tolerance) -> {
            Map<String, Object> map = new LinkedHashMap<>();
            map.put("name", name);
            map.put("tolerance", ValueDocument.share(tolerance));
            all.add(map);
        });
        return all;
    }

    private static Map<String, Object> write(BenchEntry entry) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("kind", ValueDocument.word(entry.kind()));
        if (entry.kind() == BenchEntry.Kind.OBSERVATION) {
            map.put("text", entry.text());
        }
        entry.line().ifPresent(line -> map.put("line", Integer.toString(line.position())));
        entry.mass().ifPresent(mass -> map.put("mass", ValueDocument.amount(mass)));
        entry.balance().ifPresent(balance -> map.put("balance", BenchDocument.write(balance)));
        entry.time().ifPresent(time -> map.put("time", time.toString()));
        return map;
    }

    private static Map<String, Object> write(Filling filling) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("residue", ValueDocument.amount(filling.residue()));
        PackFill fill = filling.fill();
        if (fill.volume().isPresent() && fill.density().isPresent()) {
            map.put("fillVolume", ValueDocument.amount(fill.volume().get()));
            map.put("density", ValueDocument.density(fill.density().get()));
        } else {
            map.put("fillMass", ValueDocument.amount(fill.mass()));
        }
        return map;
    }

    private static Map<String, Object> write(Amendment amendment) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("who", amendment.who());
        map.put("time", amendment.time().toString());
        map.put("text", amendment.text());
        return map;
    }

    static ReadRecord read(Object document) {
        Node root = Node.root(document);
        BatchRecord record = root.object(RecordDocument::read);
        return new ReadRecord(record, root.unknownFields());
    }

    private static BatchRecord read(Node.Fields f) {
        ValueDocument.requireFormat(f, FORMAT, VERSION);
        BatchCode code = f.get("code").parsed(BatchCode::parse);
        Readings readings = readings(f);
        Tolerances tolerances = tolerances(f.get("tolerances"));
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
        @Nullable
        Balance balance = f.find("balance").map(BenchDocument::balance).orElse(null);
        Reading on = balance == null ? reading : reading.on(balance);
        return f.find("time").map(RecordDocument::time).map(on::at).orElse(on);
    }

    private static Instant time(Node node) {
        return node.parsed(Instant::parse);
    }

    static Tolerances tolerances(Node node) {
        return node.object(f -> {
            Tolerances tolerances = Tolerances.of(ValueDocument.share(f.get("general")));
            List<Named> phases = f.list("phases", RecordDocument::named);
            for (Named phase : phases) {
                tolerances = tolerances.withPhase(phase.name(), phase.tolerance());
            }
            List<Named> ingredients = f.list("ingredients", RecordDocument::named);
            for (Named ingredient : ingredients) {
                tolerances = tolerances.withLine(ingredient.name(), ingredient.tolerance());
            }
            if (tolerances.byPhase().size() < phases.size()
                    || tolerances.byIngredient().size() < ingredients.size()) {
                throw f.wrong("two tolerances are given for one phase or ingredient: keep one of them");
            }
            return tolerances;
        });
    }

    private record Named(String name, String tolerance) {}

    private static Named named(Node node) {
        return node.object(f -> {
            MassFraction tolerance = ValueDocument.share(f.get("tolerance"));
            return new Named(f.get("name").text(), tolerance.asWritten().orElseGet(tolerance::toString));
        });
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
                : f.find("balance").map(BenchDocument::balance).map(entry::on).orElse(entry);
        return f.find("time").map(RecordDocument::time).map(on::at).orElse(on);
    }

    private static PackFill fill(Node.Fields f) {
        if (f.find("fillVolume").isPresent()) {
            return PackFill.ofVolume(
                    ValueDocument.volume(f.get("fillVolume")), ValueDocument.density(f.get("density")));
        }
        Amount<Mass> mass = ValueDocument.mass(f.get("fillMass"));
        return PackFill.ofMass(mass);
    }

    private static Amendment amendment(Node.Fields f) {
        return Amendment.of(
                f.get("who").text(), time(f.get("time")), f.get("text").text());
    }
}
