package io.github.formulationmath.exercise;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Expression;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.reckoning.Working;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A worksheet, or the key to it, as a document: the working in its style, then the answers to choose from. */
final class WorksheetDocument {

    private final Worksheet worksheet;
    private final Style style;
    private final Wording words;
    private final List<Step> asked;

    WorksheetDocument(Worksheet worksheet, Style style) {
        this.worksheet = worksheet;
        this.style = style;
        this.words = style.wording();
        this.asked = worksheet.blanks().stream().map(Worksheet.Blank::step).toList();
    }

    /** Shows the choices where there are any. */
    Document sheet() {
        return Document.titled(words.text(worksheet.working().question()), words.say("language"))
                .paragraph(words.say("worksheet.fields", number()))
                .followedBy(working().document(style.leavingBlank(asked)))
                .followedBy(exercises(
                        "worksheet.exercises",
                        false,
                        worksheet.blanks().stream()
                                .filter(blank -> !blank.choices().isEmpty())
                                .toList()))
                .caution(words.say("worksheet.caution"));
    }

    /** Says something of every blank. */
    Document key() {
        String question = words.text(worksheet.working().question());
        return Document.titled(words.say("worksheet.key", number(), question), words.say("language"))
                .followedBy(working().document(style.emphasizing(asked)))
                .followedBy(exercises("worksheet.answers", true, worksheet.blanks()))
                .caution(words.say("worksheet.caution"));
    }

    private String number() {
        return style.text(Ratio.of(worksheet.seed()));
    }

    /** Where a tie was broken, the rule for it is said. */
    private Working working() {
        Working working = worksheet.working();
        return working.steps().stream().anyMatch(WorksheetDocument::breaksTie)
                ? working.with(new Entry.Note(Phrase.of("worksheet.ties")))
                : working;
    }

    private static boolean breaksTie(Step step) {
        return step.definition().orElse(step) instanceof Term.Applied applied
                && applied.operation() instanceof Operation.Rounded rounding
                && breaksTie(rounding, applied.inputs().get(0).value());
    }

    /** Whether a number lies exactly half way between two steps, and the even one is taken. */
    static boolean breaksTie(Operation.Rounded operation, Ratio value) {
        Ratio step = operation.rounding().stepFor(value);
        if (operation.rounding().mode() != RoundingMode.HALF_EVEN || step.isZero()) {
            return false;
        }
        Ratio steps = value.dividedBy(step);
        return !steps.isInteger() && steps.times(2).isInteger();
    }

    private Document exercises(String heading, boolean withKey, List<Worksheet.Blank> blanks) {
        Document document = Document.titled("", words.say("language"));
        if (blanks.isEmpty()) {
            return document;
        }
        document = document.heading(words.say(heading));
        for (Worksheet.Blank blank : blanks) {
            document = exercise(document, blank, withKey);
        }
        return document;
    }

    private Document exercise(Document before, Worksheet.Blank blank, boolean withKey) {
        Step step = blank.step();
        Document document = before.question(
                Expression.symbol(step.symbol().letter(), step.subject().subscript()), words.text(step.meaning()));
        if (blank.choices().isEmpty()) {
            return document.choice(style.text(step.value(), step), true, "");
        }
        char letter = 'a';
        for (Worksheet.Choice choice : blank.choices()) {
            String answer = letter++ + ") " + choice.text(style);
            document = document.choice(answer, withKey && choice.isRight(), withKey ? verdict(choice) : "");
        }
        return document;
    }

    private String verdict(Worksheet.Choice choice) {
        return choice.distractor().map(this::slip).orElseGet(() -> words.say("worksheet.right"));
    }

    private String slip(Distractor distractor) {
        List<String> names = new ArrayList<>();
        for (Step step : distractor.exchanged()) {
            names.add(step.label());
            names.add(words.text(step.meaning()));
        }
        String slip = words.say(distractor.mistake().key(), names.toArray(String[]::new));
        Step from = distractor.from();
        return from == null ? slip : words.say("worksheet.carried", from.label(), slip);
    }
}
