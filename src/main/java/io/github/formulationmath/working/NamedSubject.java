package io.github.formulationmath.working;

/** A subject that is nothing but its two names. */
record NamedSubject(String subscript, String name) implements Subject {

    static final NamedSubject NONE = new NamedSubject("", "");
}
