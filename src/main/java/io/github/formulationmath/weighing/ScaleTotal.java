package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;

/** The sum of all readings that one scale error changes: known from the term, added up again for a working. */
record ScaleTotal(MassRelations relations, ErrorTerm term) implements Explained {

    private static final Symbol TOTAL = Symbol.of("Rq", "scale-total", Kind.MASS);

    @Override
    public Phrase question() {
        return Phrase.of("question.scale-total");
    }

    @Override
    public Ratio result() {
        return term.totalLoad();
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        List<V> readings = new ArrayList<>();
        for (Load load : term.loads()) {
            readings.add(relations.reading(r, load.line()));
        }
        return r.named(TOTAL, term.origin().subject(), Sums.of(r, readings));
    }
}
