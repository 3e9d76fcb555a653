package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.FormulationUnits;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;

/** The known slips of bench calculations. Each is worked out from the right masses of the claim's own batch. */
public enum Slip {
    /** Shares of a phase, or of every phase, taken of that phase instead of the whole batch. */
    WRONG_WHOLE(Slip::wrongWhole),
    /** Parts read as percent: 3 parts of 4.2 taken as 3 % of the batch. */
    PARTS_AS_PERCENT(Slip::partsAsPercent),
    /** Millilitres read as grams, as if everything had the density of 1 g/mL: the batch, or lines with a density. */
    MILLILITRES_AS_GRAMS(Slip::millilitresAsGrams),
    /** One ounce taken for another: avoirdupois, troy, or a fluid ounce of water. */
    OUNCE_EXCHANGED(OunceExchanged::ways),
    /** The US fluid ounce taken for the imperial one, or the other way round. */
    FLUID_OUNCE_EXCHANGED(Slip::fluidOunceExchanged),
    /** Rounded to a finer step first, and the outcome rounded again. */
    ROUNDED_TWICE(Slip::roundedTwice),
    /** Cut off instead of rounded. */
    TRUNCATED(Slip::truncated),
    /** The overage left out. */
    OVERAGE_LEFT_OUT(shown -> overage(shown, Ratio.ONE.dividedBy(withOverage(shown)))),
    /** The overage added twice. */
    OVERAGE_TWICE(shown -> overage(shown, withOverage(shown))),
    /** The q.s. line not adjusted to the other lines: it has what belongs to one of them, to a phase, or to all. */
    REST_NOT_ADJUSTED(RestNotAdjusted::ways),
    /** The strength of a supplied solution ignored, so that the mass of the substance alone is weighed of it. */
    STRENGTH_IGNORED(Slip::strengthIgnored),
    /** Sodium hydroxide and potassium hydroxide exchanged. */
    ALKALI_EXCHANGED(AlkaliExchanged::ways),
    /** A density used upside down: of the batch, or of the lines shown as volumes. */
    DENSITY_INVERTED(Slip::densityInverted),
    /** The share of one line taken of the mass of a phase it is not in. */
    OTHER_PHASE(Slip::otherPhase),
    /** The decimal point of one figure moved by one place. */
    DECIMAL_POINT_MOVED(Slip::decimalPointMoved),
    /** Two neighbouring digits of one figure exchanged. */
    DIGITS_EXCHANGED(DigitsExchanged::ways);

    private static final Ratio US = FormulationUnits.factorOf(FormulationUnits.US_FLUID_OUNCE);
    private static final Ratio IMPERIAL = FormulationUnits.factorOf(FormulationUnits.IMPERIAL_FLUID_OUNCE);

    private final Function<Shown, Stream<Hypothesis>> ways;

    Slip(Function<Shown, Stream<Hypothesis>> ways) {
        this.ways = ways;
    }

    /** The slip in each way it can be made with a claim; none if the claim offers no place for it. */
    Stream<Hypothesis> ways(Shown shown) {
        return ways.apply(shown);
    }

    /** The key of its name in the wording. */
    String key() {
        return "slip." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Stream<Hypothesis> wrongWhole(Shown shown) {
        List<Phase> phases = shown.formula().phases();
        if (phases.size() < 2) {
            return Stream.empty();
        }
        Function<FormulaLine, Ratio> share = line -> shown.shareOfPhase(line.phase());
        return Stream.concat(
                phases.stream()
                        .filter(phase -> phase.lines().stream().anyMatch(shown::isWrong))
                        .flatMap(phase -> Hypothesis.changed(shown, phase.name(), phase.lines(), share)),
                Hypothesis.changed(shown, "", shown.formula().lines(), share));
    }

    private static Stream<Hypothesis> partsAsPercent(Shown shown) {
        Ratio total = Ratio.ZERO;
        for (FormulaLine line : shown.formula().lines()) {
            if (!(line.amount() instanceof LineAmount.Parts parts)) {
                return Stream.empty();
            }
            total = total.plus(parts.parts());
        }
        return Hypothesis.scaled(shown, "", total.dividedBy(100));
    }

    private static Stream<Hypothesis> millilitresAsGrams(Shown shown) {
        Stream<Hypothesis> lines = Hypothesis.eachOrAll(
                shown,
                line -> line.ingredient().density().isPresent(),
                line -> Ratio.ONE.dividedBy(Figure.densityOf(line)));
        return shown.claim().size() instanceof BatchSize.OfVolume size
                ? Stream.concat(
                        Hypothesis.scaled(
                                shown,
                                size.volume().toString(),
                                size.volume().in(FormulationUnits.MILLILITRE).dividedBy(shown.mass())),
                        lines)
                : lines;
    }

    private static Stream<Hypothesis> fluidOunceExchanged(Shown shown) {
        if (!(shown.claim().size() instanceof BatchSize.OfVolume size)) {
            return Stream.empty();
        }
        Ratio unit = FormulationUnits.factorOf(size.volume().getUnit());
        if (unit.equals(US)) {
            return Hypothesis.scaled(shown, "US → imp", IMPERIAL.dividedBy(US));
        }
        return unit.equals(IMPERIAL) ? Hypothesis.scaled(shown, "imp → US", US.dividedBy(IMPERIAL)) : Stream.empty();
    }

    /** To a tenth or a hundredth of the step first; halves go up, as people round. */
    private static Stream<Hypothesis> roundedTwice(Shown shown) {
        return Stream.of(10, 100)
                .map(finer -> Hypothesis.displayed(shown, (exact, step, number) -> {
                    Ratio once = onGrid(exact, step.dividedBy(finer), RoundingMode.HALF_UP);
                    return onGrid(once, step, RoundingMode.HALF_UP).equals(number);
                }));
    }

    private static Stream<Hypothesis> truncated(Shown shown) {
        return Stream.of(Hypothesis.displayed(
                shown,
                (exact, step, number) -> onGrid(exact, step, RoundingMode.DOWN).equals(number)));
    }

    private static Ratio onGrid(Ratio number, Ratio step, RoundingMode mode) {
        return Rounding.toMultipleOf(step).with(mode).apply(number);
    }

    private static Ratio withOverage(Shown shown) {
        return shown.claim().size() instanceof BatchSize.OfPacks packs
                ? Ratio.ONE.plus(packs.overage().fraction())
                : Ratio.ONE;
    }

    private static Stream<Hypothesis> overage(Shown shown, Ratio factor) {
        return shown.claim().size() instanceof BatchSize.OfPacks packs && !factor.equals(Ratio.ONE)
                ? Hypothesis.scaled(shown, packs.overage().toString(), factor)
                : Stream.empty();
    }

    /** The strength is that of the first substance a material declares. */
    private static Stream<Hypothesis> strengthIgnored(Shown shown) {
        return Hypothesis.eachOrAll(
                shown,
                line -> line.ingredient().parts().size() > 1,
                line -> line.ingredient().parts().values().iterator().next().fraction());
    }

    /** Divided by the density where it should be multiplied, or the other way round. */
    private static Stream<Hypothesis> densityInverted(Shown shown) {
        Stream<Hypothesis> batch = shown.claim().size() instanceof BatchSize.OfVolume size
                ? size.density().stream()
                        .flatMap(density -> Hypothesis.scaled(
                                shown, density.toString(), square(Ratio.ONE.dividedBy(density.gramsPerMillilitre()))))
                : Stream.empty();
        List<FormulaLine> volumes = shown.lines().stream()
                .filter(check -> check.figure().isVolume())
                .map(FigureCheck::formulaLine)
                .toList();
        return volumes.isEmpty()
                ? batch
                : Stream.concat(
                        batch, Stream.of(Hypothesis.alone(shown, "", volumes, line -> square(Figure.densityOf(line)))));
    }

    private static Ratio square(Ratio number) {
        return number.times(number);
    }

    private static Stream<Hypothesis> otherPhase(Shown shown) {
        return shown.formula().phases().stream()
                .flatMap(phase -> shown.suspects().stream()
                        .map(FigureCheck::formulaLine)
                        .filter(line -> !line.phase().equals(phase.name()))
                        .flatMap(line -> Hypothesis.changed(
                                shown,
                                line.name() + " · " + phase.name(),
                                List.of(line),
                                any -> shown.shareOfPhase(phase.name()))));
    }

    /** Only a figure with two digits that count can say so: too many numbers become the same single digit. */
    private static Stream<Hypothesis> decimalPointMoved(Shown shown) {
        return shown.suspects().stream()
                .filter(check -> check.digits() >= 2)
                .map(FigureCheck::formulaLine)
                .flatMap(line -> Stream.of(Ratio.of(10), Ratio.of(1, 10))
                        .flatMap(factor -> Hypothesis.changed(shown, line.name(), List.of(line), any -> factor)));
    }
}
