package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.function.Predicate;

/** Takes a working through a page, to the depth asked for. */
final class Rendering {

    private final Page page;
    private final Depth depth;
    private final Words words;
    private final Numerals numerals;
    private final Equations equations;

    Rendering(Page page, Style style, Words words, Predicate<Step> blanked) {
        this.page = page;
        this.depth = style.depth();
        this.words = words;
        this.numerals = new Numerals(style, blanked);
        this.equations = new Equations(numerals, words);
    }

    String write(Working working) {
        body(working);
        return page.text();
    }

    String write(Worksheet worksheet, boolean withKey) {
        body(worksheet.working());
        new Exercises(page, words, numerals).write(worksheet, withKey);
        return page.text();
    }

    private void body(Working working) {
        page.question(words.say(working.question()));
        if (depth != Depth.ANSWER) {
            givens(working);
            steps(working);
        }
        Term answer = working.answer();
        page.answer(
                words.say("working.answer"),
                answer instanceof Step step ? words.meaning(step) : "",
                equations.answer(answer));
    }

    private void givens(Working working) {
        List<Step> givens = working.steps().stream()
                .filter(step -> step.definition().isEmpty())
                .toList();
        if (givens.isEmpty()) {
            return;
        }
        boolean everything = depth == Depth.EVERYTHING;
        List<String> columns = List.of(
                words.say("working.column.value"),
                words.say("working.column.meaning"),
                everything ? words.say("working.column.origin") : "");
        page.beginGivens(words.say("working.given"), columns);
        for (Step step : givens) {
            page.given(
                    equations.value(step),
                    words.meaning(step),
                    everything && !numerals.isBlanked(step) ? words.origin(step.source()) : "");
        }
        page.endGivens();
    }

    private void steps(Working working) {
        List<Entry> shown = working.entries().stream().filter(this::isShown).toList();
        if (shown.isEmpty()) {
            return;
        }
        page.beginSteps(words.say("working.steps"));
        shown.forEach(this::entry);
        page.endSteps();
    }

    private boolean isShown(Entry entry) {
        if (entry instanceof Step step) {
            return step.definition().isPresent();
        }
        return entry instanceof Note || depth == Depth.EVERYTHING;
    }

    private void entry(Entry entry) {
        if (entry instanceof Step step) {
            page.step(words.meaning(step), equations.step(step), remark(step));
        } else if (entry instanceof Decision decision) {
            page.decision(words.say("working.comparison"), equations.decision(decision));
        } else {
            page.note(words.say("working.note"), words.say(((Note) entry).phrase()));
        }
    }

    /** What a rounding changed: the step less its input. */
    private String remark(Step step) {
        if (depth != Depth.EVERYTHING
                || numerals.isBlanked(step)
                || !(step.definition().orElse(step) instanceof Applied applied)
                || !(applied.operation() instanceof RoundingOperation rounding)
                || rounding.rounding().stepFor(step.value()).isZero()
                || numerals.isBlanked(applied.inputs().get(0))) {
            return "";
        }
        Ratio change = step.value().minus(applied.inputs().get(0).value());
        String size = Words.plain(numerals.exact(change.abs(), applied.inputs().get(0)));
        String key =
                change.isZero() ? "rounding.changed-nothing" : change.signum() > 0 ? "rounding.up" : "rounding.down";
        return words.say(key, size);
    }
}
