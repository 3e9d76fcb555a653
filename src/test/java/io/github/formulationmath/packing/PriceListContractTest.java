package io.github.formulationmath.packing;

import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two price lists are equal if they have the same offers for the same ingredients, each ingredient's in the same order. */
class PriceListContractTest implements ValueContract<PriceList> {

    private static final Offer SMALL = Offer.of("4 EUR", "100 g");
    private static final Offer LARGE = Offer.of("30 EUR", "1 kg");

    @Override
    public List<PriceList> different() {
        PriceList empty = PriceList.empty();
        return List.of(
                empty,
                empty.with("Glycerin", SMALL),
                empty.with("Aqua", SMALL),
                empty.with("Glycerin", LARGE),
                empty.with("Glycerin", SMALL).with("Glycerin", LARGE),
                empty.with("Glycerin", LARGE).with("Glycerin", SMALL));
    }

    @Override
    public List<PriceList> same() {
        return different();
    }
}
