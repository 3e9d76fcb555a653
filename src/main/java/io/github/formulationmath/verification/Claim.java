package io.github.formulationmath.verification;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.Reader;
import java.io.Serial;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What a calculator was asked and the figures it showed.
 *
 * <pre>{@code
 * Claim claim = Claim.about(lotion, BatchSize.ofMass("400 g"))
 *         .withFigure("Aqua", "320 g").withFigure("Glycerin", "12 g").withFigure("Avena Sativa Kernel Oil", "9.6 g")
 *         .withFigure("Glyceryl Stearate SE", "4 g");
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Claim implements Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Formula formula;
    private final BatchSize size;
    private final @Nullable Balance balance;
    private final Map<Integer, Figure> figures;
    private final @Nullable Figure total;

    private Claim(
            Formula formula,
            BatchSize size,
            @Nullable Balance balance,
            Map<Integer, Figure> figures,
            @Nullable Figure total) {
        this.formula = formula;
        this.size = size;
        this.balance = balance;
        this.figures = figures;
        this.total = total;
    }

    /**
     * A claim without figures yet.
     *
     * @param formula the formula
     * @param size what was to be made
     * @return the claim
     * @throws IllegalArgumentException if the size cannot be had of the formula: a stock of a line that is none of it, or a
     *     volume where an ingredient has no density
     */
    public static Claim about(Formula formula, BatchSize size) {
        Batch right = Batch.of(formula, size);
        return new Claim(right.formula(), size, null, new LinkedHashMap<>(), null);
    }

    /**
     * Reads a claim from comma-separated values, as {@code docs/verifying.md} describes them.
     *
     * @param reader the text
     * @return the claim
     * @throws IOException if the reader fails
     * @throws CsvException if the text is no claim; it names line and column
     */
    public static Claim read(Reader reader) throws IOException {
        return ClaimReader.read(ClaimReader.FORMAT.read("", Objects.requireNonNull(reader, "reader")));
    }

    /**
     * Reads a claim from a file in UTF-8, as {@code docs/verifying.md} describes it.
     *
     * @param file the file
     * @return the claim
     * @throws IOException if the file cannot be read
     * @throws CsvException if the text is no claim, or is not in UTF-8; it names file, line and column
     */
    public static Claim read(Path file) throws IOException {
        return ClaimReader.read(ClaimReader.FORMAT.read(file));
    }

    /**
     * The same claim, made for a balance.
     *
     * @param newBalance the balance whose display the figures are for
     * @return the claim
     */
    public Claim on(Balance newBalance) {
        return new Claim(formula, size, Objects.requireNonNull(newBalance, "newBalance"), figures, total);
    }

    /**
     * The same claim with one more figure.
     *
     * @param line the line of the formula
     * @param figure what was shown for it
     * @return the claim
     * @throws IllegalArgumentException if the line has a figure already or is not of this formula, or if the figure is a
     *     volume and the ingredient has no density
     */
    public Claim withFigure(FormulaLine line, Figure figure) {
        return withFigures(Map.of(Objects.requireNonNull(line, "line"), Objects.requireNonNull(figure, "figure")));
    }

    /**
     * The same claim with more figures: as {@link #withFigure(FormulaLine, Figure)} for each, but the figures are copied
     * only once, so that a long claim is best put together in one call.
     *
     * @param more what was shown, by the line of the formula
     * @return the claim
     * @throws IllegalArgumentException if one of the lines has a figure already or is not of this formula, or if a figure is
     *     a volume and the ingredient has no density
     */
    public Claim withFigures(Map<FormulaLine, Figure> more) {
        Map<Integer, Figure> all = new LinkedHashMap<>(figures);
        Objects.requireNonNull(more, "more").forEach((line, figure) -> {
            formula.indexOf(line);
            requireMeasurable(line, Objects.requireNonNull(figure, "figure"));
            if (all.put(line.position(), figure) != null) {
                throw new IllegalArgumentException(
                        Excerpt.of(line.name()) + " has a figure already: give each line one");
            }
        });
        return new Claim(formula, size, balance, all, total);
    }

    private static void requireMeasurable(FormulaLine line, Figure figure) {
        if (figure.isVolume() && line.ingredient().density().isEmpty()) {
            throw new IllegalArgumentException("the figure of " + Excerpt.of(line.name()) + " is the volume "
                    + Excerpt.of(figure) + ", and the ingredient has no density: give it one with withDensity");
        }
    }

    /**
     * As {@link #withFigure(FormulaLine, Figure)}, by name and text.
     *
     * @param ingredientName the ingredient
     * @param text the figure as written
     * @return the claim
     * @throws IllegalArgumentException as there, and if no single line has that ingredient or the text is no figure
     */
    public Claim withFigure(String ingredientName, String text) {
        return withFigure(formula.line(ingredientName), Figure.parse(text));
    }

    /**
     * The same claim with the total that was shown.
     *
     * @param text the total as written, a mass
     * @return the claim
     * @throws IllegalArgumentException if the text is no mass
     */
    public Claim withTotal(String text) {
        Figure figure = Figure.parse(text);
        if (figure.isVolume()) {
            throw new IllegalArgumentException("total is " + Excerpt.of(text) + ": it must be a mass");
        }
        return new Claim(formula, size, balance, figures, figure);
    }

    /**
     * The formula.
     *
     * @return the formula that the calculator was given
     */
    public Formula formula() {
        return formula;
    }

    /**
     * The size.
     *
     * @return what was to be made
     */
    public BatchSize size() {
        return size;
    }

    /**
     * The balance.
     *
     * @return the balance whose display the figures are for, if it is known
     */
    public Optional<Balance> balance() {
        return Optional.ofNullable(balance);
    }

    /**
     * The figures by the position of their lines.
     *
     * @return an unmodifiable map, in the order in which they were given
     */
    public Map<Integer, Figure> figures() {
        return Collections.unmodifiableMap(figures);
    }

    /**
     * The total shown.
     *
     * @return the figure, if there was one
     */
    public Optional<Figure> total() {
        return Optional.ofNullable(total);
    }

    /** The symbol of the unit in which the size was given as a mass, of a pack or of the whole; none if it was not. */
    Optional<String> massUnit() {
        @Nullable
        Amount<Mass> asked = size instanceof BatchSize.OfMass whole
                ? whole.mass()
                : size instanceof BatchSize.OfPacks packs ? packs.fillMass() : null;
        return Optional.ofNullable(asked).map(mass -> mass.symbol());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Claim that
                && formula.equals(that.formula)
                && size.equals(that.size)
                && Objects.equals(balance, that.balance)
                && figures.equals(that.figures)
                && Objects.equals(total, that.total);
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, size, balance, figures, total);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(formula.name()).append(", ").append(size);
        figures.forEach((position, figure) -> text.append(", ")
                .append(formula.lines().get(position - 1).name())
                .append(' ')
                .append(figure));
        return text + (total == null ? "" : ", total " + total) + (balance == null ? "" : ", on " + balance);
    }
}
