package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;

/** Prints the answers to choose from below a working, or the key to them. */
final class Exercises {

    private final Page page;
    private final Words words;
    private final Numerals numerals;

    Exercises(Page page, Words words, Numerals numerals) {
        this.page = page;
        this.words = words;
        this.numerals = numerals;
    }

    /** A sheet shows the choices where there are any; a key says something of every blank. */
    void write(Worksheet worksheet, boolean withKey) {
        List<Blank> shown = worksheet.blanks().stream()
                .filter(blank -> withKey || !blank.choices().isEmpty())
                .toList();
        if (shown.isEmpty()) {
            return;
        }
        page.beginExercises(words.say(withKey ? "worksheet.answers" : "worksheet.exercises"));
        for (Blank blank : shown) {
            page.exercise(blank.step(), words.meaning(blank.step()), choices(blank, withKey));
        }
        page.endExercises();
    }

    private List<Choice> choices(Blank blank, boolean withKey) {
        if (blank.choices().isEmpty()) {
            return List.of(new Choice("", value(blank.step().value(), blank), "", true));
        }
        List<Choice> choices = new ArrayList<>();
        for (Ratio choice : blank.choices()) {
            String letter = String.valueOf((char) ('a' + choices.size()));
            boolean right = withKey && choice.equals(blank.step().value());
            choices.add(new Choice(letter, value(choice, blank), withKey ? verdict(choice, blank) : "", right));
        }
        return choices;
    }

    /** A decimal; where the exact value is none or is long, a shorter one after ≈. */
    private String value(Ratio value, Blank blank) {
        return numerals.inFewDigits(value, blank.step())
                .map(few -> "≈ " + Words.plain(few))
                .orElseGet(() -> Words.plain(numerals.exact(value, blank.step())));
    }

    private String verdict(Ratio choice, Blank blank) {
        return blank.distractors().stream()
                .filter(distractor -> distractor.value().equals(choice))
                .findFirst()
                .map(this::slip)
                .orElseGet(() -> words.say("worksheet.right"));
    }

    private String slip(Distractor distractor) {
        List<String> names = new ArrayList<>();
        for (Step step : distractor.exchanged()) {
            names.add(Words.clean(step.label()));
            names.add(words.meaning(step));
        }
        return words.say(distractor.mistake().key(), names.toArray(String[]::new));
    }
}
