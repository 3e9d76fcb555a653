package io.github.formulationmath.pot;

import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;

/** Where the shares come from that rules and tolerances are given by. */
public final class Sources {

    private Sources() {}

    /**
     * The text as it was written, or the user.
     *
     * @param share the share
     * @return its source
     */
    public static Source of(MassFraction share) {
        return share.asWritten().map(Source::written).orElseGet(Source::user);
    }
}
