package io.github.formulationmath.working;

import java.util.List;

/** A page whose parts simply follow one another: headings, paragraphs and arithmetic, nothing that has to be closed. */
abstract sealed class RunningPage implements Page permits LatexPage, MarkdownPage, TextPage {

    final StringBuilder out = new StringBuilder();
    private final int level;

    /** The level of the question's heading; those below it are one deeper. */
    RunningPage(int level) {
        this.level = level;
    }

    abstract void heading(int depth, String words);

    abstract void paragraph(String words);

    abstract void equations(List<Line> lines);

    /** What qualifies the step above. */
    void remark(String words) {
        paragraph(words);
    }

    @Override
    public void question(String words) {
        heading(level, words);
    }

    @Override
    public void aside(String words) {
        paragraph(words);
    }

    @Override
    public void beginGivens(String heading, List<String> columns) {
        heading(level + 1, heading);
    }

    @Override
    public void beginSteps(String heading) {
        heading(level + 1, heading);
    }

    @Override
    public void step(String meaning, List<Line> lines, String remark) {
        paragraph(meaning);
        equations(lines);
        if (!remark.isEmpty()) {
            remark(remark);
        }
    }

    @Override
    public void decision(String heading, List<Line> lines) {
        paragraph(heading);
        equations(lines);
    }

    @Override
    public void endSteps() {
        // The next heading ends them.
    }

    @Override
    public void answer(String heading, String meaning, List<Line> lines) {
        heading(level + 1, heading);
        if (!meaning.isEmpty()) {
            paragraph(meaning);
        }
        equations(lines);
    }

    @Override
    public void beginExercises(String heading) {
        heading(level + 1, heading);
    }

    @Override
    public void endExercises() {
        // Nothing follows.
    }
}
