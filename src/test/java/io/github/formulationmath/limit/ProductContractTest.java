package io.github.formulationmath.limit;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two products are equal if the same is stated of both, in whatever order. */
class ProductContractTest implements ValueContract<Product> {

    @Override
    public List<Product> different() {
        Product plain = Product.leaveOn();
        return List.of(
                plain,
                Product.rinseOff(),
                plain.on("face", "hands"),
                plain.on("face"),
                plain.ofKind("face_cream"),
                plain.inForm("cream"),
                plain.forProfessionals(),
                plain.using("Salicylic Acid", "preservative"),
                plain.using("Salicylic Acid", "preservative").using("Benzoic Acid", "preservative"));
    }

    @Override
    public List<Product> same() {
        Product plain = Product.leaveOn();
        return List.of(
                Product.leaveOn(),
                Product.rinseOff(),
                plain.on("Hands", "face"),
                plain.on("hair").on("face"),
                plain.ofKind("face cream"),
                plain.inForm("Cream"),
                plain.forProfessionals().forProfessionals(),
                plain.using("SALICYLIC  ACID", "Preservative"),
                plain.using("Benzoic Acid", "preservative").using("Salicylic Acid", "preservative"));
    }
}
