package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** The reckoning that keeps what was done, in order. Used by one thread, for one working. */
final class Recorder implements Reckoning<Term> {

    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, Step> byLabel = new HashMap<>();
    private final Map<Origin, Term> byOrigin = new HashMap<>();
    private final Set<Entry.Note> notes = new HashSet<>();

    private UnitChoice units = UnitChoice.canonical();
    private UnitChoice ofDisplay = UnitChoice.canonical();

    List<Entry> entries() {
        return entries;
    }

    @Override
    public Ratio number(Term value) {
        return value.value();
    }

    @Override
    public Term literal(Ratio value) {
        return new Term.Literal(value);
    }

    @Override
    public Term literal(long value) {
        return new Term.Literal(Ratio.of(value));
    }

    @Override
    public Term given(Symbol symbol, Subject subject, Ratio value, Source source) {
        return enter(Step.given(symbol, subject, value, source));
    }

    @Override
    public Term given(Symbol symbol, Subject subject, InUnit amount, Source source) {
        units = units.orElse(symbol.kind(), amount);
        return given(symbol, subject, amount.canonical(), source);
    }

    @Override
    public Term given(Symbol symbol, Subject subject, InUnit amount, Supplier<Source> source) {
        return given(symbol, subject, amount, source.get());
    }

    @Override
    public Term displayStep(Symbol symbol, Subject subject, InUnit step, Source source) {
        ofDisplay = ofDisplay.orElse(symbol.kind(), step);
        return given(symbol, subject, step.canonical(), source);
    }

    /** The units of the displays, else those in which something was given. */
    UnitChoice units() {
        return ofDisplay.orElse(units);
    }

    UnitChoice ofDisplay() {
        return ofDisplay;
    }

    @Override
    public Term known(Explained earlier) {
        Origin origin = earlier.origin();
        Term done = byOrigin.get(origin);
        if (done != null) {
            return done;
        }
        Term derived = origin.derive(this);
        if (!derived.value().equals(origin.number())) {
            throw new IllegalStateException(
                    "the working leads to " + derived.value() + ", the result is " + origin.number());
        }
        byOrigin.put(origin, derived);
        return derived;
    }

    @Override
    public Term named(Symbol symbol, Subject subject, Term value) {
        return enter(Step.computed(symbol, subject, value));
    }

    /** A label stands for one value: met again with the same value it is the same step, with another it is a mistake. */
    private Step enter(Step step) {
        Step known = byLabel.putIfAbsent(step.label(), step);
        if (known == null) {
            entries.add(step);
            return step;
        }
        if (!known.symbol().equals(step.symbol()) || !known.value().equals(step.value())) {
            throw new IllegalStateException(
                    "the symbol " + step.label() + " stands for two values in one working: " + known + " and " + step);
        }
        return known;
    }

    @Override
    public Term apply(Operation operation, List<Term> inputs) {
        return Term.Applied.of(operation, inputs);
    }

    @Override
    public Term sum(Term a, Term b) {
        return apply(Arithmetic.SUM, List.of(a, b));
    }

    @Override
    public Term difference(Term a, Term b) {
        return apply(Arithmetic.DIFFERENCE, List.of(a, b));
    }

    @Override
    public Term product(Term a, Term b) {
        return apply(Arithmetic.PRODUCT, List.of(a, b));
    }

    @Override
    public Term quotient(Term a, Term b) {
        return apply(Arithmetic.QUOTIENT, List.of(a, b));
    }

    @Override
    public Term rounded(Term a, Rounding rounding) {
        return apply(new Operation.Rounded(rounding), List.of(a));
    }

    @Override
    public boolean holds(Term a, Comparison comparison, Term b) {
        boolean holds = comparison.holds(a.value(), b.value());
        entries.add(new Entry.Decision(a, comparison, b, holds));
        return holds;
    }

    @Override
    public void note(Supplier<Phrase> phrase) {
        Entry.Note note = new Entry.Note(phrase.get());
        if (notes.add(note)) {
            entries.add(note);
        }
    }
}
