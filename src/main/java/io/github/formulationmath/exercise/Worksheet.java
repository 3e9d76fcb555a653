package io.github.formulationmath.exercise;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * An exercise made from a working: some of its values are left blank, each with answers to choose from, and there is a key
 * that names the mistake behind each wrong answer.
 *
 * <p>The wrong answers are worked out from the terms of the same step. For {@code m_3 = w_3 · M} with 0.5 % of 400 g, right
 * is 2 g, and the percentage read as grams gives 0.5 g; or a mistake made in an earlier blank is carried on. A decimal point in
 * another place is offered seldom, once at most, and beside two others. Wrong answers that a look at the sheet rules out are not
 * offered: more than the largest mass on the sheet, less than nothing, between two steps of a display. A blank for which
 * fewer than two are left has no choices.
 *
 * <p>No value stands elsewhere on the sheet in a way that gives a blank away. Where a blank is used later, a line to write
 * on stands in its place, and a later result from which it could be worked back in one go ({@code x = m / d}) is left blank
 * as well.
 *
 * <p>The same working and seed give the same sheet; the seed is printed as the number of the sheet, and on its key.
 *
 * <p>Immutable and thread-safe.
 */
public final class Worksheet {

    private final Working working;
    private final List<Blank> blanks;
    private final long seed;

    private Worksheet(Working working, List<Blank> blanks, long seed) {
        this.working = working;
        this.blanks = List.copyOf(blanks);
        this.seed = seed;
    }

    private static Worksheet blank(Set<Step> chosen, Working working, long seed) {
        List<Blank> blanks = working.steps().stream()
                .filter(chosen::contains)
                .map(step -> Blank.of(step, working, chosen, random(seed + about(step, working))))
                .toList();
        return new Worksheet(working, blanks, seed);
    }

    /**
     * A sheet with chosen values left blank.
     *
     * <p>A computed value takes with it the later ones that would give it away, so there may be more blanks than labels. A
     * given value does not: it is to be worked back from the line that uses it.
     *
     * @param working the working
     * @param labels the symbols of the values, with their index, for example {@code m_3}
     * @param seed decides which wrong answers are offered, and their order; printed as the number of the sheet
     * @return the sheet
     * @throws IllegalArgumentException if the working has no such symbol; the message names those it has
     */
    public static Worksheet of(Working working, Set<String> labels, long seed) {
        Objects.requireNonNull(working, "working");
        Objects.requireNonNull(labels, "labels");
        List<Step> steps = working.steps().stream()
                .filter(step -> labels.contains(step.label()))
                .toList();
        if (steps.size() != labels.size() || labels.isEmpty()) {
            throw new IllegalArgumentException("labels is " + labels + ": choose from "
                    + working.steps().stream().map(Step::label).toList());
        }
        return blank(new Followers(working).closed(steps), working, seed);
    }

    /**
     * A sheet with some of the computed values left blank. Those that belong to the line that was asked about come first;
     * values of other lines follow when there are no more.
     *
     * @param working the working
     * @param count how many, from 1 to the number of computed steps
     * @param seed decides which values, which wrong answers, and their order; printed as the number of the sheet
     * @return the sheet
     * @throws IllegalArgumentException if count lies outside that range
     */
    public static Worksheet of(Working working, int count, long seed) {
        Objects.requireNonNull(working, "working");
        List<Step> computed = new ArrayList<>(working.steps().stream()
                .filter(step -> step.definition().isPresent())
                .toList());
        if (count < 1 || count > computed.size()) {
            throw new IllegalArgumentException("count is " + count + ": it must lie between 1 and " + computed.size()
                    + ", the number of computed steps");
        }
        return blank(BlankChoice.of(working, computed, count, random(seed)), working, seed);
    }

    /** So that the letter of one blank does not tell that of another blank or sheet of the same number. */
    private static long about(Step step, Working working) {
        long question = 31L * working.question().key().hashCode()
                + working.question().arguments().hashCode();
        return 31 * question + step.label().hashCode();
    }

    /** Neighbouring seeds, as those of a class are, make {@link Random} begin alike; mixed first they do not. */
    private static Random random(long seed) {
        return new Random(new SplittableRandom(seed).nextLong());
    }

    /**
     * The same sheet without answers to choose from; its key says what is right.
     *
     * @return the sheet with the same blanks
     */
    public Worksheet withoutChoices() {
        return new Worksheet(working, blanks.stream().map(Blank::withoutChoices).toList(), seed);
    }

    /**
     * The working behind the sheet.
     *
     * @return the working, with nothing left blank
     */
    public Working working() {
        return working;
    }

    /**
     * The values left blank.
     *
     * @return an unmodifiable list, in the order of the working
     */
    public List<Blank> blanks() {
        return blanks;
    }

    /**
     * The seed that the sheet was made with.
     *
     * @return the number printed on the sheet and its key
     */
    public long seed() {
        return seed;
    }

    /**
     * The sheet for the learner: the working with its blanks, and the answers to choose from.
     *
     * @param style how the working is told
     * @return the document, to be printed in any format
     * @throws IllegalArgumentException if the style tells the answer alone, which leaves nothing to fill in
     */
    public Document sheet(Style style) {
        return new WorksheetDocument(this, withSteps(style)).sheet();
    }

    /**
     * The key for the teacher: the whole working, the right answers, and the mistake behind each wrong one.
     *
     * @param style how the working is told
     * @return the document, to be printed in any format
     * @throws IllegalArgumentException if the style tells the answer alone
     */
    public Document key(Style style) {
        return new WorksheetDocument(this, withSteps(style)).key();
    }

    /**
     * Prints the sheets of a class in one text. In HTML and LaTeX each begins a page of its own.
     *
     * @param worksheets the sheets, at least one
     * @param style how the workings are told
     * @param format the format
     * @return the text
     * @throws IllegalArgumentException if there are none, or if the style tells the answer alone
     */
    public static String sheets(List<Worksheet> worksheets, Style style, Format format) {
        return Document.printAll(
                Objects.requireNonNull(style, "style").wording().say("worksheet.sheets"),
                Objects.requireNonNull(worksheets, "worksheets").stream()
                        .map(worksheet -> worksheet.sheet(style))
                        .toList(),
                format);
    }

    /**
     * Prints the keys of the sheets of a class in one text, as {@link #sheets} does.
     *
     * @param worksheets the sheets, at least one
     * @param style how the workings are told
     * @param format the format
     * @return the text
     * @throws IllegalArgumentException if there are none, or if the style tells the answer alone
     */
    public static String keys(List<Worksheet> worksheets, Style style, Format format) {
        return Document.printAll(
                Objects.requireNonNull(style, "style").wording().say("worksheet.keys"),
                Objects.requireNonNull(worksheets, "worksheets").stream()
                        .map(worksheet -> worksheet.key(style))
                        .toList(),
                format);
    }

    private static Style withSteps(Style style) {
        if (Objects.requireNonNull(style, "style").isAnswerOnly()) {
            throw new IllegalArgumentException("style tells the answer alone: a worksheet needs the steps;"
                    + " print it in Style.steps() or Style.everything()");
        }
        return style;
    }

    /** What is asked, the blanks and the seed: {@code What …? sheet 7, blanks [m_3]}. */
    @Override
    public String toString() {
        List<String> labels = blanks.stream().map(blank -> blank.step().label()).toList();
        return working.question() + " sheet " + seed + ", blanks " + labels;
    }

    /**
     * A value left blank on a worksheet, with the answers to choose from: three to five, or none.
     *
     * <p>There are none if fewer than two wrong answers are worth offering, and for a given value.
     *
     * <p>Immutable.
     */
    public static final class Blank {

        private static final int FEWEST_CHOICES = 3;

        private final Step step;
        private final List<Choice> choices;

        private Blank(Step step, List<Choice> choices) {
            this.step = step;
            this.choices = List.copyOf(choices);
        }

        /** What is asked for and the answers to choose from, without saying which is right. */
        @Override
        public String toString() {
            return step.label() + ": one of " + choices;
        }

        /** A blank among others of the same working: what goes wrong in one of them is carried on into this one. */
        static Blank of(Step step, Working working, Collection<Step> blanks, Random random) {
            List<Distractor> kept = new WrongAnswers(step, working).of(blanks, random);
            List<Choice> choices = new ArrayList<>();
            kept.forEach(wrong -> choices.add(new Choice(step, wrong.value(), wrong)));
            choices.add(new Choice(step, step.value(), null));
            Collections.shuffle(choices, random);
            return new Blank(step, choices.size() < FEWEST_CHOICES ? List.of() : choices);
        }

        Blank withoutChoices() {
            return new Blank(step, List.of());
        }

        /**
         * The step whose value is left blank.
         *
         * @return the step, with the right value
         */
        public Step step() {
            return step;
        }

        /**
         * The answers to choose from, the right one among them.
         *
         * @return in the order in which they are printed; empty if there are none
         */
        public List<Choice> choices() {
            return choices;
        }
    }

    /**
     * An answer to choose from: what the learner reads, and the mistake of whoever takes it.
     *
     * <p>Example: of 6.76 % of 125 g, 8.45 g is right, and 6.76 g is the percentage read as grams.
     *
     * <p>Immutable and thread-safe.
     */
    public static final class Choice {

        private final Step step;
        private final Ratio value;
        private final @Nullable Distractor distractor;

        Choice(Step step, Ratio value, @Nullable Distractor distractor) {
            this.step = step;
            this.value = value;
            this.distractor = distractor;
        }

        /**
         * The answer as printed.
         *
         * @param style the digits and units of the sheet
         * @return the number with its unit
         */
        public String text(Style style) {
            return Objects.requireNonNull(style, "style").text(value, step);
        }

        /**
         * Whether it is the right answer.
         *
         * @return true if no mistake leads to it
         */
        public boolean isRight() {
            return distractor == null;
        }

        /**
         * The mistake behind the answer.
         *
         * @return the mistake that leads to it; empty for the right answer
         */
        public Optional<Mistake> mistake() {
            return Optional.ofNullable(distractor).map(Distractor::mistake);
        }

        /** In the canonical unit of its step. */
        Ratio value() {
            return value;
        }

        /** The wrong answer that it is; empty for the right one. */
        Optional<Distractor> distractor() {
            return Optional.ofNullable(distractor);
        }

        /** The answer as {@link Style#steps()} prints it, without saying whether it is right. */
        @Override
        public String toString() {
            return text(Style.steps());
        }
    }
}
