package io.github.formulationmath.json;

import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.shelf.Lot;
import io.github.formulationmath.shelf.Shelf;
import java.time.LocalDate;

/** A shelf in a document: its lots in their order. */
final class ShelfDocument {

    private static final String FORMAT = "formulation-math/shelf";

    private ShelfDocument() {}

    static Written write(Shelf shelf) {
        return ValueDocument.document(FORMAT).with("lots", shelf.lots(), ShelfDocument::lot);
    }

    static Shelf read(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, FORMAT);
            Node lots = f.get("lots");
            return lots.reading(() -> Shelf.of(lots.list(ShelfDocument::lot)));
        });
    }

    private static Written lot(Lot lot) {
        return Written.of("ingredient", lot.ingredientName())
                .with("code", lot.code())
                .with("left", ValueDocument.amount(lot.left()))
                .with("bought", lot.bought(), ShelfDocument::offer)
                .with("useBy", lot.useByDay(), LocalDate::toString)
                .with("opened", lot.openedDay(), LocalDate::toString);
    }

    private static Lot lot(Node node) {
        return node.object(f -> {
            Lot bare = Lot.of(f.get("ingredient").text(), f.get("code").text(), ValueDocument.mass(f.get("left")));
            Lot priced = f.with(bare, "bought", ShelfDocument::offer, Lot::boughtAt);
            Lot dated = f.with(priced, "useBy", day -> day.parsed(LocalDate::parse), Lot::useBy);
            return f.with(dated, "opened", day -> day.parsed(LocalDate::parse), Lot::openedOn);
        });
    }

    private static Written offer(Offer offer) {
        Money price = offer.price();
        return Written.of("price", ValueDocument.number(price.number()))
                .with("currency", price.currency())
                .with("for", ValueDocument.amount(offer.packSize()));
    }

    private static Offer offer(Node node) {
        return node.object(f -> new Offer(
                Money.of(ValueDocument.number(f.get("price")), f.get("currency").text()),
                ValueDocument.mass(f.get("for"))));
    }
}
