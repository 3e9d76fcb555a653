package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.ErrorTerm.Figure;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import io.github.formulationmath.weighing.ErrorTerm.Range;
import io.github.formulationmath.working.Subject;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

    /** What happens at the display: the tare, unless the addition before left an indication, and the reading. */
    private void addDisplay(int i) {
        Balance balance = additions.get(i).balance();
        ErrorModel errors = balance.errors();
        if (!goesOn(i)) {
            add(ErrorSource.TARE, Law.RECTANGULAR, tareStep(balance), List.of(new Load(i, MINUS_ONE)));
        }
        List<Load> indication = indication(i);
        Subject subject = subjectOf(balance);
        Figure step = new Figure(ErrorTerm.READABILITY, subject, balance.gramsPerDivision(), true);
        Figure linearity = new Figure(ErrorTerm.LINEARITY, subject, grams(errors.linearity()), false);
        Figure spread = new Figure(ErrorTerm.REPEATABILITY, subject, grams(errors.repeatability()), false);
        add(ErrorSource.READING, Law.RECTANGULAR, step, indication);
        add(ErrorSource.REPEATABILITY, Law.NORMAL, spread, indication);
        add(ErrorSource.LINEARITY, errors.linearityLaw(), linearity, indication);
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
                List.of(new Load(i, addition.reading().result())));
    }

    /** One term per balance, common to all its additions. */
    private void addCalibrations() {
        Map<Balance, List<Load>> loads = new LinkedHashMap<>();
        for (int i = 0; i < additions.size(); i++) {
            Addition addition = additions.get(i);
            loads.computeIfAbsent(addition.balance(), b -> new ArrayList<>())
                    .add(new Load(i, addition.reading().result()));
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
        ErrorTerm term = ErrorTerm.of(source, law, figures, loads);
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
                .orElseGet(
                        () -> new Figure(ErrorTerm.READABILITY, subjectOf(balance), balance.gramsPerDivision(), true));
    }

    private static Subject subjectOf(Balance balance) {
        return Subject.of(balance.name(), balance.name());
    }

    private static Ratio grams(Amount<Mass> amount) {
        return amount.in(FormulationUnits.GRAM);
    }
}
