package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.MassFraction;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A formula written down with decimal commas is the formula with points. */
class FormulaInLocaleTest {

    @Test
    void percent_parts_and_masses_are_read_as_the_locale_writes_them() {
        assertThat(Formula.inPercent("Creme")
                        .inLocale(Locale.GERMAN)
                        .quantitySufficient("Aqua")
                        .line("Glycerin", "3,33 %")
                        .build())
                .isEqualTo(Formula.inPercent("Creme")
                        .quantitySufficient("Aqua")
                        .line("Glycerin", "3.33 %")
                        .build());
        assertThat(Formula.inParts("Baume")
                        .inLocale(Locale.FRENCH)
                        .line("Cera Alba", "1,5")
                        .line("Olea Europaea Fruit Oil", "2 1/2")
                        .build())
                .isEqualTo(Formula.inParts("Baume")
                        .line("Cera Alba", "1.5")
                        .line("Olea Europaea Fruit Oil", "2 1/2")
                        .build());
        Ingredient oil = Ingredient.of("Olea Europaea Fruit Oil")
                .withDensity(AmountFormat.forLocale(Locale.GERMAN).parseDensity("0,915 g/mL"));
        assertThat(Formula.inMasses("Salbe")
                        .inLocale(Locale.GERMAN)
                        .line("Cera Alba", "12,5 g")
                        .line(oil, "87,5 mL")
                        .build())
                .isEqualTo(Formula.inMasses("Salbe")
                        .line("Cera Alba", "12.5 g")
                        .line(oil, "87.5 mL")
                        .build());
    }

    @Test
    void parts_of_a_blend_are_read_so_too() {
        assertThat(Ingredient.blend("Konservierer")
                        .inLocale(Locale.GERMAN)
                        .part("Phenoxyethanol", "90,5 %")
                        .rest("Ethylhexylglycerin"))
                .isEqualTo(Ingredient.blend("Konservierer")
                        .part("Phenoxyethanol", "90.5 %")
                        .rest("Ethylhexylglycerin"));
    }

    @Test
    void the_other_mark_is_refused_with_the_name_of_the_line_and_what_is_read() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> Formula.inPercent("Creme").inLocale(Locale.GERMAN).line("Glycerin", "3.33 %"))
                .withMessageContaining("the amount of Glycerin")
                .withMessageContaining("3,33 %");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Formula.inPercent("Creme").line("Glycerin", "3,33 %"))
                .withMessageContaining("3.33 %");
    }

    /** From one line to the next a builder may change its reader; what was read stays. */
    @Test
    void the_digits_as_written_have_a_point_for_data() {
        Formula cream = Formula.inPercent("Creme")
                .inLocale(Locale.GERMAN)
                .quantitySufficient("Aqua")
                .line("Glycerin", "3,30 %")
                .inLocale(Locale.ENGLISH)
                .line("Cera Alba", "1.50 %")
                .build();
        assertThat(((LineAmount.Share) cream.line("Glycerin").amount())
                        .fraction()
                        .asWritten())
                .contains("3.30 %");
        assertThat(cream.line("Cera Alba").share()).isEqualTo(MassFraction.parse("1.5 %"));
    }
}
