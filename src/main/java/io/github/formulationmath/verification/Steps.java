package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How finely the figures of a claim were rounded. One calculator shows its figures to one place: so the finest last digit
 * among figures that one unit measures is the step of them all, and what is shown to fewer places had its zeros left out. On
 * a balance that every figure fits the step is that of its display.
 *
 * <p>A figure that is no multiple of the finest, such as 1/3 beside 1/4, has its own step. So has 0: it shows nothing,
 * however fine.
 */
final class Steps {

    private static final Set<Ratio> POWERS_OF_TEN = IntStream.rangeClosed(-9, 9)
            .mapToObj(power -> Ratio.parse("1e" + power))
            .collect(Collectors.toUnmodifiableSet());

    private static final Rounding FIRST_DIGIT = Rounding.toSignificantDigits(1);

    private final List<Figure> figures;
    private final @Nullable Ratio display;

    private Steps(List<Figure> figures, @Nullable Ratio display) {
        this.figures = figures;
        this.display = display;
    }

    static Steps of(Claim claim, List<Figure> figures) {
        return new Steps(
                figures,
                claim.balance().map(balance -> display(figures, balance)).orElse(null));
    }

    /** The step of the display in grams, or none if it is not the display of these figures. */
    private static @Nullable Ratio display(List<Figure> figures, Balance balance) {
        Ratio step = balance.readability().canonical();
        if (figures.isEmpty() || !figures.stream().allMatch(figure -> liesOn(figure, step))) {
            return null;
        }
        Ratio finest = figures.stream().map(Steps::lastDigit).reduce(Ratio::min).orElse(step);
        return step.max(finest);
    }

    private static boolean liesOn(Figure figure, Ratio grams) {
        return !figure.isVolume() && size(figure).dividedBy(grams).isInteger();
    }

    private static Ratio size(Figure figure) {
        return figure.number().times(figure.unitSize());
    }

    private static Ratio lastDigit(Figure figure) {
        return figure.digit().times(figure.unitSize());
    }

    /**
     * All to one place.
     *
     * @param aside the place of a figure that the others take no place from, since it may be what they leave; or −1
     * @return the steps in the units of the figures
     */
    List<Ratio> even(int aside) {
        return steps(aside, false);
    }

    /**
     * Larger figures to fewer places, never to more: a figure has the finest last digit of those that have as many digits
     * before the point as it has, or more. Where fractions are shown it is one place for all.
     *
     * @param aside as in {@link #even(int)}
     * @return the steps in the units of the figures
     */
    List<Ratio> coarserWhenLarger(int aside) {
        return steps(aside, true);
    }

    private List<Ratio> steps(int aside, boolean bySize) {
        List<Ratio> steps = new ArrayList<>(figures.stream().map(this::own).toList());
        if (display != null) {
            return steps;
        }
        Map<String, List<Integer>> families = new HashMap<>();
        for (int i = 0; i < figures.size(); i++) {
            families.computeIfAbsent(family(figures.get(i)), key -> new ArrayList<>())
                    .add(i);
        }
        families.values().forEach(family -> share(family, aside, bySize, steps));
        return steps;
    }

    private Ratio own(Figure figure) {
        return display == null ? figure.ownStep() : display.dividedBy(figure.unitSize());
    }

    /** The figures of one family take their steps from each other, from the largest figures down. */
    private void share(List<Integer> family, int aside, boolean bySize, List<Ratio> steps) {
        // Fractions are written in lowest terms: 15 oz beside 13/16 oz says nothing of its own place.
        boolean classes = bySize && family.stream().allMatch(i -> figures.get(i).decimal() != null);
        TreeMap<Ratio, List<Integer>> falling = new TreeMap<>(Comparator.reverseOrder());
        for (int i : family) {
            falling.computeIfAbsent(classes ? decade(figures.get(i)) : Ratio.ZERO, key -> new ArrayList<>())
                    .add(i);
        }
        boolean binary =
                family.stream().anyMatch(i -> i != aside && figures.get(i).isBinary());
        @Nullable Ratio finest = null;
        for (List<Integer> alike : falling.values()) {
            for (int i : alike) {
                Ratio digit = lastDigit(figures.get(i));
                finest = i == aside ? finest : finest == null ? digit : finest.min(digit);
            }
            for (int i : alike) {
                steps.set(i, step(figures.get(i), finest, binary));
            }
        }
    }

    /** 10 for 12.5 and for 80: what a calculator goes by that shows as many digits behind the point as there is room. */
    private static Ratio decade(Figure figure) {
        Ratio size = POWERS_OF_TEN.contains(figure.unitSize()) ? size(figure) : figure.number();
        return size.isZero() ? size : FIRST_DIGIT.stepFor(size);
    }

    private static Ratio step(Figure figure, @Nullable Ratio finest, boolean binary) {
        if (figure.isBinary() || binary && !figure.showsNothing()) {
            return figure.binaryStep();
        }
        if (finest == null || figure.showsNothing()) {
            return figure.digit();
        }
        Ratio step = finest.dividedBy(figure.unitSize()).min(figure.digit());
        return figure.number().dividedBy(step).isInteger() ? step : figure.digit();
    }

    /** How finely a total was shown that came with the figures. */
    Ratio ofTotal(Figure total) {
        List<Figure> like = figures.stream()
                .filter(figure -> family(figure).equals(family(total)))
                .toList();
        boolean binary = like.stream().anyMatch(Figure::isBinary);
        return display == null
                ? step(
                        total,
                        like.stream().map(Steps::lastDigit).reduce(Ratio::min).orElse(null),
                        binary)
                : total.ownStep();
    }

    /** Figures that one step can measure: units that are powers of ten of each other; ounces and pounds. */
    private static String family(Figure figure) {
        Ratio size = figure.unitSize();
        String kind = figure.isVolume() ? "volume" : "mass";
        if (POWERS_OF_TEN.contains(size)) {
            return kind;
        }
        boolean pound = !figure.isVolume() && size.equals(FormulationUnits.factorOf(FormulationUnits.POUND));
        return kind + " " + (pound ? FormulationUnits.factorOf(FormulationUnits.OUNCE) : size);
    }
}
