package io.github.formulationmath.support;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.PrintedArithmetic;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Working;
import java.util.HashMap;
import java.util.Map;

/** Holds a working against itself and against an evaluator that reads what is printed. */
public final class WorkingAssertions {

    private static final Style OUNCES = Style.everything().in(Kind.MASS, "oz", Ratio.parse("28.349523125"));

    private WorkingAssertions() {}

    /**
     * Asserts that a result shows a working that leads to it, and that every printed line of it is true.
     *
     * @param explained the result
     */
    public static void assertSelfChecking(Explained explained) {
        Working working = explained.working();
        if (!working.answer().value().equals(explained.origin().number())) {
            throw new AssertionError("the working leads to " + working.answer().value() + ", the result is "
                    + explained.origin().number());
        }
        assertSelfChecking(working);
    }

    /**
     * Asserts that every operation of a working gives its recorded result, and that every printed line is true: as text in
     * canonical units and in ounces, as Markdown, LaTeX and HTML.
     *
     * @param working the working
     */
    public static void assertSelfChecking(Working working) {
        working.check();
        verify(working.document(Style.everything()), Format.TEXT, working, PrintedArithmetic::verifyText);
        verify(working.document(OUNCES), Format.TEXT, working, PrintedArithmetic::verifyText);
        verify(working.document(Style.everything()), Format.MARKDOWN, working, PrintedArithmetic::verifyMarkdown);
        verify(working.document(Style.everything()), Format.LATEX, working, PrintedArithmetic::verifyLatex);
        verify(
                working.document(Style.everything()),
                Format.HTML,
                working,
                (page, values, comparisons) ->
                        PrintedArithmetic.verifyHtml(HtmlChecks.parse(page), values, comparisons));
    }

    private interface Verifier {
        void verify(String page, Map<String, String> values, int comparisons);
    }

    private static void verify(Document document, Format format, Working working, Verifier verifier) {
        String page = document.print(format);
        try {
            verifier.verify(page, values(working), comparisons(working));
        } catch (AssertionError e) {
            throw new AssertionError(e.getMessage() + "\n\n" + page, e);
        }
    }

    /** Each symbol of a working and its exact value; the answer under the empty name. */
    public static Map<String, String> values(Working working) {
        Map<String, String> values = new HashMap<>();
        for (Step step : working.steps()) {
            values.put(step.label(), step.value().toString());
        }
        values.put("", working.answer().value().toString());
        return values;
    }

    /** How many comparisons a working holds. */
    public static int comparisons(Working working) {
        return (int) working.entries().stream()
                .filter(Entry.Decision.class::isInstance)
                .count();
    }
}
