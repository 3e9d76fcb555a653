package io.github.formulationmath.classroom;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What the teacher gets: keys with explanations, and the class list. */
final class ClassKeys {

    private final ClassSet set;
    private final Style style;
    private final Wording words;

    ClassKeys(ClassSet set, Style style) {
        this.set = set;
        this.style = style;
        this.words = style.wording();
    }

    Document of(int learner, List<Exercise> exercises) {
        Document document =
                Document.titled(words.say("class.key", number(learner), set.title()), words.say("language"));
        String name = set.learners().get(learner - 1);
        document = (name.isBlank() ? document : document.paragraph(name)).paragraph(rounding());
        for (int i = 0; i < exercises.size(); i++) {
            document = exercise(document, i + 1, exercises.get(i));
        }
        return document.caution(words.say("worksheet.caution"));
    }

    /** The rule for what lies half way between two steps. */
    String rounding() {
        return words.say(
                set.roundsAsSchoolsDo() ? "class.half-up" : "class.half-even",
                style.text(Ratio.of(5, 2)),
                style.text(Ratio.of(7, 2)));
    }

    private Document exercise(Document before, int number, Exercise exercise) {
        Document document = before.heading(words.say(
                        "class.exercise",
                        number(number),
                        exercise.topic().title(words),
                        number(set.pointsOf(exercise.topic()))))
                .paragraph(exercise.question(style))
                .followedBy(exercise.working().derivation(style))
                .question(words.say(
                        "class.answer", exercise.rightLetter(), exercise.rough(style), exercise.checked(style)));
        List<String> choices = exercise.choices(style);
        for (int i = 0; i < choices.size(); i++) {
            String letter = Exercise.letter(i);
            document = document.choice(
                    letter + ")\u00A0" + choices.get(i),
                    letter.equals(exercise.rightLetter()),
                    exercise.explanation(letter, style));
        }
        return document;
    }

    Document list() {
        List<Document.Column> columns = List.of(
                Document.Column.number(words.say("class.number")),
                Document.Column.name(words.say("class.learner")),
                Document.Column.text(words.say("class.letters")),
                Document.Column.text(words.say("class.points-reached", number(set.allPoints()))));
        List<List<String>> rows = new ArrayList<>();
        for (int learner = 1; learner <= set.learners().size(); learner++) {
            String letters =
                    set.exercises(learner).stream().map(Exercise::rightLetter).collect(Collectors.joining(" "));
            rows.add(List.of(number(learner), set.learners().get(learner - 1), letters, ""));
        }
        Document document = Document.titled(words.say("class.list", set.title()), words.say("language"))
                .paragraph(words.say("class.seed", style.text(Ratio.of(set.seed()))));
        return document.table(columns, rows);
    }

    private String number(int number) {
        return style.text(Ratio.of(number));
    }
}
