package io.github.formulationmath.classroom;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** An exercise while it is being put together by its topic; {@link Choices} decides what is offered. */
final class Draft {

    private static final Symbol MASS = Symbol.of("a", "to-the-digits-asked", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("a", "to-the-digits-asked", Kind.VOLUME);
    private static final Symbol SHARE = Symbol.of("a", "to-the-digits-asked", Kind.SHARE);

    private final Topic topic;
    private Said question;
    private final Rounding digits;
    private final Rounding places;
    private final List<Misstep> slips = new ArrayList<>();
    private final List<Ratio> givens;
    private Ratio most = Ratio.of(1_000_000);
    private @Nullable Working working;
    private @Nullable Ratio byPrint;
    private Said check = Said.of("");
    private Said checked = Said.of("");

    /**
     * @param topic the topic
     * @param variant what is put behind the key of the topic where it asks in several ways
     * @param digits the grid of the answer, and how it is rounded to it
     * @param parts what is put into the question
     */
    Draft(Topic topic, String variant, Rounding digits, Inset... parts) {
        this.topic = topic;
        this.question = Said.of("exercise." + topic.ending() + variant, parts);
        this.digits = digits;
        this.places = Rounding.toMultipleOf(placeOf(digits.stepFor(Ratio.ONE)));
        this.givens = List.of(parts).stream()
                .filter(Inset.Value.class::isInstance)
                .map(part -> ((Inset.Value) part).number())
                .toList();
    }

    /** The last decimal place of a grid: of 0.2 it is 0.1. */
    private static Ratio placeOf(Ratio grid) {
        Ratio place = Ratio.ONE;
        while (!grid.dividedBy(place).isInteger()) {
            place = place.dividedBy(10);
        }
        return place;
    }

    /** What the numbers lead to as they are printed: an exercise in which that is another answer is not set. */
    Draft leadingTo(Ratio exact) {
        byPrint = digits.apply(exact);
        return this;
    }

    /** Whether somebody who works with the printed numbers comes to an answer. */
    boolean leadsTo(Ratio answer) {
        return byPrint == null || byPrint.equals(answer);
    }

    /** What a look at the exercise rules out: more than there is of everything. */
    Draft atMost(Ratio whole) {
        most = whole;
        return this;
    }

    /** Above nothing, not above everything, and written like the right answer. */
    boolean isPlausible(Ratio value) {
        return value.signum() > 0
                && value.compareTo(most) <= 0
                && places.apply(value).equals(value);
    }

    /** The numbers of the question. */
    List<Ratio> givens() {
        return givens;
    }

    /** A mistake; its value is rounded as the answer is. */
    Draft slip(String key, Ratio value, Inset... parts) {
        slips.add(new Misstep(Said.of("slip." + key, parts), value).shown(digits));
        return this;
    }

    /** A mistake of rounding: its value stands as it is. */
    Draft slipOfRounding(String key, Ratio value, Inset... parts) {
        slips.add(new Misstep(Said.of("slip." + key, parts), value));
        return this;
    }

    /** What shows that the answer can be right. */
    Draft check(Inset outcome, Inset... parts) {
        check = Said.of("check." + topic.ending(), parts);
        checked = Said.of("checked." + topic.ending(), outcome);
        return this;
    }

    Topic topic() {
        return topic;
    }

    Said question() {
        return question;
    }

    Rounding digits() {
        return digits;
    }

    List<Misstep> slips() {
        return slips;
    }

    Said check() {
        return check;
    }

    Said checked() {
        return checked;
    }

    /** The number asked for: its working, and the step that brings it to the digits asked for, which the question names last. */
    Draft answeredBy(Kind kind, Explained exact) {
        Symbol shown = switch (kind) {
            case VOLUME -> VOLUME;
            case SHARE -> SHARE;
            default -> MASS;
        };
        working = Working.of(
                Phrase.of("question.class-exercise"), r -> r.named(shown, r.rounded(r.known(exact), digits)));
        Ratio grid = digits.stepFor(Ratio.ONE);
        question = question.with(kind == Kind.SHARE ? Inset.percent(grid) : Inset.of(grid, kind.canonicalUnit()));
        return this;
    }

    Working working() {
        return Objects.requireNonNull(working, "working");
    }
}
