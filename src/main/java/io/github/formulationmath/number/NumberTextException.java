package io.github.formulationmath.number;

import java.io.Serial;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A text that should be a number (or an amount) and is not; the message quotes the text, says what was expected, and what
 * may be typed instead.
 */
public final class NumberTextException extends IllegalArgumentException implements Refusal {

    private static final int LONGEST_QUOTE = 60;

    @Serial
    private static final long serialVersionUID = 3L;

    private final Sentence said;
    private final String text;
    private final Sentence reason;
    private final List<String> remedies;

    /**
     * Makes the exception.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected
     */
    public NumberTextException(String text, Sentence reason) {
        this("refusal.number-text", "", text, reason, List.of(), null);
    }

    /**
     * Makes the exception with what may be written instead.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected, without the remedies
     * @param remedies whole texts that the same reader takes; the message ends with them
     */
    public NumberTextException(String text, Sentence reason, List<String> remedies) {
        this(
                remedies.isEmpty() ? "refusal.number-text" : "refusal.number-text.write",
                remedies.isEmpty() ? "" : "; write {remedies}",
                text,
                reason,
                remedies,
                null);
    }

    private NumberTextException(
            String key,
            String tail,
            String text,
            Sentence reason,
            List<String> remedies,
            @Nullable NumberTextException cause) {
        this(
                Sentence.of(
                        key,
                        "{text}: {reason}" + tail,
                        "text",
                        quoted(Objects.requireNonNull(text, "text")),
                        "reason",
                        Objects.requireNonNull(reason, "reason").getMessage(),
                        "remedies",
                        listed(remedies)),
                text,
                reason,
                remedies,
                cause);
    }

    private NumberTextException(
            Sentence said, String text, Sentence reason, List<String> remedies, @Nullable NumberTextException cause) {
        super(said.getMessage(), cause);
        this.said = said;
        this.text = text;
        this.reason = reason;
        this.remedies = List.copyOf(remedies);
    }

    /**
     * Makes the exception with examples, for a text that does not show what was meant.
     *
     * @param text the text that could not be read; long texts are shortened in the message
     * @param reason what is wrong with it and what was expected, without the examples
     * @param examples whole texts that the same reader takes; the message ends with them
     * @return the exception
     */
    public static NumberTextException withExamples(String text, Sentence reason, List<String> examples) {
        return new NumberTextException(
                "refusal.number-text.like", "; write it like {remedies}", text, reason, examples, null);
    }

    /**
     * The same exception with what the text is of, where the reader of the text could not know it.
     *
     * @param place what the text is of, for example {@code the amount of Glycerin}; the message begins with it
     * @return the exception, caused by this one, with the same text, reason and remedies
     */
    public NumberTextException at(String place) {
        Sentence placed = Sentence.of(
                "refusal.number-text.of",
                "{of}: {reason}",
                "of",
                Objects.requireNonNull(place, "place"),
                "reason",
                said.getMessage());
        return new NumberTextException(placed, text, reason, remedies, this);
    }

    /**
     * The same exception about a longer text, of which its own was a part.
     *
     * @param whole the longer text
     * @return the exception, caused by this one, with the same reason and no remedies
     */
    public NumberTextException in(String whole) {
        return new NumberTextException("refusal.number-text", "", whole, reason, List.of(), this);
    }

    @Override
    public Sentence said() {
        return said;
    }

    /** What the text is of stands before the whole sentence; else the reason alone is a sentence of its own. */
    @Override
    public Optional<Refusal> because() {
        return Optional.of(
                said.key().equals("refusal.number-text.of") && getCause() instanceof Refusal whole ? whole : reason);
    }

    /**
     * The whole text that could not be read.
     *
     * @return the text as given
     */
    public String text() {
        return text;
    }

    /**
     * What is wrong with the text and what was expected.
     *
     * @return the reason without the text and without the remedies
     */
    public Sentence reason() {
        return reason;
    }

    /**
     * Texts that the same reader takes: what the text may have meant, or examples if it does not show that.
     *
     * @return an unmodifiable list, in the order of the message; empty if nothing can be proposed
     */
    @Override
    public List<String> remedies() {
        return remedies;
    }

    /**
     * The reason why a text is too long to be read.
     *
     * @param most how many characters are read
     * @return the reason
     */
    public static Sentence longerThan(int most) {
        return Sentence.of("refusal.text.too-long", "longer than {most} characters", "most", String.valueOf(most));
    }

    private static String listed(List<String> remedies) {
        int last = remedies.size() - 1;
        return last <= 0
                ? String.join("", remedies)
                : String.join(", ", remedies.subList(0, last)) + " or " + remedies.get(last);
    }

    private static String quoted(String text) {
        return text.length() <= LONGEST_QUOTE
                ? "\"" + text + "\""
                : "\"" + text.substring(0, LONGEST_QUOTE - 3) + "...\" (" + text.length() + " characters)";
    }
}
