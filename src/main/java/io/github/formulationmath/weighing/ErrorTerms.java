package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.ErrorTerm.Figure;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import io.github.formulationmath.weighing.ErrorTerm.Range;
import io.github.formulationmath.working.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Mass;

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
        List<Load> end = indication(i);
        add(ErrorSource.READING, Law.RECTANGULAR, readability(balance), end);
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
        if (addition.method() == WeighingMethod.BY_DIFFERENCE) {
            add(ErrorSource.READING, Law.RECTANGULAR, readability(balance), beginning);
            addLinearity(balance, beginning);
        } else {
            add(ErrorSource.TARE, Law.RECTANGULAR, tareStep(balance), beginning);
            if (balance.errors().linearityBasis().equals(Optional.of(LinearityBasis.INDICATION))) {
                addLinearity(balance, beginning);
            }
        }
        addRepeatability(balance, isShared(i) ? beginning : List.of(new Load(i, Ratio.ONE)), isShared(i));
    }

    private void addLinearity(Balance balance, List<Load> loads) {
        ErrorModel errors = balance.errors();
        Figure linearity = new Figure(ErrorTerm.LINEARITY, subjectOf(balance), grams(errors.linearity()), false);
        add(ErrorSource.LINEARITY, errors.linearityLaw(), linearity, loads);
    }

    private void addRepeatability(Balance balance, List<Load> loads, boolean half) {
        Figure spread = new Figure(
                ErrorTerm.REPEATABILITY,
                subjectOf(balance),
                grams(balance.errors().repeatability()),
                false);
        addTerm(ErrorTerm.of(ErrorSource.REPEATABILITY, Law.NORMAL, spread, loads, half));
    }

    private static Figure readability(Balance balance) {
        return new Figure(ErrorTerm.READABILITY, subjectOf(balance), grams(balance.readability()), true);
    }

    /** Whether an addition has an indication in common with a neighbour. */
    private boolean isShared(int i) {
        return goesOn(i) || goesOn(i + 1);
    }

    /** The error of an indication: this addition gets it, and the next one loses it if it goes on from there. */
    private List<Load> indication(int i) {
        Load here = new Load(i, Ratio.ONE);
        return goesOn(i + 1) ? List.of(here, new Load(i + 1, MINUS_ONE)) : List.of(here);
    }

    private void addOwn(int i) {
        Addition addition = additions.get(i);
        ErrorModel errors = addition.balance().errors();
        if (addition.method() == WeighingMethod.FROM_BOAT) {
            Range residue = new Range(
                    ErrorTerm.LEAST_RESIDUE,
                    ErrorTerm.MOST_RESIDUE,
                    subjectOf(addition.balance()),
                    grams(errors.leastResidue()),
                    grams(errors.mostResidue()));
            add(ErrorSource.RESIDUE, Law.RECTANGULAR, residue, List.of(new Load(i, MINUS_ONE)));
        }
        Range air = new Range(
                ErrorTerm.LEAST_BUOYANCY,
                ErrorTerm.MOST_BUOYANCY,
                addition.subject(),
                addition.buoyancy().lower().orElseThrow(),
                addition.buoyancy().upper().orElseThrow());
        add(
                ErrorSource.BUOYANCY,
                Law.RECTANGULAR,
                air,
                List.of(new Load(i, addition.reading().canonical())));
    }

    /** One term per balance, common to all its additions. */
    private void addCalibrations() {
        Map<Balance, List<Load>> loads = new LinkedHashMap<>();
        for (int i = 0; i < additions.size(); i++) {
            Addition addition = additions.get(i);
            loads.computeIfAbsent(addition.balance(), b -> new ArrayList<>())
                    .add(new Load(i, addition.reading().canonical()));
        }
        loads.forEach((balance, its) -> add(
                ErrorSource.CALIBRATION,
                Law.NORMAL,
                new Figure(
                        ErrorTerm.CALIBRATION,
                        subjectOf(balance),
                        balance.errors().calibration(),
                        false),
                its));
    }

    private void add(ErrorSource source, Law law, ErrorTerm.Figures figures, List<Load> loads) {
        addTerm(ErrorTerm.of(source, law, figures, loads, false));
    }

    private void addTerm(ErrorTerm term) {
        if (!term.isNothing()) {
            terms.add(term);
        }
    }

    /** Whether there is such an addition, and it begins at the indication of the one before. */
    private boolean goesOn(int i) {
        return i > 0 && i < additions.size() && additions.get(i - 1).sharesIndicationsWith(additions.get(i));
    }

    private static Figure tareStep(Balance balance) {
        return balance.errors()
                .tareResolution()
                .map(step -> new Figure(ErrorTerm.TARE_STEP, subjectOf(balance), grams(step), true))
                .orElseGet(() -> readability(balance));
    }

    private static Subject subjectOf(Balance balance) {
        return Subject.of(balance.name(), balance.name());
    }

    private static Ratio grams(Amount<Mass> amount) {
        return amount.canonical();
    }
}
