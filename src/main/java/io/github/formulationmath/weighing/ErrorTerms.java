package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.weighing.ErrorTerm.Figure;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import io.github.formulationmath.weighing.ErrorTerm.Range;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** The independent errors of additions made one after another. */
final class ErrorTerms {

    private static final Ratio MINUS_ONE = Ratio.of(-1);

    private final List<Addition> additions;
    private final List<ErrorTerm> terms = new ArrayList<>();
    private ErrorTerm.@Nullable HalfStep step;
    private @Nullable Balance stepOf;

    private ErrorTerms(List<Addition> additions) {
        this.additions = additions;
    }

    static List<ErrorTerm> of(List<Addition> additions) {
        ErrorTerms all = new ErrorTerms(additions);
        for (int i = 0; i < additions.size(); i++) {
            all.addDisplay(i);
            all.addOwn(i);
        }
        all.addCalibrations();
        return List.copyOf(all.terms);
    }

    /** What happens at the display: the indication at which the addition begins, unless it is that before, and its end. */
    private void addDisplay(int i) {
        boolean goesOnHere = goesOn(i);
        boolean goesOnFromHere = goesOn(i + 1);
        if (!goesOnHere) {
            addBeginning(i, goesOnFromHere);
        }
        Balance balance = additions.get(i).balance();
        // The error of an indication: this addition gets it, and the next one loses it if it goes on from there.
        Load here = new Load(i, Ratio.ONE);
        List<Load> end = goesOnFromHere ? List.of(here, new Load(i + 1, MINUS_ONE)) : List.of(here);
        add(ErrorSource.READING, Law.RECTANGULAR, readability(balance), end, false);
        addLinearity(balance, end);
        // An indication in common with a neighbour has half the variance of the net weighing.
        if (goesOnHere || goesOnFromHere) {
            addRepeatability(balance, end, true);
        }
    }

    /** The balance is tared, or, weighing by difference, read like at the end. */
    private void addBeginning(int i, boolean isShared) {
        Addition addition = additions.get(i);
        Balance balance = addition.balance();
        List<Load> beginning = List.of(new Load(i, MINUS_ONE));
        boolean isRead = addition.method() == WeighingMethod.BY_DIFFERENCE;
        ErrorTerm.HalfStep step = isRead ? readability(balance) : tareStep(balance);
        add(isRead ? ErrorSource.READING : ErrorSource.TARE, Law.RECTANGULAR, step, beginning, false);
        if (isRead || balance.errors().linearityBasis().equals(Optional.of(LinearityBasis.INDICATION))) {
            addLinearity(balance, beginning);
        }
        addRepeatability(balance, isShared ? beginning : List.of(new Load(i, Ratio.ONE)), isShared);
    }

    private void addLinearity(Balance balance, List<Load> loads) {
        ErrorModel errors = balance.errors();
        Ratio width = errors.linearity().canonical();
        if (!width.isZero()) {
            Figure linearity = figure(ErrorTerm.LINEARITY, balance, width);
            add(ErrorSource.LINEARITY, errors.linearityLaw(), linearity, loads, false);
        }
    }

    private void addRepeatability(Balance balance, List<Load> loads, boolean half) {
        Ratio spread = balance.errors().repeatability().canonical();
        if (!spread.isZero()) {
            Figure repeatability = figure(ErrorTerm.REPEATABILITY, balance, spread);
            add(ErrorSource.REPEATABILITY, Law.NORMAL, repeatability, loads, half);
        }
    }

    private void addOwn(int i) {
        Addition addition = additions.get(i);
        ErrorModel errors = addition.balance().errors();
        if (addition.method() == WeighingMethod.FROM_BOAT) {
            Range residue = new Range(
                    ErrorTerm.LEAST_RESIDUE,
                    ErrorTerm.MOST_RESIDUE,
                    subjectOf(addition.balance()),
                    errors.residue().least().canonical(),
                    errors.residue().greatest().canonical());
            add(ErrorSource.RESIDUE, Law.RECTANGULAR, residue, List.of(new Load(i, MINUS_ONE)), false);
        }
        Ratio low = addition.buoyancy().lower().orElseThrow();
        Ratio high = addition.buoyancy().upper().orElseThrow();
        if (!low.isZero() || !high.isZero()) {
            Range air = new Range(ErrorTerm.LEAST_BUOYANCY, ErrorTerm.MOST_BUOYANCY, addition.subject(), low, high);
            add(ErrorSource.BUOYANCY, Law.RECTANGULAR, air, List.of(reading(i)), false);
        }
    }

    /** One term per balance, common to all its additions. */
    private void addCalibrations() {
        Map<Balance, List<Load>> loads = new LinkedHashMap<>();
        for (int i = 0; i < additions.size(); i++) {
            Balance balance = additions.get(i).balance();
            if (!balance.errors().calibration().isZero()) {
                loads.computeIfAbsent(balance, b -> new ArrayList<>()).add(reading(i));
            }
        }
        loads.forEach((balance, its) -> {
            Ratio relative = balance.errors().calibration();
            add(ErrorSource.CALIBRATION, Law.NORMAL, figure(ErrorTerm.CALIBRATION, balance, relative), its, false);
        });
    }

    /** An error in proportion to what the display read. */
    private Load reading(int i) {
        return new Load(i, additions.get(i).reading().canonical());
    }

    private void add(ErrorSource source, Law law, ErrorTerm.Figures figures, List<Load> loads, boolean half) {
        ErrorTerm term = ErrorTerm.of(source, law, figures, loads, half);
        if (!term.isNothing()) {
            terms.add(term);
        }
    }

    /** Whether there is such an addition, and it begins at the indication of the one before. */
    private boolean goesOn(int i) {
        return i > 0 && i < additions.size() && additions.get(i - 1).sharesIndicationsWith(additions.get(i));
    }

    /** The step of a display: one figure for as long as one balance is used. */
    @SuppressWarnings("ReferenceEquality") // The same object is the common case; another is told anew.
    private ErrorTerm.HalfStep readability(Balance balance) {
        ErrorTerm.HalfStep known = step;
        if (known == null || balance != stepOf) {
            known = new ErrorTerm.HalfStep(ErrorTerm.READABILITY, subjectOf(balance), balance.readability());
            step = known;
            stepOf = balance;
        }
        return known;
    }

    private ErrorTerm.HalfStep tareStep(Balance balance) {
        Optional<Amount<Mass>> own = balance.errors().tareResolution();
        return own.isPresent()
                ? new ErrorTerm.HalfStep(ErrorTerm.TARE_STEP, subjectOf(balance), own.get())
                : readability(balance);
    }

    private static Figure figure(Symbol symbol, Balance balance, Ratio value) {
        return new Figure(symbol, subjectOf(balance), value);
    }

    private static Subject subjectOf(Balance balance) {
        return Subject.of(balance.name(), balance.name());
    }
}
