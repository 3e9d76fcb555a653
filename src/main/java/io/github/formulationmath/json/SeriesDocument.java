package io.github.formulationmath.json;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.SeriesReadings;
import io.github.formulationmath.series.Trial;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A series of trials in a document: the versions and how each is weighed, and what was read of them so far. */
final class SeriesDocument {

    private static final String PLAN = "formulation-math/series-plan";
    private static final String SERIES = "formulation-math/series";
    private static final String BASE = "base";

    private SeriesDocument() {}

    static Written writePlan(SeriesPlan plan) {
        return plan(ValueDocument.document(PLAN), plan);
    }

    static SeriesPlan readPlan(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, PLAN);
            return plan(f);
        });
    }

    private static Written plan(Written written, SeriesPlan plan) {
        return written.with("versions", plan.trials(), trial -> FormulaDocument.write(trial.formula()))
                .with("tolerances", BenchDocument.write(plan.tolerances()))
                .with("method", ValueDocument.word(plan.method()))
                .with(BASE, plan.base(), SeriesDocument::weighed)
                .with("trials", plan.trials(), trial -> weighed(trial.plan()));
    }

    private static Written weighed(WeighingPlan plan) {
        return PlanDocument.plan(Written.empty(), plan);
    }

    private static WeighingPlan weighed(Node node) {
        return node.object(PlanDocument::plan);
    }

    private static SeriesPlan plan(Node.Fields f) {
        List<Formula> versions = f.get("versions").list(FormulaDocument::read);
        Tolerances tolerances = BenchDocument.tolerances(f.get("tolerances"));
        WeighingMethod method = ValueDocument.constant(f.get("method"), WeighingMethod.values());
        Optional<WeighingPlan> base = f.find(BASE).map(SeriesDocument::weighed);
        Node trials = f.get("trials");
        List<WeighingPlan> plans = trials.list(SeriesDocument::weighed);
        return trials.reading(() -> SeriesPlan.of(versions, tolerances, method, base, plans));
    }

    static Written write(SeriesReadings series) {
        Written written = plan(ValueDocument.document(SERIES), series.plan());
        Map<WeighingPlan, String> numbers = new LinkedHashMap<>();
        names(series.plan()).forEach((name, plan) -> numbers.put(plan, name));
        return written.with(
                "readings",
                series.readings(),
                read -> PlanDocument.readings(Written.of("of", numbers.getOrDefault(read.plan(), "")), read));
    }

    static SeriesReadings read(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, SERIES);
            SeriesReadings[] series = {SeriesReadings.begun(plan(f))};
            Map<String, WeighingPlan> plans = names(series[0].plan());
            List<String> known = new ArrayList<>();
            f.list("readings", node -> {
                Readings read = node.object(g -> readings(g, plans, known));
                series[0] = node.reading(() -> series[0].with(read));
                return read;
            });
            return series[0];
        });
    }

    private static Readings readings(Node.Fields f, Map<String, WeighingPlan> plans, List<String> known) {
        Node of = f.get("of");
        WeighingPlan plan = plans.get(of.text());
        if (plan == null) {
            throw of.wrong("\"" + of.text() + "\" is neither \"" + BASE + "\" nor the number of a trial: there are "
                    + plans.keySet());
        }
        if (known.contains(of.text())) {
            throw of.wrong("there are two readings of \"" + of.text() + "\": keep one of them");
        }
        known.add(of.text());
        return PlanDocument.readings(f, plan);
    }

    /** The base, and each trial by its number from 1. */
    private static Map<String, WeighingPlan> names(SeriesPlan plan) {
        Map<String, WeighingPlan> all = new LinkedHashMap<>();
        plan.base().ifPresent(base -> all.put(BASE, base));
        for (Trial trial : plan.trials()) {
            all.put(Integer.toString(all.size() + (plan.base().isPresent() ? 0 : 1)), trial.plan());
        }
        return all;
    }
}
