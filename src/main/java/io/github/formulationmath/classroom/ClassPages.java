package io.github.formulationmath.classroom;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The sheets of a learner, page by page. How many exercises go on a page is reckoned from a model of A4 as browsers print it
 * (margins of 10 mm, text of 10 points), with the ruled lines 8 mm apart; a test prints a class and counts.
 */
final class ClassPages {

    private static final int ROOM_MM = 245;
    private static final int LINE_MM = 8;
    private static final int TEXT_LINE_MM = 5;
    private static final int HEADING_MM = 6;
    private static final int CHOICES_MM = 6;
    private static final int CHARACTERS_A_LINE = 100;
    private static final int LINES_TO_WORK_ON = 3;

    /** An exercise with more steps gets a line more. */
    private static final int MANY_POINTS = 3;

    private static final String GAP = "\u00A0\u00A0 ";

    private final ClassSet set;
    private final Style style;
    private final Wording words;

    ClassPages(ClassSet set, Style style) {
        this.set = set;
        this.style = style;
        this.words = style.wording();
    }

    List<Document> of(int learner, List<Exercise> exercises) {
        List<List<Integer>> pages = parted(exercises);
        List<Document> documents = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            Document document = Document.titled(set.title(), words.say("language"))
                    .paragraph(head(learner, page + 1, pages.size()));
            if (page == 0) {
                document = document.paragraph(words.say("class.how") + " " + new ClassKeys(set, style).rounding())
                        .caution(words.say("worksheet.caution"));
            }
            for (int number : pages.get(page)) {
                document = exercise(document, number + 1, exercises.get(number));
            }
            documents.add(document);
        }
        return documents;
    }

    /** Which exercises stand on which page. */
    private List<List<Integer>> parted(List<Exercise> exercises) {
        List<List<Integer>> pages = new ArrayList<>();
        int left = 0;
        for (int i = 0; i < exercises.size(); i++) {
            int needed = height(exercises.get(i));
            if (pages.isEmpty() || needed > left) {
                pages.add(new ArrayList<>());
                left = ROOM_MM;
            }
            pages.get(pages.size() - 1).add(i);
            left -= needed;
        }
        return pages;
    }

    private int height(Exercise exercise) {
        int text = exercise.question(style).length() / CHARACTERS_A_LINE + 1;
        return HEADING_MM + text * TEXT_LINE_MM + labels(exercise).size() * LINE_MM + CHOICES_MM;
    }

    private String head(int learner, int page, int pages) {
        String name = set.learners().get(learner - 1);
        String number = number(learner);
        String place = words.say("class.page", number(page), number(pages));
        String written =
                name.isBlank() ? words.say("class.name-to-write", number) : words.say("class.name", number, name);
        return page > 1
                ? written + GAP + place
                : written + GAP + place + GAP + words.say("class.points", number(set.allPoints()));
    }

    private String number(int number) {
        return style.text(Ratio.of(number));
    }

    private Document exercise(Document before, int number, Exercise exercise) {
        Document document = before.heading(words.say(
                        "class.exercise",
                        number(number),
                        exercise.topic().title(words),
                        number(set.pointsOf(exercise.topic()))))
                .paragraph(exercise.question(style))
                .writingLines(labels(exercise))
                .question("");
        List<String> choices = exercise.choices(style);
        for (int i = 0; i < choices.size(); i++) {
            document = document.choice(Exercise.letter(i) + ")\u00A0" + choices.get(i), false, "");
        }
        return document;
    }

    /** A guess first, room for the steps, and last the answer in its digits and a look at whether it can be right. */
    private List<String> labels(Exercise exercise) {
        List<String> labels = new ArrayList<>(List.of(words.say("class.guess")));
        int lines = LINES_TO_WORK_ON - (set.pointsOf(exercise.topic()) < MANY_POINTS ? 1 : 0);
        labels.addAll(Collections.nCopies(lines, ""));
        labels.add(words.say("class.digits", exercise.check(style)));
        return labels;
    }
}
