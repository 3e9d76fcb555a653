package io.github.formulationmath.support;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.PrintedArithmetic;
import io.github.formulationmath.working.Decision;
import io.github.formulationmath.working.Depth;
import io.github.formulationmath.working.Explainable;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Step;
import io.github.formulationmath.working.UnitChoice;
import io.github.formulationmath.working.Working;
import io.github.formulationmath.working.WorkingFormat;
import java.util.HashMap;
import java.util.Map;

/** Holds a working against itself and against an evaluator that reads what is printed. */
public final class WorkingAssertions {

    private static final UnitChoice OUNCES = UnitChoice.canonical().with(Kind.MASS, "oz", Ratio.parse("28.349523125"));

    private WorkingAssertions() {}

    /**
     * Asserts that a result shows a working that leads to it, and that every printed line of it is true.
     *
     * @param explained the result
     */
    public static void assertSelfChecking(Explainable explained) {
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
        WorkingFormat text = WorkingFormat.text().with(Depth.EVERYTHING);
        verify(text, working, PrintedArithmetic::verifyText);
        verify(text.with(OUNCES), working, PrintedArithmetic::verifyText);
        verify(WorkingFormat.markdown().with(Depth.EVERYTHING), working, PrintedArithmetic::verifyMarkdown);
        verify(WorkingFormat.latexDocument().with(Depth.EVERYTHING), working, PrintedArithmetic::verifyLatex);
        verify(
                WorkingFormat.htmlPage().with(Depth.EVERYTHING),
                working,
                (page, values, comparisons) ->
                        PrintedArithmetic.verifyHtml(HtmlChecks.parse(page), values, comparisons));
    }

    private interface Verifier {
        void verify(String page, Map<String, String> values, int comparisons);
    }

    private static void verify(WorkingFormat format, Working working, Verifier verifier) {
        String page = format.format(working);
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
        return (int)
                working.entries().stream().filter(Decision.class::isInstance).count();
    }
}
