package io.github.formulationmath.limit;

import java.io.Serializable;

/** Of what a limit is a share, and what goes along with it in words. */
record LimitDetail(
        String whole, OutsideScope outsideScope, String entry, String declaredAs, Citation citation, EntryText text)
        implements Serializable {

    LimitDetail withWhole(String newWhole) {
        return new LimitDetail(newWhole, outsideScope, entry, declaredAs, citation, text);
    }

    LimitDetail with(Citation newCitation) {
        return new LimitDetail(whole, outsideScope, entry, declaredAs, newCitation, text);
    }

    LimitDetail with(EntryText newText) {
        return new LimitDetail(whole, outsideScope, entry, declaredAs, citation, newText);
    }
}
