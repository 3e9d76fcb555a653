package io.github.formulationmath.reckoning;

import java.io.Serializable;

/** A subject that is nothing but its two names. */
record NamedSubject(String subscript, String name) implements Subject, Serializable {

    static final NamedSubject NONE = new NamedSubject("", "");
}
