package io.github.formulationmath.limit;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/** What a limit counts and how much it allows. */
record LimitCore(
        String id,
        SubstanceGroup group,
        LimitKind kind,
        MassFraction share,
        LimitBasis basis,
        SumRule sumRule,
        Scope scope)
        implements Serializable {

    static LimitCore of(String id, SubstanceGroup group, LimitKind kind, MassFraction share) {
        if (Objects.requireNonNull(id, "id").isBlank() || id.chars().anyMatch(Character::isWhitespace)) {
            throw new IllegalArgumentException("id is \"" + Excerpt.of(id) + "\": give a key without spaces");
        }
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(share, "share");
        return new LimitCore(id, group, kind, share, LimitBasis.active(), SumRule.SINGLE, Scope.any());
    }

    LimitCore with(LimitBasis newBasis) {
        return new LimitCore(id, group, kind, share, Objects.requireNonNull(newBasis, "basis"), sumRule, scope);
    }

    LimitCore allowingNothing() {
        return new LimitCore(
                id, group, LimitKind.MAXIMUM, MassFraction.ZERO, LimitBasis.active(), SumRule.SINGLE, scope);
    }

    LimitCore with(SumRule newRule) {
        return new LimitCore(id, group, kind, share, basis, Objects.requireNonNull(newRule, "rule"), scope);
    }

    LimitCore with(Scope newScope) {
        return new LimitCore(id, group, kind, share, basis, sumRule, Objects.requireNonNull(newScope, "scope"));
    }
}
