package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Characters as LaTeX writes them: T. Oetiker and others, The Not So Short Introduction to LaTeX (from memory). */
class LatexCharactersTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '!',
            value = {
                "%, \\%",
                "_, \\_",
                "\\, \\textbackslash{}",
                "<, \\textless{}",
                ">, \\textgreater{}",
                "', \\textquotesingle{}",
                "·, \\textperiodcentered{}",
                "-, {-}",
                "−, \\ensuremath{-}",
                "×, \\ensuremath{\\times}",
                "≤, \\ensuremath{\\le}",
                "², \\ensuremath{{}^2}",
                "°, \\ensuremath{{}^\\circ}",
                "µ, \\ensuremath{\\mu}",
                "₂, \\ensuremath{{}_2}",
                "₋, \\ensuremath{{}_-}",
                "⁺, \\ensuremath{{}^+}",
                "±, \\ensuremath{\\pm}",
                "α, \\ensuremath{\\alpha}",
                "ρ, \\ensuremath{\\rho}",
                "ο, \\ensuremath{o}",
                "ω, \\ensuremath{\\omega}",
                "Δ, \\ensuremath{\\Delta}",
                "Ω, \\ensuremath{\\Omega}",
            })
    void a_character_has_its_command(String character, String latex) {
        assertThat(LatexCharacters.map()).containsEntry(character.codePointAt(0), latex);
    }

    @Test
    void words_in_a_formula_are_upright_and_each_sign_is_that_of_a_formula() {
        assertThat(LatexCharacters.inFormula("at 20 °C and")).isEqualTo("\\text{at 20 }{{}^\\circ}\\text{C and}");
        assertThat(LatexCharacters.inFormula("α")).isEqualTo("{\\alpha}");
        assertThat(LatexCharacters.inFormula("5 %")).isEqualTo("\\text{5 }\\%");
        assertThat(LatexCharacters.inFormula("")).isEmpty();
    }
}
