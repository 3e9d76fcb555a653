package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A named value: either given, with its source, or computed, with the term that defines it. Two steps are the same only
 * if they are the same object; a working names nothing twice.
 */
public final class Step implements Term, Entry {

    private final Symbol symbol;
    private final Subject subject;
    private final @Nullable Term definition;
    private final Source source;
    private final Ratio value;

    private Step(Symbol symbol, Subject subject, @Nullable Term definition, Source source, Ratio value) {
        this.symbol = symbol;
        this.subject = subject;
        this.definition = definition;
        this.source = source;
        this.value = value;
    }

    static Step given(Symbol symbol, Subject subject, Ratio value, Source source) {
        return new Step(symbol, subject, null, source, value);
    }

    static Step computed(Symbol symbol, Subject subject, Term definition) {
        return new Step(symbol, subject, definition, Source.user(), definition.value());
    }

    /**
     * What the value is called.
     *
     * @return the symbol without its index
     */
    public Symbol symbol() {
        return symbol;
    }

    /**
     * What the value is about.
     *
     * @return the subject; its subscript is empty if there is no index
     */
    public Subject subject() {
        return subject;
    }

    /**
     * The value in words.
     *
     * @return for example <i>mass of Glycerin</i>
     */
    public Phrase meaning() {
        return Phrase.of("symbol." + symbol.meaningKey(), subject.name());
    }

    /**
     * The symbol with its index.
     *
     * @return for example {@code m_3}, or {@code φ_hi,3} where the symbol has a mark of its own below
     */
    public String label() {
        String letter = symbol.letter();
        return subject.subscript().isEmpty()
                ? letter
                : letter + (letter.contains("_") ? "," : "_") + subject.subscript();
    }

    /**
     * How the value was computed.
     *
     * @return the defining term; empty if the value was given
     */
    public Optional<Term> definition() {
        return Optional.ofNullable(definition);
    }

    /**
     * Where a given value comes from.
     *
     * @return the source; of no meaning for a computed value
     */
    public Source source() {
        return source;
    }

    @Override
    public Ratio value() {
        return value;
    }

    /** The label and the exact value: {@code m_3 = 10}. */
    @Override
    public String toString() {
        return label() + " = " + value;
    }
}
