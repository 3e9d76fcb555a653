package io.github.formulationmath.support;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Relations put together at random, with units that fit. */
public final class RandomWorkings {

    private static final Symbol MASS = Symbol.of("m", "line-mass", Kind.MASS);
    private static final Symbol SHARE = Symbol.of("w", "share", Kind.SHARE);
    private static final Symbol NUMBER = Symbol.of("x", "relative-rounding-error", Kind.NUMBER);
    private static final Comparison[] COMPARISONS = Comparison.values();
    private static final RoundingMode[] MODES = {
        RoundingMode.HALF_EVEN,
        RoundingMode.HALF_UP,
        RoundingMode.HALF_DOWN,
        RoundingMode.UP,
        RoundingMode.DOWN,
        RoundingMode.CEILING,
        RoundingMode.FLOOR
    };

    private final Random random;
    private final List<Term> masses = new ArrayList<>();
    private final List<Term> numbers = new ArrayList<>();

    private RandomWorkings(long seed) {
        random = new Random(seed);
    }

    public static Working of(long seed) {
        return Working.of(Phrase.of("question.readings-total"), new RandomWorkings(seed)::relation);
    }

    private Term relation(Reckoning<Term> r) {
        int givens = 2 + random.nextInt(4);
        for (int i = 1; i <= givens; i++) {
            Subject subject = Subject.of(String.valueOf(i), "thing " + i);
            masses.add(r.given(MASS, subject, ratio(), Source.user()));
            numbers.add(r.given(SHARE, subject, ratio().dividedBy(100), Source.written("?")));
        }
        int steps = 1 + random.nextInt(8);
        for (int i = 1; i <= steps; i++) {
            Subject subject = Subject.of(String.valueOf(100 + i), "result " + i);
            if (random.nextBoolean()) {
                masses.add(r.named(MASS, subject, mass(r, 3)));
            } else {
                numbers.add(r.named(NUMBER, subject, number(r, 3)));
            }
            r.holds(mass(r, 1), COMPARISONS[random.nextInt(COMPARISONS.length)], mass(r, 1));
        }
        return random.nextBoolean() ? pick(masses) : mass(r, 2);
    }

    private Ratio ratio() {
        long top = random.nextInt(20_001) - 4_000L;
        long[] below = {1, 2, 3, 7, 10, 100, 1000, 450, 99};
        return Ratio.of(top == 0 ? 1 : top, below[random.nextInt(below.length)]);
    }

    private Term pick(List<Term> from) {
        return from.get(random.nextInt(from.size()));
    }

    private Term mass(Reckoning<Term> r, int depth) {
        if (depth == 0) {
            return pick(masses);
        }
        return switch (random.nextInt(10)) {
            case 0 -> r.sum(many(r, depth));
            case 1 -> r.difference(mass(r, depth - 1), mass(r, depth - 1));
            case 2 -> r.product(number(r, depth - 1), mass(r, depth - 1));
            case 3 -> divided(r, mass(r, depth - 1), number(r, depth - 1));
            case 4 -> r.absolute(mass(r, depth - 1));
            case 5 -> r.minimum(many(r, depth));
            case 6 -> r.maximum(many(r, depth));
            case 7 -> r.rounded(mass(r, depth - 1), rounding());
            case 8 -> r.root(r.product(r.absolute(mass(r, depth - 1)), r.absolute(mass(r, depth - 1))));
            default -> pick(masses);
        };
    }

    private Term number(Reckoning<Term> r, int depth) {
        if (depth == 0) {
            return random.nextInt(3) == 0 ? r.literal(ratio()) : pick(numbers);
        }
        return switch (random.nextInt(6)) {
            case 0 -> r.sum(number(r, depth - 1), number(r, depth - 1));
            case 1 -> r.difference(r.literal(1), number(r, depth - 1));
            case 2 -> r.product(number(r, depth - 1), number(r, depth - 1));
            case 3 -> ratioOf(r, mass(r, depth - 1), mass(r, depth - 1));
            case 4 -> r.rounded(number(r, depth - 1), rounding());
            default -> pick(numbers);
        };
    }

    private static Term divided(Reckoning<Term> r, Term above, Term below) {
        return r.number(below).isZero() ? above : r.quotient(above, below);
    }

    private static Term ratioOf(Reckoning<Term> r, Term above, Term below) {
        return r.number(below).isZero() ? r.literal(1) : r.quotient(above, below);
    }

    private List<Term> many(Reckoning<Term> r, int depth) {
        List<Term> terms = new ArrayList<>();
        int count = 1 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            terms.add(mass(r, depth - 1));
        }
        return terms;
    }

    private Rounding rounding() {
        Rounding grid = switch (random.nextInt(4)) {
            case 0 -> Rounding.toMultipleOf(Ratio.of(1 + random.nextInt(5), 10));
            case 1 -> Rounding.toDecimalPlaces(random.nextInt(4));
            case 2 -> Rounding.toSignificantDigits(1 + random.nextInt(5));
            default -> Rounding.none();
        };
        return grid.with(MODES[random.nextInt(MODES.length)]);
    }
}
