package io.github.formulationmath.reckoning;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.document.Expression;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Style.Depth;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;

/** Tells a working as a document: what is asked and given, each step in symbols and with the numbers put in, the answer. */
final class WorkingDocument {

    private static final int LONGEST_WRITTEN = 20;

    private final Depth depth;
    private final Wording words;
    private final Numerals numerals;
    private final Formulas formulas;

    WorkingDocument(Style style) {
        this.depth = style.depth();
        this.words = style.wording();
        this.numerals = new Numerals(style);
        this.formulas = new Formulas(numerals, words);
    }

    Document of(Working working) {
        Document document = Document.titled(words.text(working.question()), words.say("language"));
        if (depth != Depth.ANSWER) {
            document =
                    steps(givens(document, working, words.say("working.given")), working, words.say("working.steps"));
        }
        Term answer = working.answer();
        return document.heading(words.say("working.answer"))
                .equations(answer instanceof Step step ? words.text(step.meaning()) : "", answer(answer));
    }

    /** The given values and the steps, to stand in another document. */
    Document derivation(Working working) {
        Document document = Document.titled("", words.say("language"));
        if (depth == Depth.ANSWER) {
            return document;
        }
        return steps(givens(document, working, ""), working, "");
    }

    private static Document headed(Document document, String heading) {
        return heading.isEmpty() ? document : document.heading(heading);
    }

    private Document givens(Document document, Working working, String heading) {
        List<Step> givens = working.steps().stream()
                .filter(step -> step.definition().isEmpty())
                .toList();
        if (givens.isEmpty()) {
            return document;
        }
        List<Column> columns = new ArrayList<>(List.of(
                Column.text(words.say("working.column.value")), Column.name(words.say("working.column.meaning"))));
        if (depth == Depth.EVERYTHING) {
            columns.add(Column.text(words.say("working.column.origin")));
        }
        return headed(document, heading)
                .values(
                        columns,
                        givens.stream().map(this::value).toList(),
                        givens.stream().map(this::given).toList());
    }

    private List<String> given(Step step) {
        String meaning = words.text(step.meaning());
        if (depth != Depth.EVERYTHING) {
            return List.of(meaning);
        }
        return List.of(meaning, numerals.isBlanked(step) ? "" : origin(step.source()));
    }

    /** Where a given value comes from; empty if nothing is known, or if it was handed over as a long fraction, which the value has. */
    private String origin(Source source) {
        if (source.writtenText().length() > LONGEST_WRITTEN
                && source.writtenText().matches("[0-9]+/[0-9]+ ?.*")) {
            return "";
        }
        return source.writtenText().isEmpty()
                ? source.citation()
                : words.say("working.as-written", source.writtenText());
    }

    private Document steps(Document document, Working working, String heading) {
        List<Entry> shown = working.entries().stream().filter(this::isShown).toList();
        Document all = shown.isEmpty() ? document : headed(document, heading);
        for (Entry entry : shown) {
            all = entry(all, entry);
        }
        return all;
    }

    private boolean isShown(Entry entry) {
        if (entry instanceof Step step) {
            return step.definition().isPresent();
        }
        return entry instanceof Entry.Note || depth == Depth.EVERYTHING;
    }

    private Document entry(Document document, Entry entry) {
        if (entry instanceof Step step) {
            return document.step(words.text(step.meaning()), lines(step), remark(step));
        }
        if (entry instanceof Entry.Decision decision) {
            return document.step(words.say("working.comparison"), lines(decision), "");
        }
        return document.note(words.say("working.note"), words.text(((Entry.Note) entry).phrase()));
    }

    /** What a rounding changed: the step less its input. */
    private String remark(Step step) {
        if (depth != Depth.EVERYTHING
                || numerals.isBlanked(step)
                || !(step.definition().orElse(step) instanceof Term.Applied applied)
                || !(applied.operation() instanceof Operation.Rounded rounding)
                || rounding.rounding().stepFor(step.value()).isZero()
                || numerals.isBlanked(applied.inputs().get(0))) {
            return "";
        }
        Ratio change = step.value().minus(applied.inputs().get(0).value());
        String key = switch (change.signum()) {
            case 0 -> "rounding.changed-nothing";
            case 1 -> "rounding.up";
            default -> "rounding.down";
        };
        return words.say(key, numerals.exactText(change.abs(), applied.inputs().get(0)));
    }

    /** The value of a step in one line: {@code m_3 = 400/3 g ≈ 133.333 g}. */
    private Expression value(Step step) {
        return Expression.relation(Formulas.symbol(step), numerals.isShortened(step) ? "≈" : "=", result(step));
    }

    /** How a computed step came about. */
    private List<Expression> lines(Step step) {
        // A sum of one term is that term, and its value is not printed twice.
        Term definition = Formulas.unwrapped(step.definition().orElse(step));
        if (definition instanceof Term.Literal || definition == step) {
            return List.of(value(step));
        }
        List<Expression> lines = new ArrayList<>();
        lines.add(Expression.relation(Formulas.symbol(step), "=", formulas.symbols(definition)));
        if (definition instanceof Term.Applied) {
            lines.add(Expression.continued(isShortened(definition) ? "≈" : "=", formulas.numbers(definition)));
        }
        lines.add(Expression.continued(sign(definition, step), result(step)));
        return lines;
    }

    private List<Expression> lines(Entry.Decision decision) {
        String sign = decision.comparison().sign();
        Term left = decision.left();
        Term right = decision.right();
        List<Expression> lines = new ArrayList<>();
        lines.add(Expression.relation(formulas.symbols(left), sign, formulas.symbols(right)));
        if (left instanceof Term.Applied || right instanceof Term.Applied) {
            lines.add(Expression.relation(formulas.numbers(left), sign, formulas.numbers(right)));
        }
        if (!anywhere(left, numerals::isBlanked) && !anywhere(right, numerals::isBlanked)) {
            boolean few = numerals.bearsOut(left, right);
            lines.add(Expression.relation(compared(left, few), sign, compared(right, few))
                    .judged(words.say(decision.holds() ? "decision.holds" : "decision.fails")));
        }
        return lines;
    }

    private Expression compared(Term term, boolean few) {
        return few ? numerals.inLine(term) : numerals.exact(term);
    }

    /** Whether a number in a line of arithmetic has fewer digits than it should. */
    private boolean isShortened(Term definition) {
        return anywhere(definition, numerals::isShortened);
    }

    private List<Expression> answer(Term answer) {
        if (answer instanceof Step step) {
            return List.of(value(step));
        }
        if (answer instanceof Term.Literal) {
            return List.of(Expression.continued("=", result(answer)));
        }
        Expression result = anywhere(answer, numerals::isBlanked) ? numerals.blank(answer) : result(answer);
        return List.of(
                Expression.relation(
                        formulas.symbols(answer), isShortened(answer) ? "≈" : "=", formulas.numbers(answer)),
                Expression.continued(sign(answer, answer), result));
    }

    private Expression result(Term term) {
        Expression exact = numerals.inLine(term);
        return numerals.inFewDigits(term)
                .map(few -> Expression.relation(exact, "≈", few))
                .orElse(exact);
    }

    /** A root, a power of ten and a statistical function are not exact, and their results do not claim to be. */
    private String sign(Term definition, Term result) {
        boolean inexact = anywhere(definition, WorkingDocument::isInexact)
                || isShortened(definition)
                || numerals.isShortened(result);
        return inexact ? "≈" : "=";
    }

    private static boolean isInexact(Term term) {
        return term instanceof Term.Applied applied
                && (applied.operation() instanceof Operation.Root
                        || applied.operation() instanceof Operation.Power
                        || applied.operation() instanceof Operation.Statistic);
    }

    /** Whether a term or one written out in it will do; works off a list, since a chain of operations may be long. */
    private static boolean anywhere(Term whole, Predicate<Term> wanted) {
        Deque<Term> open = new ArrayDeque<>(List.of(whole));
        while (!open.isEmpty()) {
            Term term = open.pop();
            if (wanted.test(term)) {
                return true;
            }
            if (term instanceof Term.Applied applied) {
                applied.inputs().forEach(open::push);
            }
        }
        return false;
    }
}
