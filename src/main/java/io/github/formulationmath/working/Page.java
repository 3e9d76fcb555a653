package io.github.formulationmath.working;

import java.util.List;

/** Writes a whole working in one format. The calls come in the order in which they stand here. */
interface Page {

    void question(String words);

    /** A paragraph of its own: below the question, or at the end. */
    void aside(String words);

    /** Ends the question and begins the table of given values. */
    void beginGivens(String heading, List<String> columns);

    /** A given value; the origin is empty where it is not asked for or not known. */
    void given(Line value, String meaning, String origin);

    void endGivens();

    void beginSteps(String heading);

    void step(String meaning, List<Line> lines, String remark);

    void decision(String heading, List<Line> lines);

    void note(String heading, String words);

    void endSteps();

    void answer(String heading, String meaning, List<Line> lines);

    void beginExercises(String heading);

    /** A blank and the answers to it: in a row, or one below the other if something is said of them. */
    void exercise(Step step, String meaning, List<Choice> choices);

    void endExercises();

    /** The finished text. */
    String text();
}
