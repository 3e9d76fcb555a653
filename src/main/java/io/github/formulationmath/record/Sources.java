package io.github.formulationmath.record;

import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Source;

/** Where the shares come from that rules and tolerances are given by. */
final class Sources {

    private Sources() {}

    /** The text as it was written, or the user. */
    static Source of(MassFraction share) {
        return share.asWritten().map(Source::written).orElseGet(Source::user);
    }
}
