package io.github.formulationmath.reckoning;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * The working behind a result: what is asked, everything said on the way in the order in which it was worked, and the
 * answer. Made by running the relation that computes the result once more, with a recorder.
 *
 * <p>Example, the mass of a line at 2.5 % of 400 g:
 *
 * <pre>
 * w_3   given          2.5 %
 * M     given          400 g
 * m_3 = w_3 · M      = 2.5 % · 400 g = 10 g
 * </pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Working {

    private final Phrase question;
    private final List<Entry> entries;
    private final Term answer;
    /** The units in which it is told, if a style says nothing else; those of displays, which nothing but a style changes. */
    private final UnitChoice units;

    private final UnitChoice ofDisplay;

    private Working(Phrase question, List<Entry> entries, Term answer, UnitChoice units, UnitChoice ofDisplay) {
        this.units = units;
        this.ofDisplay = ofDisplay;
        this.question = question;
        this.entries = List.copyOf(entries);
        this.answer = answer;
    }

    /**
     * Runs a relation and records it.
     *
     * @param question what is asked
     * @param relation the relation, run once
     * @return the working
     */
    public static Working of(Phrase question, Function<Reckoning<Term>, Term> relation) {
        Recorder recorder = new Recorder();
        Term answer = Objects.requireNonNull(relation, "relation").apply(recorder);
        return new Working(
                Objects.requireNonNull(question, "question"),
                recorder.entries(),
                answer,
                recorder.units(),
                recorder.ofDisplay());
    }

    /**
     * Runs a relation, records it, and holds it against the result it explains.
     *
     * @param question what is asked
     * @param expected the result as the plain run gave it, in the canonical unit
     * @param relation the relation, run once
     * @return the working
     * @throws IllegalStateException if the recorded answer is another number: the relation is not one code path
     */
    public static Working of(Phrase question, Ratio expected, Function<Reckoning<Term>, Term> relation) {
        Objects.requireNonNull(expected, "expected");
        Working working = of(question, relation);
        if (!working.answer.value().equals(expected)) {
            throw new IllegalStateException(
                    "the working leads to " + working.answer.value() + ", the result is " + expected);
        }
        return working;
    }

    /**
     * What is asked.
     *
     * @return the question
     */
    public Phrase question() {
        return question;
    }

    /**
     * Everything said on the way, in order; a step comes after the steps it uses.
     *
     * @return an unmodifiable list
     */
    public List<Entry> entries() {
        return entries;
    }

    /**
     * The steps alone, in order.
     *
     * @return an unmodifiable list
     */
    public List<Step> steps() {
        return entries.stream()
                .filter(Step.class::isInstance)
                .map(Step.class::cast)
                .toList();
    }

    /**
     * The answer.
     *
     * @return the term that the relation ended with
     */
    public Term answer() {
        return answer;
    }

    /**
     * The same working, told in the unit of an amount unless a display has another.
     *
     * @param kind what the amount is
     * @param unit the amount that it leads to, or another in the unit
     * @return the working
     */
    public Working in(Kind kind, InUnit unit) {
        UnitChoice own = ofDisplay.orElse(Objects.requireNonNull(kind, "kind"), Objects.requireNonNull(unit, "unit"));
        return new Working(question, entries, answer, own.orElse(units), ofDisplay);
    }

    /**
     * Computes every operation and comparison again from its inputs.
     *
     * @throws IllegalStateException if one of them gives another result than the recorded one
     */
    public void check() {
        check(answer);
        for (Entry entry : entries) {
            if (entry instanceof Step step) {
                step.definition().ifPresent(Working::check);
            } else if (entry instanceof Entry.Decision decision) {
                check(decision);
            }
        }
    }

    private static void check(Entry.Decision d) {
        check(d.left());
        check(d.right());
        if (d.holds() != d.comparison().holds(d.left().value(), d.right().value())) {
            throw new IllegalStateException("the outcome of " + d.left().value() + " "
                    + d.comparison().sign() + " " + d.right().value() + " is not " + d.holds());
        }
    }

    /** Works off a list instead of calling itself: a chain of operations may be long. */
    private static void check(Term whole) {
        Deque<Term> open = new ArrayDeque<>(List.of(whole));
        while (!open.isEmpty()) {
            if (open.pop() instanceof Term.Applied applied) {
                Term.Applied again = Term.Applied.of(applied.operation(), applied.inputs());
                if (!again.value().equals(applied.value())) {
                    throw new IllegalStateException(applied.operation() + " of "
                            + applied.inputs().stream().map(Term::value).toList() + " gives " + again.value()
                            + " when computed again, not " + applied.value());
                }
                applied.inputs().forEach(open::push);
            }
        }
    }

    /**
     * The working as a document, told in steps in English.
     *
     * @return the document, to be printed in any format
     */
    public Document document() {
        return document(Style.steps());
    }

    /**
     * The working as a document.
     *
     * @param style how much of it is told, in which units and words
     * @return the document, to be printed in any format
     * @throws IllegalArgumentException if the wording lacks a text that the working asks for; the message names the key
     */
    public Document document(Style style) {
        return new WorkingDocument(Objects.requireNonNull(style, "style").orIn(units)).of(this);
    }

    /**
     * The given values and the steps alone, without headings, to stand in another document.
     *
     * @param style how much of it is told, in which units and words
     * @return a document without a title; without anything if the style tells the answer alone
     * @throws IllegalArgumentException if the wording lacks a text that the working asks for; the message names the key
     */
    public Document derivation(Style style) {
        return new WorkingDocument(Objects.requireNonNull(style, "style")).derivation(this);
    }

    /**
     * The same working with a remark behind its last step.
     *
     * @param note the remark
     * @return the longer working
     */
    public Working with(Entry.Note note) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(Objects.requireNonNull(note, "note"));
        return new Working(question, more, answer, units, ofDisplay);
    }

    /**
     * The step of which the value of a term is a whole multiple because of the way it was worked out: what was rounded to
     * 0.1 g is a multiple of 0.1 g, and so is any sum of such values.
     *
     * @param term a term of a working
     * @return the step in the canonical unit, above 0; 0 if the value is on no grid
     */
    public static Ratio gridOf(Term term) {
        return new Grid().of(Objects.requireNonNull(term, "term"));
    }

    /** The working as plain text, to the depth of its steps. */
    @Override
    public String toString() {
        return document().toString();
    }
}
