package io.github.formulationmath.json;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * A working as numbered lines, each one number, one operation, one comparison or one remark, that name the lines they use:
 * nothing is nested, however long the arithmetic is, and a program of twenty lines can follow it.
 */
final class ReckonedDocument {

    private static final String FORMAT = "formulation-math/working";
    private static final String VALUE = "value";

    private final List<Written> lines = new ArrayList<>();
    private final Map<Term, String> numbers = new IdentityHashMap<>();

    private ReckonedDocument() {}

    /** Everything but the seal. */
    static Written write(Working working) {
        ReckonedDocument document = new ReckonedDocument();
        working.entries().forEach(document::entry);
        String answer = document.number(working.answer());
        return ValueDocument.document(FORMAT)
                .with("question", phrase(working.question()))
                .with("lines", document.lines)
                .with("answer", Written.of("line", answer).with(VALUE, text(working.answer())));
    }

    private void entry(Entry entry) {
        if (entry instanceof Step step) {
            number(step);
        } else if (entry instanceof Entry.Decision decision) {
            List<String> sides = List.of(number(decision.left()), number(decision.right()));
            next("comparison")
                    .with("of", sides)
                    .with("sign", decision.comparison().sign())
                    .with("holds", Boolean.toString(decision.holds()));
        } else {
            next("note").with("text", phrase(((Entry.Note) entry).phrase()));
        }
    }

    private Written next(String is) {
        Written line = Written.of("line", Integer.toString(lines.size() + 1)).with("is", is);
        lines.add(line);
        return line;
    }

    /** The line of a term, written with all that it uses if it is not there yet. */
    private String number(Term whole) {
        // Works off a list instead of calling itself: a chain of operations may be long.
        Deque<Term> open = new ArrayDeque<>(List.of(whole));
        while (!open.isEmpty()) {
            Term term = open.peek();
            List<Term> missing = used(term).stream()
                    .filter(part -> !numbers.containsKey(part))
                    .toList();
            if (missing.isEmpty()) {
                numbers.computeIfAbsent(open.pop(), this::written);
            } else {
                // The first that is used is to be worked first.
                for (int i = missing.size() - 1; i >= 0; i--) {
                    open.push(missing.get(i));
                }
            }
        }
        return numbers.getOrDefault(whole, "");
    }

    private static List<Term> used(Term term) {
        if (term instanceof Step step) {
            return step.definition().map(List::of).orElse(List.of());
        }
        return term instanceof Term.Applied applied ? applied.inputs() : List.of();
    }

    private String written(Term term) {
        List<String> of =
                used(term).stream().map(part -> numbers.getOrDefault(part, "")).toList();
        if (term instanceof Step step) {
            step(step, of);
        } else if (term instanceof Term.Applied applied) {
            operation(applied.operation(), next(word(applied.operation())).with("of", of), applied.inputs());
        } else {
            next("number");
        }
        lines.get(lines.size() - 1).with(VALUE, text(term));
        return Integer.toString(lines.size());
    }

    private void step(Step step, List<String> of) {
        Kind kind = step.symbol().kind();
        Written line = next(of.isEmpty() ? "given" : "step")
                .with("name", step.label())
                .with("letter", step.symbol().letter());
        if (!step.subject().subscript().isEmpty()) {
            line.with("index", step.subject().subscript());
        }
        line.with("meaning", phrase(step.meaning()))
                .with("kind", ValueDocument.word(kind))
                .with("unit", unit(kind));
        if (!of.isEmpty()) {
            line.with("of", of);
        } else if (!step.source().equals(Source.user())) {
            line.with("source", source(step.source()));
        }
    }

    private static String word(Operation operation) {
        if (operation instanceof Operation.Arithmetic exact) {
            return ValueDocument.word(exact);
        }
        if (operation instanceof Operation.Power) {
            return "power";
        }
        return operation instanceof Operation.Rounded
                ? "rounded"
                : operation instanceof Operation.Statistic ? "function" : "root";
    }

    private static void operation(Operation operation, Written line, List<Term> inputs) {
        if (operation instanceof Operation.Rounded rounded) {
            rounding(rounded.rounding(), line, inputs.get(0).value());
        } else if (operation instanceof Operation.Statistic statistic) {
            line.with("function", statistic.function().symbol());
        } else if (operation instanceof Operation.Root || operation instanceof Operation.Power) {
            line.with("digits", Integer.toString(Operation.Root.DIGITS));
        }
    }

    /** Told so that no digit of it can be changed unnoticed: input = divisions · step, result = whole · step. */
    private static void rounding(Rounding rounding, Written line, Ratio input) {
        Ratio step = rounding.stepFor(input);
        if (step.isZero()) {
            line.with("mode", "none");
            return;
        }
        Ratio finest = rounding.stepFor(Ratio.ONE);
        if (!finest.equals(rounding.stepFor(Ratio.of(10)))) {
            // To d significant digits 1 is on a grid of 10^(1 − d).
            int digits = finest.reciprocal().numerator().toString().length();
            line.with("digits", Integer.toString(digits));
        }
        line.with("mode", ValueDocument.word(rounding.mode()))
                .with("step", step.toString())
                .with("divisions", input.dividedBy(step).toString())
                .with("whole", rounding.apply(input).dividedBy(step).toString());
    }

    private static Written source(Source source) {
        return source.writtenText().isEmpty()
                ? Written.of("citation", source.citation())
                : Written.of("written", source.writtenText());
    }

    /** A key into the words of the library with what is put in, and what that says in English. */
    private static Written phrase(Phrase phrase) {
        return Written.of("key", phrase.key())
                .with("arguments", phrase.arguments())
                .with("english", phrase.toString());
    }

    private static String text(Term term) {
        return term.value().toString();
    }

    /** The unit in which numbers of a kind are kept, which for some is not the one in which they are shown. */
    private static String unit(Kind kind) {
        return switch (kind) {
            case SHARE, SHARE_DIFFERENCE, NUMBER -> "1";
            case ALKALI_NUMBER, IODINE_NUMBER -> "g/g";
            case SUBSTANCE_CONCENTRATION -> "mol/mL";
            case MONEY -> "money";
            case MONEY_PER_MASS -> "money/g";
            case MASS, VOLUME, DENSITY, MASS_SQUARED, MOLAR_MASS, SUBSTANCE, TEMPERATURE -> kind.canonicalUnit();
        };
    }
}
