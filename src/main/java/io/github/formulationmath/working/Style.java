package io.github.formulationmath.working;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What a reader asked for, whatever the format. */
record Style(
        Depth depth,
        UnitChoice units,
        int significantDigits,
        @Nullable Locale locale,
        Wording wording) {

    static final Style PLAIN = new Style(Depth.STEPS, UnitChoice.canonical(), 6, null, Wording.english());

    Style with(Depth newDepth) {
        return new Style(newDepth, units, significantDigits, locale, wording);
    }

    Style with(UnitChoice newUnits) {
        return new Style(depth, newUnits, significantDigits, locale, wording);
    }

    Style with(Locale newLocale) {
        return new Style(depth, units, significantDigits, newLocale, wording);
    }

    Style with(Wording newWording) {
        return new Style(depth, units, significantDigits, locale, newWording);
    }

    Style withSignificantDigits(int digits) {
        return new Style(depth, units, digits, locale, wording);
    }
}
