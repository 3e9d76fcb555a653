package io.github.formulationmath.json;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.LinearityBasis;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Mass;

/** The size of a batch, the bench it is made on and the tolerances it is held against, in a document. */
final class BenchDocument {

    private BenchDocument() {}

    static Written write(BatchSize size) {
        if (size instanceof BatchSize.OfMass s) {
            return Written.of("mass", ValueDocument.amount(s.mass()));
        }
        if (size instanceof BatchSize.OfPacks s) {
            return Written.of("packs", Integer.toString(s.packs()))
                    .with("fill", ValueDocument.amount(s.fillMass()))
                    .with("overage", ValueDocument.share(s.overage()));
        }
        if (size instanceof BatchSize.OfStock s) {
            return Written.of("stock", ValueDocument.amount(s.stock())).with("line", number(s.line()));
        }
        BatchSize.OfVolume s = (BatchSize.OfVolume) size;
        return Written.of("volume", ValueDocument.amount(s.volume()))
                .with("density", s.density(), ValueDocument::density);
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

    /** The number of a line, from 1. */
    static String number(FormulaLine line) {
        return Integer.toString(line.position());
    }

    static FormulaLine line(Node node, Formula formula) {
        int number = ValueDocument.count(node);
        if (number < 1 || number > formula.lines().size()) {
            throw node.wrong("\"" + node.text() + "\" is the number of no line: there are "
                    + formula.lines().size());
        }
        return formula.lines().get(number - 1);
    }

    static Written write(Bench bench) {
        Written written = Written.of("balance", write(bench.balance()))
                .with("vessel", Optional.of(bench.vessel()).filter(v -> !v.equals(Vessel.none())), BenchDocument::write)
                .with("closure", ValueDocument.word(bench.closure()));
        bench.closingTolerances()
                .ifPresent(tolerances -> written.with("closingTolerances", write(tolerances))
                        .with("closingReadingError", ValueDocument.amount(bench.closingReadingError())));
        return written.with("productDensity", bench.productDensity(), ValueDocument::density);
    }

    static Bench bench(Node node) {
        return node.object(f -> {
            Bench bench = closing(f, Bench.of(balance(f.get("balance"))));
            Bench with = f.with(bench, "vessel", BenchDocument::vessel, Bench::with);
            return f.with(with, "productDensity", ValueDocument::density, Bench::withProductDensity);
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
        return bench.closingWithin(tolerances(tolerances.get()), ValueDocument.mass(f.get("closingReadingError")));
    }

    /** A balance with what stands on it. */
    static Written write(WeighingStation station) {
        return Written.of("balance", write(station.balance()))
                .with(
                        "vessel",
                        Optional.of(station.vessel()).filter(v -> !v.equals(Vessel.none())),
                        BenchDocument::write)
                .with("method", ValueDocument.word(station.method()));
    }

    static WeighingStation station(Node node) {
        return node.object(BenchDocument::place);
    }

    static WeighingStation place(Node.Fields f) {
        return new WeighingStation(
                balance(f.get("balance")),
                f.find("vessel").map(BenchDocument::vessel).orElseGet(Vessel::none),
                ValueDocument.constant(f.get("method"), WeighingMethod.values()));
    }

    private static Written write(Vessel vessel) {
        return Written.of("name", vessel.name())
                .with("mass", ValueDocument.amount(vessel.mass()))
                .with("brimVolume", vessel.brimVolume(), ValueDocument::amount)
                .with("workingVolume", vessel.workingVolume(), ValueDocument::amount);
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

    static Written write(Balance balance) {
        Written written = balance.name().isEmpty()
                ? Written.of("readability", ValueDocument.amount(balance.readability()))
                : Written.of("name", balance.name()).with("readability", ValueDocument.amount(balance.readability()));
        return written.with("capacity", ValueDocument.amount(balance.capacity()))
                .with("minimumLoad", ValueDocument.amount(balance.minimumLoad()))
                .with(
                        "errors",
                        Optional.of(balance.errors()).filter(e -> !e.equals(ErrorModel.readabilityOnly())),
                        BenchDocument::write);
    }

    static Balance balance(Node node) {
        return node.object(f -> {
            Balance balance = Balance.of(
                            ValueDocument.mass(f.get("readability")), ValueDocument.mass(f.get("capacity")))
                    .withMinimumLoad(ValueDocument.mass(f.get("minimumLoad")));
            Balance named = f.with(balance, "name", Node::text, Balance::named);
            return f.with(named, "errors", BenchDocument::errors, Balance::withErrors);
        });
    }

    private static Written write(ErrorModel errors) {
        return Written.of("repeatability", ValueDocument.amount(errors.repeatability()))
                .with("linearity", ValueDocument.amount(errors.linearity()))
                .with("linearityLaw", ValueDocument.word(errors.linearityLaw()))
                .with("linearityOf", errors.linearityBasis(), ValueDocument::word)
                .with("calibration", ValueDocument.number(errors.calibration()))
                .with("tareResolution", errors.tareResolution(), ValueDocument::amount)
                .with("leastResidue", ValueDocument.amount(errors.residue().least()))
                .with("mostResidue", ValueDocument.amount(errors.residue().greatest()))
                .with(
                        "leastBuoyancy",
                        ValueDocument.number(errors.buoyancy().lower().orElseThrow()))
                .with(
                        "mostBuoyancy",
                        ValueDocument.number(errors.buoyancy().upper().orElseThrow()));
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
            return f.with(errors, "tareResolution", ValueDocument::mass, ErrorModel::withTareResolution);
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

    static Written write(Tolerances tolerances) {
        return Written.of("general", ValueDocument.share(tolerances.general()))
                .with("phases", named(tolerances.byPhase()))
                .with("ingredients", named(tolerances.byIngredient()));
    }

    private static List<Written> named(Map<String, MassFraction> tolerances) {
        return tolerances.entrySet().stream()
                .map(each -> Written.of("name", each.getKey()).with("tolerance", ValueDocument.share(each.getValue())))
                .toList();
    }

    static Tolerances tolerances(Node node) {
        return node.object(f -> {
            Tolerances tolerances = Tolerances.of(ValueDocument.share(f.get("general")));
            List<Named> phases = f.list("phases", BenchDocument::named);
            for (Named phase : phases) {
                tolerances = tolerances.withPhase(phase.name(), phase.tolerance());
            }
            List<Named> ingredients = f.list("ingredients", BenchDocument::named);
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
}
