package io.github.formulationmath.verification;

import java.util.List;
import java.util.stream.Stream;

/** Computes the figures that a slip would lead to. */
interface SlipModel {

    /** All slips that are looked for. */
    List<SlipModel> ALL = List.of(
            new WrongWhole(),
            new PartsAsPercent(),
            new MillilitresAsGrams(),
            new OunceExchanged(),
            new FluidOunceExchanged(),
            new RoundedTwice(),
            new Truncated(),
            new OverageSlips(),
            new RestNotAdjusted(),
            new StrengthIgnored(),
            new AlkaliExchanged(),
            new DensityInverted(),
            new OtherPhase(),
            new DecimalPointMoved(),
            new DigitsExchanged());

    /**
     * The slip in each way it can be made with this claim; none if the claim offers no place for it.
     *
     * @param shown what was asked and shown, and what is right
     */
    Stream<Hypothesis> figures(Shown shown);
}
