package io.github.formulationmath.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A space that does not break stands before the colons that a page puts in itself, in French and nowhere else. */
class FrenchColonTest {

    @Test
    void the_colon_behind_an_answer_and_behind_a_remark_is_that_of_the_language() {
        for (String language : new String[] {"en", "de", "fr", "fr-CA"}) {
            String space = language.startsWith("fr") ? "\u00A0" : "";
            Document document = Document.titled("T", language)
                    .note("Remarque", "texte")
                    .question("Combien")
                    .choice("29,17 g", true, "juste");
            for (Format format : new Format[] {Format.TEXT, Format.MARKDOWN, Format.HTML, Format.LATEX}) {
                String page = document.print(format)
                        .replaceAll("</?(?:strong|em)>|\\*\\*|[}{\\\\]", "")
                        .replace("~", "\u00A0");
                String where = String.format(Locale.ROOT, "%s in %s: %s", language, format, page);
                assertThat(page).as(where).contains("Remarque" + space + ":").contains("g" + space + ": juste");
            }
        }
    }
}
