package io.github.formulationmath.classroom;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Working;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One exercise of one learner: a question with its numbers, four answers to choose from, and for the key the working and the
 * mistake behind each wrong answer.
 *
 * <p>The right answer comes from the library and is brought to the digits that the question asks for; wrong ones are rounded
 * in the same way. Which of the mistakes of the topic are offered, and in which order, is drawn.
 *
 * <p>Immutable and thread-safe.
 */
public final class Exercise {

    private static final int ATTEMPTS = 1000;

    private final Draft draft;
    private final Step answer;
    private final List<Misstep> choices;
    private final int right;

    private Exercise(Draft draft, Step answer, List<Misstep> choices, int right) {
        this.draft = draft;
        this.answer = answer;
        this.choices = List.copyOf(choices);
        this.right = right;
    }

    /** Numbers are drawn until there are enough mistakes that lead to different answers. */
    static Exercise of(Topic topic, Ties ties, long seed, long learner) {
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            Draw draw = Draw.of(seed, learner, List.of(Topic.values()).indexOf(topic), attempt);
            Draft draft = topic.draw(draw, ties);
            Step answer = (Step) draft.working().answer();
            List<Misstep> wrong = Choices.of(draft, answer.value(), draw);
            if (answer.value().signum() > 0 && draft.leadsTo(answer.value()) && wrong.size() == Choices.WRONG) {
                return inOrder(draft, answer, draw.some(Choices.WRONG, wrong), draw.between(0, Choices.WRONG));
            }
        }
        throw new IllegalStateException("no exercise on " + topic + " in " + ATTEMPTS + " attempts");
    }

    private static Exercise inOrder(Draft draft, Step answer, List<Misstep> wrong, int right) {
        List<Misstep> choices = new ArrayList<>(wrong);
        choices.add(right, new Misstep(Said.of("worksheet.right"), answer.value()));
        return new Exercise(draft, answer, choices, right);
    }

    /**
     * What it is about.
     *
     * @return the topic
     */
    public Topic topic() {
        return draft.topic();
    }

    /**
     * What is asked, with all numbers that are needed.
     *
     * @param style the words and the digits
     * @return the question
     */
    public String question(Style style) {
        return draft.question().in(Objects.requireNonNull(style, "style"));
    }

    /**
     * The answers to choose from.
     *
     * @param style the words and the digits
     * @return four answers with their units, in the order of the letters a to d
     */
    public List<String> choices(Style style) {
        Objects.requireNonNull(style, "style");
        return choices.stream().map(choice -> text(choice.value(), style)).toList();
    }

    /**
     * The letter of the right answer.
     *
     * @return a, b, c or d
     */
    public String rightLetter() {
        return letter(right);
    }

    /**
     * The right answer.
     *
     * @param style the words and the digits
     * @return the answer with its unit
     */
    public String answer(Style style) {
        return choices(style).get(right);
    }

    /**
     * How the answer is worked out; its last step brings it to the digits asked for.
     *
     * @return the working
     */
    public Working working() {
        return draft.working();
    }

    /**
     * What is said of an answer in the key.
     *
     * @param letter a, b, c or d
     * @param style the words and the digits
     * @return the mistake that leads to it; of the right answer, that it is right
     * @throws IllegalArgumentException if there is no such letter
     */
    public String explanation(String letter, Style style) {
        Objects.requireNonNull(letter, "letter");
        Objects.requireNonNull(style, "style");
        for (int i = 0; i < choices.size(); i++) {
            if (letter.equals(letter(i))) {
                return choices.get(i).why().in(style);
            }
        }
        throw new IllegalArgumentException("letter is " + letter + ": give one of a, b, c and d");
    }

    /** What a learner may hold the answer against. */
    String check(Style style) {
        return draft.check().in(style);
    }

    /** What comes out there. */
    String checked(Style style) {
        return draft.checked().in(style);
    }

    List<Misstep> slips() {
        return choices;
    }

    Ratio value() {
        return answer.value();
    }

    /** The numbers of the question, in its units. */
    List<Ratio> givens() {
        return draft.givens();
    }

    static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }

    private String text(Ratio value, Style style) {
        return style.text(value, answer).replace(' ', '\u00A0');
    }

    /** A rough figure: the answer to one digit. */
    String rough(Style style) {
        Ratio digits = Misstep.digits(value());
        Ratio size = value().dividedBy(digits);
        Ratio rough = digits.toWhole(RoundingMode.HALF_UP).times(size);
        Kind kind = answer.symbol().kind();
        Inset part = kind == Kind.SHARE ? Inset.percent(rough) : Inset.of(rough, kind.canonicalUnit());
        return part.in(style);
    }

    /** The question, the answers and the letter of the right one. */
    @Override
    public String toString() {
        return question(Style.steps()) + " " + choices(Style.steps()) + " " + rightLetter();
    }
}
