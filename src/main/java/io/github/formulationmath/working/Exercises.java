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

    void write(Worksheet worksheet, boolean withKey) {
        page.beginExercises(words.say(withKey ? "worksheet.key" : "worksheet.exercises"));
        for (Blank blank : worksheet.blanks()) {
            String heading = Words.clean(blank.step().label()) + ", " + words.meaning(blank.step());
            page.exercise(heading, choices(blank, withKey));
        }
        page.endExercises();
    }

    private List<String> choices(Blank blank, boolean withKey) {
        List<String> choices = new ArrayList<>();
        for (Ratio choice : blank.choices()) {
            char letter = (char) ('a' + choices.size());
            String number = Words.plain(numerals.exact(choice, blank.step()));
            String few = numerals.inFewDigits(choice, blank.step())
                    .map(numeral -> " ≈ " + Words.plain(numeral))
                    .orElse("");
            choices.add(letter + ") " + number + few + (withKey ? ": " + verdict(choice, blank) : ""));
        }
        return choices;
    }

    private String verdict(Ratio choice, Blank blank) {
        return blank.distractors().stream()
                .filter(distractor -> distractor.value().equals(choice))
                .findFirst()
                .map(distractor -> words.say(distractor.mistake().key()))
                .orElseGet(() -> words.say("worksheet.right"));
    }
}
