package io.github.formulationmath.limit;

import java.util.List;

/** A product read with the words of one table. */
record StatedProduct(String use, String user, StatedWords areas, StatedWords kinds, StatedWords forms) {

    List<StatedWords> sides() {
        return List.of(areas, kinds, forms);
    }
}
