package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.function.Function;

/** A number of no unit that people weigh in, such as a variance, with the relation it came from. */
record Derived(Origin origin) implements Explained {

    static <T> Derived of(Function<? super T, Phrase> question, T owner, Figure<? super T> figure) {
        return of(question, figure.in(owner, Reckoning.plain()), owner, figure);
    }

    /** Of a number that is known already. */
    static <T> Derived of(Function<? super T, Phrase> question, Ratio number, T owner, Figure<? super T> figure) {
        return new Derived(Origin.of(question, number, owner, figure));
    }

    Ratio number() {
        return origin.number();
    }

    @Override
    public String toString() {
        return number().toString();
    }
}
