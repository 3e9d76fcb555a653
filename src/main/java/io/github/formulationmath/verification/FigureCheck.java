package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.BatchLine;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.Locale;

/**
 * One figure held against ours. As a result it is the deviation: the figure less our mass, in grams.
 *
 * <p>Example: 12 g expected and 12.4 g shown deviate by 0.4 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class FigureCheck implements Explained {

    private static final Symbol FIGURE = Symbol.of("F", "claimed-figure", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("F", "claimed-figure", Kind.VOLUME);
    private static final Symbol DENSITY = Symbol.of("ρ", "density", Kind.DENSITY);
    private static final Symbol DEVIATION = Symbol.of("Δ", "deviation", Kind.MASS);

    private final BatchLine line;
    private final Figure figure;
    private final Ratio expected;
    private final Ratio step;
    private final Agreement agreement;

    FigureCheck(BatchLine line, Figure figure, Ratio expected, Ratio step, Agreement agreement) {
        this.line = line;
        this.figure = figure;
        this.expected = expected;
        this.step = step;
        this.agreement = agreement;
    }

    /**
     * The line of our batch.
     *
     * @return the line with its right mass
     */
    public BatchLine line() {
        return line;
    }

    /**
     * The figure.
     *
     * @return what was shown
     */
    public Figure figure() {
        return figure;
    }

    /**
     * Our number in the unit of the figure.
     *
     * @return the exact number
     */
    public Ratio expected() {
        return expected;
    }

    /**
     * How finely the figure was rounded.
     *
     * @return the step in the unit of the figure
     */
    public Ratio step() {
        return step;
    }

    /**
     * Whether it agrees.
     *
     * @return how the figure stands to ours
     */
    public Agreement agreement() {
        return agreement;
    }

    /**
     * By how much the figure is off.
     *
     * @return the figure less our number, in the unit of the figure
     */
    public Ratio deviation() {
        return figure.number().minus(expected);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.deviation", line.name());
    }

    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return r.named(DEVIATION, line, r.difference(claimed(r), r.known(line)));
    }

    private <V> V claimed(Reckoning<V> r) {
        Source source = Source.written(figure.written());
        Ratio value = figure.number().times(figure.unitSize());
        if (!figure.isVolume()) {
            return r.given(FIGURE, line, value, source);
        }
        V density = r.given(DENSITY, line, Claim.densityOf(line.line()), Source.user());
        return r.product(r.given(VOLUME, line, value, source), density);
    }

    /** The name and the figure, and how it stands. */
    @Override
    public String toString() {
        return line.name() + " " + figure + ": "
                + agreement.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", ours "
                + expected + " " + FormulationUnits.symbolOf(figure.unit());
    }
}
