package io.github.formulationmath.json;

import io.github.formulationmath.packing.PriceList;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.quantity.Money;
import java.util.List;
import java.util.Map;

/** A list of prices as a document. */
final class PricesDocument {

    private static final String FORMAT = "formulation-math/prices";

    private PricesDocument() {}

    static Written write(PriceList prices) {
        return ValueDocument.document(FORMAT)
                .with("offers", List.copyOf(prices.offers().entrySet()), PricesDocument::offers);
    }

    private static Written offers(Map.Entry<String, List<Offer>> each) {
        return Written.of("ingredient", each.getKey()).with("packs", each.getValue(), PricesDocument::pack);
    }

    private static Written pack(Offer offer) {
        return Written.of("price", ValueDocument.number(offer.price().number()))
                .with("currency", offer.price().currency())
                .with("size", ValueDocument.amount(offer.packSize()));
    }

    static PriceList read(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, FORMAT);
            PriceList[] prices = {PriceList.empty()};
            f.get("offers")
                    .list(node -> node.object(g -> {
                        String ingredient = g.get("ingredient").text();
                        g.get("packs").list(pack -> {
                            Offer offer = pack.object(PricesDocument::offer);
                            prices[0] = pack.reading(() -> prices[0].with(ingredient, offer));
                            return offer;
                        });
                        return ingredient;
                    }));
            return prices[0];
        });
    }

    private static Offer offer(Node.Fields f) {
        Money price =
                Money.of(ValueDocument.number(f.get("price")), f.get("currency").text());
        return new Offer(price, ValueDocument.mass(f.get("size")));
    }
}
