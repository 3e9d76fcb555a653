package io.github.formulationmath.sheet;

import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Wording;

/** The words of a sheet. */
record SheetWords(Wording wording) {

    String say(String key, String... arguments) {
        return wording.text(Phrase.of(key, arguments));
    }

    /** A fact under the name that stands behind {@code sheet.} in the wording. */
    Page.Fact fact(String key, String value) {
        return new Page.Fact(say("sheet." + key), value);
    }
}
