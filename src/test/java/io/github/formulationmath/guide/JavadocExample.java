package io.github.formulationmath.guide;

import io.github.formulationmath.snippet.Outcome;
import io.github.formulationmath.snippet.Snippet;
import io.github.formulationmath.snippet.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * An example of the Javadoc and what it says of itself. An expression followed by a comment, or by " is " and a value, has
 * that value; a condition of which nothing is said holds.
 *
 * @param snippet the code
 * @param behind the text that follows inline code; empty for a block
 */
record JavadocExample(Snippet snippet, String behind) {

    /** What is wrong with the example, or nothing. */
    List<String> faults(Outcome outcome) {
        if (outcome instanceof Outcome.NotJava refused) {
            return List.of("does not compile: " + refused.why());
        }
        if (outcome instanceof Outcome.Threw threw) {
            return List.of("throws " + threw.thrown());
        }
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < snippet.statements().size(); i++) {
            Statement statement = snippet.statements().get(i);
            Object value = ((Outcome.Ran) outcome).seen().valueOf(i);
            if (value != null && !agrees(value, said(statement))) {
                faults.add(statement.code() + " gives " + value + ", said is: " + said(statement));
            }
        }
        return faults;
    }

    /** Only what stands behind an expression can be its value. */
    private String said(Statement statement) {
        if (!statement.comment().isEmpty()) {
            return statement.comment();
        }
        return behind.startsWith("is ") ? behind.substring("is ".length()).replaceFirst("^\\{@code ", "") : "";
    }

    private static boolean agrees(Object value, String said) {
        String text = said.startsWith("\"") ? '"' + value.toString() + '"' : value.toString();
        if (said.isEmpty()) {
            return !value.equals(false);
        }
        return said.startsWith(text) && !said.substring(text.length()).matches("(?s)([\\w/%]|\\.\\w).*");
    }
}
