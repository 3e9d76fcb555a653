package io.github.formulationmath.classroom;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.reckoning.Style;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Worksheets for a class: each learner gets an exercise on every topic with numbers and wrong answers of his or her own, four
 * exercises a page with room to write; the teacher gets a key for each, a class list with the right letters, and the same
 * exercises for a teaching platform.
 *
 * <p>Everything is drawn from the seed, the number of the learner and the topic: the same class set comes out the same on
 * every machine, and a learner keeps his sheet when others join behind. Wrong answers are mistakes that people make, worked out
 * with the numbers of the exercise; a moved decimal point is the last of them. Whether the right answer is the largest, the
 * smallest or one between is drawn, so that comparing sizes does not find it.
 *
 * <p>Example:
 *
 * <pre>{@code
 * ClassSet set = ClassSet.numbered("Creams, second week", List.of(Topic.values()), 24, 2026);
 * String sheets = set.sheets(Style.steps(), Format.HTML);
 * }</pre>
 *
 * <p>An exercise in arithmetic: what may be made and put on skin defers to local law and to qualified safety assessment, and the
 * sheets say so.
 *
 * <p>Immutable and thread-safe.
 */
public final class ClassSet {

    private static final int MOST_LEARNERS = 1000;

    private final String title;
    private final List<Topic> topics;
    private final List<String> learners;
    private final long seed;
    private final Ties ties;
    private final Map<Topic, Integer> points;
    private final List<List<Exercise>> exercises;

    private ClassSet(
            String title, List<Topic> topics, List<String> learners, long seed, Ties ties, Map<Topic, Integer> points) {
        this.title = title;
        this.topics = List.copyOf(topics);
        this.learners = List.copyOf(learners);
        this.seed = seed;
        this.ties = ties;
        this.points = Map.copyOf(points);
        this.exercises = drawn();
    }

    /**
     * A class set for learners with names.
     *
     * @param title what stands at the head of every sheet
     * @param topics the exercises of a sheet in order, at least one, each topic once
     * @param learners their names in the order of the class list, from 1 to 1000
     * @param seed decides numbers, wrong answers and their order
     * @return the class set
     * @throws IllegalArgumentException if there are no topics or learners or too many, or a topic stands twice
     */
    public static ClassSet named(String title, List<Topic> topics, List<String> learners, long seed) {
        Objects.requireNonNull(title, "title");
        requireOnce(Objects.requireNonNull(topics, "topics"));
        int count = Objects.requireNonNull(learners, "learners").size();
        if (count < 1 || count > MOST_LEARNERS) {
            throw new IllegalArgumentException("learners has " + count + " names: give from 1 to " + MOST_LEARNERS);
        }
        return new ClassSet(title, topics, learners, seed, Ties.DISPLAY, new EnumMap<>(Topic.class));
    }

    /**
     * A class set for learners who write their names on the sheets themselves.
     *
     * @param title what stands at the head of every sheet
     * @param topics the exercises of a sheet in order, at least one, each topic once
     * @param learners how many there are, from 1 to 1000
     * @param seed decides numbers, wrong answers and their order
     * @return the class set
     * @throws IllegalArgumentException if there are no topics or learners or too many, or a topic stands twice
     */
    public static ClassSet numbered(String title, List<Topic> topics, int learners, long seed) {
        if (learners < 1 || learners > MOST_LEARNERS) {
            throw new IllegalArgumentException(
                    "learners is " + learners + ": give a number from 1 to " + MOST_LEARNERS);
        }
        return named(title, topics, Collections.nCopies(learners, ""), seed);
    }

    private static void requireOnce(List<Topic> topics) {
        if (topics.isEmpty()) {
            throw new IllegalArgumentException("topics is empty: give at least one, such as Topic.SCALING");
        }
        for (int i = 0; i < topics.size(); i++) {
            if (topics.indexOf(topics.get(i)) != i) {
                throw new IllegalArgumentException(
                        "topics has " + topics.get(i) + " twice: give each topic once, or make a second class set");
            }
        }
    }

    private List<List<Exercise>> drawn() {
        List<List<Exercise>> all = new ArrayList<>();
        for (int learner = 1; learner <= learners.size(); learner++) {
            List<Exercise> own = new ArrayList<>();
            for (Topic topic : topics) {
                own.add(Exercise.of(topic, ties, seed, learner));
            }
            all.add(List.copyOf(own));
        }
        return List.copyOf(all);
    }

    /**
     * The same class set with the rounding of schools: what lies half way between two steps goes up. Without it a value half
     * way goes to the even step, as displays round in this library. Each sheet says which rule holds.
     *
     * @return the class set; the same numbers in the exercises, except where one of them would lose its wrong answers
     */
    public ClassSet withSchoolRounding() {
        return new ClassSet(title, topics, learners, seed, Ties.SCHOOL, points);
    }

    /**
     * The same class set with other points for a topic.
     *
     * @param topic the topic
     * @param newPoints what its exercise is worth, from 1 to 100
     * @return the class set
     * @throws IllegalArgumentException if the points lie outside that range
     */
    public ClassSet withPoints(Topic topic, int newPoints) {
        Objects.requireNonNull(topic, "topic");
        if (newPoints < 1 || newPoints > 100) {
            throw new IllegalArgumentException(
                    "newPoints is " + newPoints + ": give whole points from 1 to 100 for " + topic);
        }
        Map<Topic, Integer> more = new EnumMap<>(Topic.class);
        more.putAll(points);
        more.put(topic, newPoints);
        return new ClassSet(title, topics, learners, seed, ties, more);
    }

    /**
     * What stands at the head of every sheet.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * The learners.
     *
     * @return their names in order; empty texts where they write them themselves
     */
    public List<String> learners() {
        return learners;
    }

    /**
     * What decided the numbers.
     *
     * @return the seed
     */
    public long seed() {
        return seed;
    }

    /**
     * The exercises of a learner.
     *
     * @param learner the number of the learner in the class list, from 1
     * @return the exercises in the order of the topics
     * @throws IllegalArgumentException if there is no such learner
     */
    public List<Exercise> exercises(int learner) {
        if (learner < 1 || learner > learners.size()) {
            throw new IllegalArgumentException(
                    "learner is " + learner + ": it must lie between 1 and " + learners.size());
        }
        return exercises.get(learner - 1);
    }

    int pointsOf(Topic topic) {
        return points.getOrDefault(topic, topic.points());
    }

    int allPoints() {
        return topics.stream().mapToInt(this::pointsOf).sum();
    }

    boolean roundsAsSchoolsDo() {
        return ties == Ties.SCHOOL;
    }

    List<Topic> topics() {
        return topics;
    }

    /**
     * The pages of a learner, each with its head and as many exercises as fit on A4.
     *
     * @param learner the number of the learner in the class list, from 1
     * @param style the words and the digits
     * @return a document for each page
     * @throws IllegalArgumentException if there is no such learner
     */
    public List<Document> pages(int learner, Style style) {
        return new ClassPages(this, Objects.requireNonNull(style, "style")).of(learner, exercises(learner));
    }

    /**
     * The key to the sheet of a learner: of each exercise the answer, its working, the mistake behind each wrong answer, and
     * what estimate and check come to.
     *
     * @param learner the number of the learner in the class list, from 1
     * @param style the words and the digits, and how much of the workings is told
     * @return the key
     * @throws IllegalArgumentException if there is no such learner
     */
    public Document key(int learner, Style style) {
        return new ClassKeys(this, Objects.requireNonNull(style, "style")).of(learner, exercises(learner));
    }

    /**
     * The class list: number, name, the right letters in order, and room for the points.
     *
     * @param style the words
     * @return the list
     */
    public Document list(Style style) {
        return new ClassKeys(this, Objects.requireNonNull(style, "style")).list();
    }

    /**
     * The sheets of all learners in one text. In HTML and LaTeX each page begins on paper of its own.
     *
     * @param style the words and the digits
     * @param format the format
     * @return the text
     */
    public String sheets(Style style, Format format) {
        Objects.requireNonNull(format, "format");
        List<Document> all = new ArrayList<>();
        for (int learner = 1; learner <= learners.size(); learner++) {
            all.addAll(pages(learner, style));
        }
        return Document.printAll(title, all, format);
    }

    /**
     * The class list and the keys of all learners in one text.
     *
     * @param style the words and the digits, and how much of the workings is told
     * @param format the format
     * @return the text
     */
    public String keys(Style style, Format format) {
        Objects.requireNonNull(format, "format");
        List<Document> all = new ArrayList<>();
        all.add(list(style));
        for (int learner = 1; learner <= learners.size(); learner++) {
            all.add(key(learner, style));
        }
        return Document.printAll(title, all, format);
    }

    /**
     * The exercises of all learners as Moodle XML, an open format that teaching platforms import: a category for each topic and
     * in it a multiple-choice question for each learner, with points, feedback on every answer, and the working as general
     * feedback.
     *
     * <p>The format is described in the documentation of the platform that it is named after, "Moodle XML format".
     *
     * @param style the words and the digits, and how much of the workings is told
     * @return the text of a file in UTF-8
     */
    public String moodleXml(Style style) {
        return new MoodleXml(this, Objects.requireNonNull(style, "style")).text();
    }

    /** Title, learners and topics in numbers: {@code Creams: 24 learners, 12 topics, seed 2026}. */
    @Override
    public String toString() {
        return title + ": " + learners.size() + " learners, " + topics.size() + " topics, seed " + seed;
    }
}
