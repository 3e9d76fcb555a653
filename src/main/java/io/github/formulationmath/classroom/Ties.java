package io.github.formulationmath.classroom;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;

/** Where a number goes that lies half way between two steps. */
enum Ties {
    /** To the even step, as on the displays of this library. */
    DISPLAY,
    /** Up, as schools teach. */
    SCHOOL;

    Rounding to(Ratio step) {
        Rounding display = Rounding.toMultipleOf(step);
        return this == DISPLAY ? display : display.with(RoundingMode.HALF_UP);
    }

    Ties other() {
        return this == DISPLAY ? SCHOOL : DISPLAY;
    }
}
