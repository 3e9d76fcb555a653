package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
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

/** The independent errors of additions made one after another. */
final class ErrorTerms {

    private static final Ratio MINUS_ONE = Ratio.of(-1);

    private final List<Addition> additions;
    private final List<ErrorTerm> terms = new ArrayList<>();

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
        if (!goesOn(i)) {
            addBeginning(i);
        }
        Balance balance = additions.get(i).balance();
        // The error of an indication: this addition gets it, and the next one loses it if it goes on from there.
        Load here = new Load(i, Ratio.ONE);
        List<Load> end = goesOn(i + 1) ? List.of(here, new Load(i + 1, MINUS_ONE)) : List.of(here);
        add(ErrorSource.READING, Law.RECTANGULAR, readability(balance), end, false);
        addLinearity(balance, end);
        if (isShared(i)) {
            addRepeatability(balance, end, true);
        }
    }

    /** The balance is tared, or, weighing by difference, read like at the end. */
    private void addBeginning(int i) {
        Addition addition = additions.get(i);
        Balance balance = addition.balance();
        List<Load> beginning = List.of(new Load(i, MINUS_ONE));
        boolean isRead = addition.method() == WeighingMethod.BY_DIFFERENCE;
        ErrorTerm.HalfStep step = isRead ? readability(balance) : tareStep(balance);
        add(isRead ? ErrorSource.READING : ErrorSource.TARE, Law.RECTANGULAR, step, beginning, false);
        if (isRead || balance.errors().linearityBasis().equals(Optional.of(LinearityBasis.INDICATION))) {
            addLinearity(balance, beginning);
        }
        addRepeatability(balance, isShared(i) ? beginning : List.of(new Load(i, Ratio.ONE)), isShared(i));
    }

    private void addLinearity(Balance balance, List<Load> loads) {
        ErrorModel errors = balance.errors();
        Figure linearity =
                figure(ErrorTerm.LINEARITY, balance, errors.linearity().canonical());
        add(ErrorSource.LINEARITY, errors.linearityLaw(), linearity, loads, false);
    }

    private void addRepeatability(Balance balance, List<Load> loads, boolean half) {
        Ratio spread = balance.errors().repeatability().canonical();
        add(
                ErrorSource.REPEATABILITY,
                Law.NORMAL,
                figure(ErrorTerm.REPEATABILITY, balance, spread),
                loads,
                half);
    }

    /** Whether an addition has an indication in common with a neighbour. */
    private boolean isShared(int i) {
        return goesOn(i) || goesOn(i + 1);
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
        Range air = new Range(
                ErrorTerm.LEAST_BUOYANCY,
                ErrorTerm.MOST_BUOYANCY,
                addition.subject(),
                addition.buoyancy().lower().orElseThrow(),
                addition.buoyancy().upper().orElseThrow());
        add(ErrorSource.BUOYANCY, Law.RECTANGULAR, air, List.of(reading(i)), false);
    }

    /** One term per balance, common to all its additions. */
    private void addCalibrations() {
        Map<Balance, List<Load>> loads = new LinkedHashMap<>();
        for (int i = 0; i < additions.size(); i++) {
            loads.computeIfAbsent(additions.get(i).balance(), b -> new ArrayList<>())
                    .add(reading(i));
        }
        loads.forEach((balance, its) -> {
            Ratio relative = balance.errors().calibration();
            add(
                    ErrorSource.CALIBRATION,
                    Law.NORMAL,
                    figure(ErrorTerm.CALIBRATION, balance, relative),
                    its,
                    false);
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

    private static ErrorTerm.HalfStep readability(Balance balance) {
        return new ErrorTerm.HalfStep(ErrorTerm.READABILITY, subjectOf(balance), balance.readability());
    }

    private static ErrorTerm.HalfStep tareStep(Balance balance) {
        return balance.errors()
                .tareResolution()
                .map(step -> new ErrorTerm.HalfStep(ErrorTerm.TARE_STEP, subjectOf(balance), step))
                .orElseGet(() -> readability(balance));
    }

    private static Figure figure(Symbol symbol, Balance balance, Ratio value) {
        return new Figure(symbol, subjectOf(balance), value);
    }

    private static Subject subjectOf(Balance balance) {
        return Subject.of(balance.name(), balance.name());
    }
}
