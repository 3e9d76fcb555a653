package io.github.formulationmath.packing;

import static io.github.formulationmath.pot.Lotion.g;

import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Fills, fillings and offers are equal if they say the same. */
final class PackingValuesTest implements ValueContract<Object> {

    @Override
    public List<Object> different() {
        return List.of(
                PackFill.ofMass("1 g"),
                PackFill.ofVolume(Amount.volume("1 mL"), Density.ofGramsPerMillilitre("1")),
                PackFill.ofVolume(Amount.volume("1 mL"), Density.ofGramsPerMillilitre("2")),
                PackFill.ofVolume(Amount.volume("2 mL"), Density.ofGramsPerMillilitre("1")),
                Filling.of(g("10"), g("1"), PackFill.ofMass("1 g")),
                Filling.of(g("11"), g("1"), PackFill.ofMass("1 g")),
                Filling.of(g("10"), g("2"), PackFill.ofMass("1 g")),
                Filling.of(g("10"), g("1"), PackFill.ofMass("2 g")),
                Offer.of("1 EUR", "1 g"),
                Offer.of("2 EUR", "1 g"),
                Offer.of("1 EUR", "2 g"));
    }

    @Override
    public List<Object> same() {
        return different();
    }
}
