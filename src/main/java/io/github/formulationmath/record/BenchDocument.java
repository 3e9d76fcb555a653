package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.planning.Bench;
import io.github.formulationmath.planning.Closure;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.scaling.BatchSize;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Law;
import io.github.formulationmath.weighing.LinearityBasis;
import io.github.formulationmath.weighing.Vessel;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** The size of a batch and the bench it is made on, in a document. */
final class BenchDocument {

    private BenchDocument() {}

    static Map<String, Object> write(BatchSize size) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (size instanceof BatchSize.OfMass s) {
            map.put("mass", ValueDocument.amount(s.mass()));
        } else if (size instanceof BatchSize.OfPacks s) {
            map.put("packs", Integer.toString(s.packs()));
            map.put("fill", ValueDocument.amount(s.fillMass()));
            map.put("overage", ValueDocument.share(s.overage()));
        } else if (size instanceof BatchSize.OfStock s) {
            map.put("stock", ValueDocument.amount(s.stock()));
            map.put("line", Integer.toString(s.line().position()));
        } else if (size instanceof BatchSize.OfVolume s) {
            map.put("volume", ValueDocument.amount(s.volume()));
            s.density().ifPresent(density -> map.put("density", ValueDocument.density(density)));
        }
        return map;
    }

    static BatchSize size(Node node, Formula formula) {
        return node.object(f -> {
            if (f.find("mass").isPresent()) {
                return BatchSize.ofMass(ValueDocument.mass(f.get("mass")));
            }
            if (f.find("packs").isPresent()) {
                return BatchSize.ofPacks(
                        ValueDocument.count(f.get("packs")),
                        ValueDocument.mass(f.get("fill")),
                        ValueDocument.share(f.get("overage")));
            }
            if (f.find("stock").isPresent()) {
                return BatchSize.ofStock(line(f.get("line"), formula), ValueDocument.mass(f.get("stock")));
            }
            Optional<Node> density = f.find("density");
            return density.isPresent()
                    ? BatchSize.ofVolume(ValueDocument.volume(f.get("volume")), ValueDocument.density(density.get()))
                    : BatchSize.ofVolume(ValueDocument.volume(f.get("volume")));
        });
    }

    /** A line by its number, from 1. */
    static FormulaLine line(Node node, Formula formula) {
        int number = ValueDocument.count(node);
        if (number < 1 || number > formula.lines().size()) {
            throw node.wrong("\"" + node.text() + "\" is the number of no line: there are "
                    + formula.lines().size());
        }
        return formula.lines().get(number - 1);
    }

    static Map<String, Object> write(Bench bench) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("balance", write(bench.balance()));
        if (!bench.vessel().equals(Vessel.none())) {
            map.put("vessel", write(bench.vessel()));
        }
        map.put("closure", ValueDocument.word(bench.closure()));
        bench.closingTolerances().ifPresent(tolerances -> {
            map.put("closingTolerances", RecordDocument.write(tolerances));
            map.put("closingReadingError", ValueDocument.amount(bench.closingReadingError()));
        });
        bench.productDensity().ifPresent(density -> map.put("productDensity", ValueDocument.density(density)));
        return map;
    }

    static Bench bench(Node node) {
        return node.object(f -> {
            Bench bench = closing(f, Bench.of(balance(f.get("balance"))));
            Bench with =
                    f.find("vessel").map(BenchDocument::vessel).map(bench::with).orElse(bench);
            return f.find("productDensity")
                    .map(ValueDocument::density)
                    .map(with::withProductDensity)
                    .orElse(with);
        });
    }

    private static Bench closing(Node.Fields f, Bench bench) {
        Node word = f.get("closure");
        Closure closure = ValueDocument.constant(word, Closure.values());
        Optional<Node> tolerances = f.find("closingTolerances");
        if (tolerances.isEmpty()) {
            return bench.closing(closure);
        }
        if (closure != Closure.WITHIN_TOLERANCE) {
            throw word.wrong("\"" + word.text() + "\" has no tolerances: leave out \"closingTolerances\", or say \""
                    + ValueDocument.word(Closure.WITHIN_TOLERANCE) + "\"");
        }
        return bench.closingWithin(
                RecordDocument.tolerances(tolerances.get()), ValueDocument.mass(f.get("closingReadingError")));
    }

    private static Map<String, Object> write(Vessel vessel) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", vessel.name());
        map.put("mass", ValueDocument.amount(vessel.mass()));
        vessel.brimVolume().ifPresent(brim -> map.put("brimVolume", ValueDocument.amount(brim)));
        vessel.workingVolume().ifPresent(working -> map.put("workingVolume", ValueDocument.amount(working)));
        return map;
    }

    private static Vessel vessel(Node node) {
        return node.object(f -> {
            Vessel vessel = Vessel.of(f.get("name").text(), ValueDocument.mass(f.get("mass")));
            Optional<Node> brim = f.find("brimVolume");
            return brim.isPresent()
                    ? vessel.holding(ValueDocument.volume(brim.get()), ValueDocument.volume(f.get("workingVolume")))
                    : vessel;
        });
    }

    static Map<String, Object> write(Balance balance) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (!balance.name().isEmpty()) {
            map.put("name", balance.name());
        }
        map.put("readability", ValueDocument.amount(balance.readability()));
        map.put("capacity", ValueDocument.amount(balance.capacity()));
        map.put("minimumLoad", ValueDocument.amount(balance.minimumLoad()));
        if (!balance.errors().equals(ErrorModel.readabilityOnly())) {
            map.put("errors", write(balance.errors()));
        }
        return map;
    }

    static Balance balance(Node node) {
        return node.object(f -> {
            Balance balance = Balance.of(
                            ValueDocument.mass(f.get("readability")), ValueDocument.mass(f.get("capacity")))
                    .withMinimumLoad(ValueDocument.mass(f.get("minimumLoad")));
            Balance named = f.find("name").map(Node::text).map(balance::named).orElse(balance);
            return f.find("errors")
                    .map(BenchDocument::errors)
                    .map(named::withErrors)
                    .orElse(named);
        });
    }

    private static Map<String, Object> write(ErrorModel errors) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("repeatability", ValueDocument.amount(errors.repeatability()));
        map.put("linearity", ValueDocument.amount(errors.linearity()));
        map.put("linearityLaw", ValueDocument.word(errors.linearityLaw()));
        errors.linearityBasis().ifPresent(basis -> map.put("linearityOf", ValueDocument.word(basis)));
        map.put("calibration", ValueDocument.number(errors.calibration()));
        errors.tareResolution().ifPresent(step -> map.put("tareResolution", ValueDocument.amount(step)));
        map.put("leastResidue", ValueDocument.amount(errors.residue().least()));
        map.put("mostResidue", ValueDocument.amount(errors.residue().greatest()));
        map.put("leastBuoyancy", ValueDocument.number(errors.buoyancy().lower().orElseThrow()));
        map.put("mostBuoyancy", ValueDocument.number(errors.buoyancy().upper().orElseThrow()));
        return map;
    }

    private static ErrorModel errors(Node node) {
        return node.object(f -> {
            Ratio least = ValueDocument.number(f.get("leastBuoyancy"));
            Ratio most = ValueDocument.number(f.get("mostBuoyancy"));
            ErrorModel errors = linearity(f)
                    .withRepeatability(ValueDocument.mass(f.get("repeatability")))
                    .withCalibration(ValueDocument.number(f.get("calibration")))
                    .withResidue(ValueDocument.mass(f.get("leastResidue")), ValueDocument.mass(f.get("mostResidue")))
                    .withBuoyancy(Bounds.closed(least, most));
            return f.find("tareResolution")
                    .map(ValueDocument::mass)
                    .map(errors::withTareResolution)
                    .orElse(errors);
        });
    }

    /** Nothing is nothing of whatever it is said; any other linearity has to say of what it is. */
    private static ErrorModel linearity(Node.Fields f) {
        Amount<Mass> halfWidth = ValueDocument.mass(f.get("linearity"));
        Law law = ValueDocument.constant(f.get("linearityLaw"), Law.values());
        ErrorModel none = ErrorModel.readabilityOnly();
        if (halfWidth.isZero() && f.find("linearityOf").isEmpty()) {
            return none.withLinearityOfIndication(halfWidth, law);
        }
        return switch (ValueDocument.constant(f.get("linearityOf"), LinearityBasis.values())) {
            case INDICATION -> none.withLinearityOfIndication(halfWidth, law);
            case NET_READING -> none.withLinearityOfNetReading(halfWidth, law);
        };
    }
}
