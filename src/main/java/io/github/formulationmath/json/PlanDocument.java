package io.github.formulationmath.json;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.pot.UsedLot;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** A plan, and the readings taken for it so far, as a document: alone, or as the beginning of a record. */
final class PlanDocument {

    private static final String PLAN = "formulation-math/weighing-plan";
    private static final String READINGS = "formulation-math/readings";
    private static final String BENCH = "formulation-math/bench";
    private static final String STATIONS = "formulation-math/stations";

    private PlanDocument() {}

    static Written writePlan(WeighingPlan plan) {
        return plan(ValueDocument.document(PLAN), plan);
    }

    static WeighingPlan readPlan(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, PLAN);
            return plan(f);
        });
    }

    static Written writeReadings(Readings readings) {
        return readings(plan(ValueDocument.document(READINGS), readings.plan()), readings);
    }

    static Readings readReadings(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, READINGS);
            return readings(f);
        });
    }

    static Written writeBench(Bench bench) {
        return ValueDocument.document(BENCH).with("bench", BenchDocument.write(bench));
    }

    static Bench readBench(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, BENCH);
            return BenchDocument.bench(f.get("bench"));
        });
    }

    static Written writeStations(List<WeighingStation> stations) {
        return ValueDocument.document(STATIONS).with("stations", stations, BenchDocument::write);
    }

    static List<WeighingStation> readStations(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, STATIONS);
            return List.copyOf(f.get("stations").list(BenchDocument::station));
        });
    }

    /** Formula, size, bench, and the places of the lines that are weighed elsewhere. */
    static Written plan(Written written, WeighingPlan plan) {
        written.with("formula", FormulaDocument.write(plan.formula()))
                .with("batch", BenchDocument.write(plan.batch().size()))
                .with("bench", BenchDocument.write(plan.bench()));
        Map<WeighingStation, List<String>> places = new LinkedHashMap<>();
        for (PlannedLine line : plan.lines()) {
            if (!line.isOnBench()) {
                places.computeIfAbsent(line.station(), station -> new ArrayList<>())
                        .add(BenchDocument.number(line.line()));
            }
        }
        if (!places.isEmpty()) {
            written.with(
                    "elsewhere",
                    List.copyOf(places.entrySet()),
                    each -> BenchDocument.write(each.getKey()).with("lines", each.getValue()));
        }
        return written;
    }

    static WeighingPlan plan(Node.Fields f) {
        Formula formula = FormulaDocument.read(f.get("formula"));
        Batch batch = Batch.of(formula, BenchDocument.size(f.get("batch"), formula));
        Bench bench = BenchDocument.bench(f.get("bench"));
        Optional<Node> elsewhere = f.find("elsewhere");
        if (elsewhere.isEmpty()) {
            return f.get("bench").reading(() -> WeighingPlan.of(batch, bench));
        }
        List<WeighingStation> stations = stations(elsewhere.get(), formula, bench);
        return elsewhere.get().reading(() -> WeighingPlan.of(batch, bench, stations));
    }

    private static List<WeighingStation> stations(Node node, Formula formula, Bench bench) {
        Map<Integer, WeighingStation> places = new LinkedHashMap<>();
        node.list(item -> item.object(f -> {
            WeighingStation station = BenchDocument.place(f);
            return f.get("lines").list(number -> {
                FormulaLine line = BenchDocument.line(number, formula);
                if (places.put(line.index(), station) != null) {
                    throw number.wrong("line " + number.text() + " has two places: keep one of them");
                }
                return line;
            });
        }));
        return formula.lines().stream()
                .map(line -> places.getOrDefault(line.index(), bench.station()))
                .toList();
    }

    /** How it was weighed, and what was read. */
    static Written readings(Written written, Readings readings) {
        written.with("method", ValueDocument.word(readings.method()));
        if (readings.isOpen()) {
            written.with("state", "begun");
        }
        return written.with("readings", readings.taken(), PlanDocument::write);
    }

    static Readings readings(Node.Fields f) {
        return readings(f, plan(f));
    }

    /** Readings taken for a plan that is known. */
    static Readings readings(Node.Fields f, WeighingPlan plan) {
        WeighingMethod method = ValueDocument.constant(f.get("method"), WeighingMethod.values());
        Optional<Node> state = f.find("state");
        state.ifPresent(word -> ValueDocument.require(word, "begun"));
        Node list = f.get("readings");
        List<Reading> readings = list.list(node -> node.object(g -> reading(g, plan.formula())));
        return list.readingItems(at -> state.isPresent()
                ? Readings.begun(plan, method, readings, at)
                : Readings.of(plan, method, readings, at));
    }

    private static Written write(Reading reading) {
        Written written = Written.of("line", BenchDocument.number(reading.line()))
                .with("kind", ValueDocument.word(reading.kind()))
                .with("shown", reading.shown(), ValueDocument::amount)
                .with("balance", reading.balance(), BenchDocument::write)
                .with("time", reading.time(), time -> time.toString())
                .with("person", reading.person(), text -> text);
        lots(written, reading.lots());
        return reading.notes().isEmpty()
                ? written
                : written.with(
                        "notes",
                        List.copyOf(reading.notes().entrySet()),
                        each -> Written.of("name", each.getKey()).with("text", each.getValue()));
    }

    /** One lot of which nothing but its name is known is a text, as it always was; else a list. */
    static Written lots(Written written, List<UsedLot> lots) {
        if (lots.isEmpty()) {
            return written;
        }
        if (lots.size() == 1 && lots.get(0).mass().isEmpty()) {
            return written.with("lot", lots.get(0).code());
        }
        return written.with(
                "lots", lots, lot -> Written.of("lot", lot.code()).with("mass", lot.mass(), ValueDocument::amount));
    }

    /** The whole with its lots, in either form. */
    static <T> T lots(Node.Fields f, T whole, BiFunction<T, UsedLot, T> adding) {
        List<T> with = new ArrayList<>(List.of(f.with(whole, "lot", node -> node.parsed(UsedLot::of), adding)));
        f.list("lots", node -> {
            UsedLot lot = node.object(g -> g.find("mass").isPresent()
                    ? UsedLot.of(g.get("lot").text(), ValueDocument.mass(g.get("mass")))
                    : UsedLot.of(g.get("lot").text()));
            with.set(0, node.reading(() -> adding.apply(with.get(0), lot)));
            return lot;
        });
        return with.get(0);
    }

    private static Reading reading(Node.Fields f, Formula formula) {
        Node line = f.get("line");
        Reading reading = switch (ValueDocument.constant(f.get("kind"), Reading.Kind.values())) {
            case SHOWN -> Reading.of(BenchDocument.line(line, formula), ValueDocument.mass(f.get("shown")));
            case LEFT_OUT -> Reading.leftOut(BenchDocument.line(line, formula));
            case NOT_WRITTEN_DOWN -> Reading.notWrittenDown(BenchDocument.line(line, formula));
        };
        reading = f.with(reading, "balance", BenchDocument::balance, Reading::on);
        reading = f.with(reading, "time", RecordDocument::time, Reading::at);
        reading = f.with(reading, "person", Node::text, Reading::by);
        Reading[] noted = {lots(f, reading, Reading::from)};
        f.list(
                "notes",
                node -> node.object(g -> {
                    String name = g.get("name").text();
                    if (noted[0].notes().containsKey(name)) {
                        throw node.wrong("the note \"" + name + "\" is given twice: keep one of them");
                    }
                    noted[0] = noted[0].withNote(name, g.get("text").text());
                    return name;
                }));
        return noted[0];
    }
}
