package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import java.math.BigInteger;
import java.util.List;

/** Takes a working through a page, to the depth asked for. */
final class Rendering {

    private final Page page;
    private final Depth depth;
    private final Words words;
    private final Filling filling;
    private final Numerals numerals;
    private final Equations equations;

    Rendering(Page page, Style style, Words words, Filling filling) {
        this.page = page;
        this.depth = style.depth();
        this.words = words;
        this.filling = filling;
        this.numerals = new Numerals(style, filling);
        this.equations = new Equations(numerals, words);
    }

    String write(Working working) {
        page.question(words.say(working.question()));
        body(working, false);
        return page.text();
    }

    String write(Worksheet worksheet) {
        BigInteger seed = BigInteger.valueOf(worksheet.seed());
        String number = (seed.signum() < 0 ? "−" : "") + numerals.count(seed.abs());
        String question = words.say(worksheet.working().question());
        if (filling.filledIn()) {
            page.question(words.say("worksheet.key", number, question));
        } else {
            page.question(question);
            page.aside(words.say("worksheet.fields", number));
        }
        body(worksheet.working(), true);
        new Exercises(page, words, numerals).write(worksheet, filling.filledIn());
        page.aside(words.say("worksheet.caution"));
        return page.text();
    }

    private void body(Working working, boolean explainsTies) {
        if (depth != Depth.ANSWER) {
            givens(working);
            steps(working, explainsTies && breaksTie(working));
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

    private void steps(Working working, boolean tie) {
        List<Entry> shown = working.entries().stream().filter(this::isShown).toList();
        if (shown.isEmpty()) {
            return;
        }
        page.beginSteps(words.say("working.steps"));
        shown.forEach(this::entry);
        if (tie) {
            page.note(words.say("working.note"), words.say("worksheet.ties"));
        }
        page.endSteps();
    }

    private static boolean breaksTie(Working working) {
        return working.steps().stream()
                .flatMap(step -> step.definition().stream())
                .anyMatch(definition -> definition instanceof Applied applied
                        && applied.operation() instanceof RoundingOperation rounding
                        && rounding.breaksTie(applied.inputs().get(0).value()));
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
