package io.github.formulationmath.scaling;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A batch that fills packs: {@code M = n · f · (1 + o)}. Made by {@link BatchSize#ofPacks}.
 *
 * <p>Immutable and thread-safe.
 */
public final class PackSize extends BatchSize {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol PACKS = Symbol.of("n", "packs", Kind.NUMBER);
    private static final Symbol FILL = Symbol.of("f", "fill-mass", Kind.MASS);
    private static final Symbol OVERAGE = Symbol.of("o", "overage", Kind.SHARE);

    private final int packs;
    private final Amount<Mass> fillMass;
    private final MassFraction overage;

    PackSize(int packs, Amount<Mass> fillMass, MassFraction overage) {
        this.packs = packs;
        this.fillMass = fillMass;
        this.overage = overage;
    }

    @Override
    <V> V mass(Reckoning<V> r, Formula formula) {
        V n = r.given(PACKS, Ratio.of(packs), Source.user());
        V fill = r.given(FILL, fillMass.in(FormulationUnits.GRAM), Source.user());
        V extra = r.given(OVERAGE, overage.fraction(), Source.user());
        return r.named(BATCH_MASS, r.product(r.product(n, fill), r.sum(r.literal(1), extra)));
    }

    /**
     * How many packs are filled.
     *
     * @return the number, above 0
     */
    public int packs() {
        return packs;
    }

    /**
     * What goes into each pack.
     *
     * @return the mass as given, above 0
     */
    public Amount<Mass> fillMass() {
        return fillMass;
    }

    /**
     * What is made beyond the contents of the packs.
     *
     * @return the overage as a share of those contents
     */
    public MassFraction overage() {
        return overage;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof PackSize that
                && packs == that.packs
                && fillMass.equals(that.fillMass)
                && overage.equals(that.overage);
    }

    @Override
    public int hashCode() {
        return Objects.hash(packs, fillMass, overage);
    }

    @Override
    public String toString() {
        return packs + " packs of " + fillMass + " and " + overage + " overage";
    }
}
