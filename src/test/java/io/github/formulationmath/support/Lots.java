package io.github.formulationmath.support;

import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.shelf.Lot;
import io.github.formulationmath.shelf.Shelf;
import java.util.List;

/** A shelf with two lots of one ingredient, which spell it in two ways. */
public final class Lots {

    public static final Lot OLDER = Lot.of("Glycerin", "G-17", "12 g")
            .boughtAt(Offer.of("12.50 EUR", "250 g"))
            .useBy("2026-12-31");
    public static final Lot NEWER = Lot.of("glycerin ", "G-21", "8 g")
            .boughtAt(Offer.of("10 EUR", "250 g"))
            .openedOn("2026-10-01");
    public static final Lot OIL =
            Lot.of("Avena Sativa Kernel Oil", "O-3", "50 g").boughtAt(Offer.of("9 EUR", "100 g"));
    public static final Lot WATER = Lot.of("Aqua", "tap", "5 kg").boughtAt(Offer.of("0 EUR", "1 kg"));
    public static final Shelf SHELF = Shelf.of(List.of(NEWER, OIL, WATER, OLDER));

    private Lots() {}
}
