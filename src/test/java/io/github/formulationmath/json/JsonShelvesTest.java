package io.github.formulationmath.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.shelf.Lot;
import io.github.formulationmath.shelf.Shelf;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A shelf through a file. */
final class JsonShelvesTest {
    private static final Lot OLDER = Lot.of("Glycerin", "G-17", "12 g")
            .boughtAt(Offer.of("12.50 EUR", "250 g"))
            .useBy("2026-12-31");
    private static final Lot NEWER = Lot.of("glycerin ", "G-21", "8 g")
            .boughtAt(Offer.of("10 EUR", "250 g"))
            .openedOn("2026-10-01");
    private static final Lot OIL =
            Lot.of("Avena Sativa Kernel Oil", "O-3", "50 g").boughtAt(Offer.of("9 EUR", "100 g"));
    private static final Lot WATER = Lot.of("Aqua", "tap", "5 kg").boughtAt(Offer.of("0 EUR", "1 kg"));
    private static final Shelf SHELF = Shelf.of(List.of(NEWER, OIL, WATER, OLDER));

    @Test
    void a_shelf_comes_back_whole() throws Exception {
        assertThat(Json.shelves().read(Json.shelves().write(SHELF)).value()).isEqualTo(SHELF);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(SHELF);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(SHELF);
        }
        assertThat(org.assertj.core.api.Assertions.catchThrowableOfType(
                                RecordFormatException.class,
                                () -> Json.shelves()
                                        .read(Json.shelves().write(SHELF).replace("2026-12-31", "31 December")))
                        .getMessage())
                .contains("/lots/3/useBy");
    }
}
