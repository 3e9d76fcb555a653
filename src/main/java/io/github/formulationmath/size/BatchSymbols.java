package io.github.formulationmath.size;

import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.math.RoundingMode;

/** The symbols and roundings that the relations about batch sizes share. */
final class BatchSymbols {

    static final Symbol LINE_MASS = Symbol.of("m", "line-mass", Kind.MASS);
    static final Symbol LEAST_FOR = Symbol.of("M", "least-batch-for", Kind.MASS);
    static final Symbol LEAST = Symbol.of("M", "least-batch", Kind.MASS);
    static final Symbol LOWER = Symbol.of("M", "smallest-of-window", Kind.MASS);
    static final Symbol UPPER = Symbol.of("M", "largest-of-window", Kind.MASS);

    static final Symbol LEAST_DIVISIONS = Symbol.of("l", "least-divisions", Kind.NUMBER);
    static final Symbol MOST_DIVISIONS = Symbol.of("u", "most-divisions", Kind.NUMBER);
    static final Symbol ROOM_UNDER_CAP = Symbol.of("G", "room-under-cap", Kind.SHARE_DIFFERENCE);
    static final Symbol ERRORS_AGAINST_CAP = Symbol.of("H", "errors-against-cap", Kind.MASS);

    /** To the next whole number, up. */
    static final Rounding UP = Rounding.toDecimalPlaces(0).with(RoundingMode.CEILING);

    /** To the next whole number, down. */
    static final Rounding DOWN = Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR);

    static final Subject MIN = Subject.of("min", "");
    static final Subject LOW = Subject.of("low", "");
    static final Subject HIGH = Subject.of("high", "");

    private BatchSymbols() {}
}
