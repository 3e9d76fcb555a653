package io.github.formulationmath.soap;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.mend.Condition;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.weighing.WeighingMethod;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A formula of which it is said for each line whether it takes alkali, gives it, or does neither.
 *
 * <p>A line that nothing is said of may be anything (silicate, borax, ash, soap base and zinc oxide all bring alkali), so that no
 * judgement is made until every line is declared; {@link #undeclared()} names those that are not.
 *
 * <p>Immutable and thread-safe.
 */
public final class Soap implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /** What a line is as far as alkali is concerned. */
    public enum Part {
        /** A fat that is in the pot from the start. */
        FAT,
        /** A fat that is added when the rest has reacted. */
        LATE_FAT,
        /** An alkali. */
        ALKALI,
        /** The water that the alkali is dissolved in. */
        LYE_WATER,
        /** A free acid. */
        ACID,
        /** What takes no alkali and gives none. */
        NEITHER
    }

    private final Formula formula;
    private final ArrayList<@Nullable SoapRole> roles;

    /** @param roles what each line is, in the order of the formula; null for what is not said */
    Soap(Formula formula, List<? extends @Nullable SoapRole> roles) {
        this.formula = formula;
        this.roles = new ArrayList<>(roles);
    }

    /**
     * Begins with a formula of which nothing is declared.
     *
     * @param formula the formula, its alkali and its water among the lines
     * @return the soap, to be declared line by line
     */
    public static Soap of(Formula formula) {
        Objects.requireNonNull(formula, "formula");
        return new Soap(formula, Collections.nCopies(formula.lines().size(), null));
    }

    /**
     * Declares a fat that is in the pot from the start.
     *
     * @param line the name of its line
     * @param fat what it is
     * @return the soap with this line declared
     * @throws IllegalArgumentException if there is no such line, or it is declared already
     */
    public Soap fat(String line, Fat fat) {
        return with(line, new SoapRole.Takes(Objects.requireNonNull(fat, "fat"), false));
    }

    /**
     * Declares a fat that is added when the rest has reacted. It stays unsaponified only if the cook alone has no hydroxide
     * left for certain, so that two judgements are made: without it and with it.
     *
     * @param line the name of its line
     * @param fat what it is
     * @return the soap with this line declared
     * @throws IllegalArgumentException if there is no such line, or it is declared already
     */
    public Soap lateFat(String line, Fat fat) {
        return with(line, new SoapRole.Takes(Objects.requireNonNull(fat, "fat"), true));
    }

    /**
     * Declares an alkali.
     *
     * @param line the name of its line
     * @param grade what is weighed
     * @return the soap with this line declared
     * @throws IllegalArgumentException if there is no such line, or it is declared already
     */
    public Soap alkali(String line, AlkaliGrade grade) {
        return with(line, new SoapRole.Gives(Objects.requireNonNull(grade, "grade")));
    }

    /**
     * Declares a free acid.
     *
     * @param line the name of its line
     * @param acid what is weighed
     * @return the soap with this line declared
     * @throws IllegalArgumentException if there is no such line, or it is declared already
     */
    public Soap acid(String line, Acid acid) {
        return with(line, new SoapRole.TakesFirst(Objects.requireNonNull(acid, "acid")));
    }

    /**
     * Declares lines that take no alkali and give none: water, salt, perfume. Milk, sugars and perfume take a little, which is
     * safe to ignore and not to be counted on.
     *
     * @param lines the names of the lines
     * @return the soap with these lines declared
     * @throws IllegalArgumentException if there is no such line, one is declared already, or one is known by its name to bring alkali,
     *     such as Sodium Hydroxide, Potassium Carbonate or Zinc Oxide
     */
    public Soap neither(String... lines) {
        Soap declared = this;
        for (String line : lines) {
            SoapRole.Neither.require(line);
            declared = declared.with(line, SoapRole.Neither.INSTANCE);
        }
        return declared;
    }

    /**
     * Declares the water that the alkali is dissolved in. It takes no alkali and gives none; the sheet of the batch has it weighed
     * first, and {@link SoapComposition#water()} counts it.
     *
     * @param line the name of its line
     * @return the soap with this line declared
     * @throws IllegalArgumentException if there is no such line, it is declared already, or it is known by its name to bring alkali
     */
    public Soap lyeWater(String line) {
        SoapRole.Neither.require(line);
        return with(line, SoapRole.Neither.LYE_WATER);
    }

    private Soap with(String lineName, SoapRole role) {
        FormulaLine line = formula.line(Objects.requireNonNull(lineName, "line"));
        if (roles.get(line.index()) != null) {
            throw new IllegalArgumentException(
                    Excerpt.of(line.name()) + " is declared already: declare each line once");
        }
        List<@Nullable SoapRole> declared = new ArrayList<>(roles);
        declared.set(line.index(), role);
        return new Soap(formula, declared);
    }

    /**
     * The same declarations on another formula with the same lines, such as one of other masses.
     *
     * @param other the formula
     * @return the soap of that formula
     * @throws IllegalArgumentException if its lines have other names
     */
    public Soap withFormula(Formula other) {
        List<String> names = Objects.requireNonNull(other, "other").lines().stream()
                .map(FormulaLine::name)
                .toList();
        List<String> own = formula.lines().stream().map(FormulaLine::name).toList();
        if (!names.equals(own)) {
            throw new IllegalArgumentException("other has the lines " + Excerpt.of(names) + ", declared are "
                    + Excerpt.of(own) + ": declare the lines of that formula with Soap.of(…)");
        }
        return new Soap(other, roles);
    }

    /**
     * The soap as it is cooked: its late fats take nothing.
     *
     * @return the same soap, its late fats declared to be neither; the same if it has none
     */
    public Soap withoutLateFat() {
        List<@Nullable SoapRole> cooked = new ArrayList<>(roles);
        lines(Part.LATE_FAT).forEach(line -> cooked.set(line.index(), SoapRole.Neither.INSTANCE));
        return new Soap(formula, cooked);
    }

    /**
     * The formula.
     *
     * @return the formula whose lines are declared
     */
    public Formula formula() {
        return formula;
    }

    /**
     * The lines of which nothing is said yet.
     *
     * @return their lines in the order of the formula, empty if all are declared
     */
    public List<FormulaLine> undeclared() {
        return roles.contains(null)
                ? formula.lines().stream()
                        .filter(line -> roles.get(line.index()) == null)
                        .toList()
                : List.of();
    }

    /**
     * That at least a shortfall is left of this soap for every lot, as a condition of mending: after a wrong pour of alkali or
     * fat the smallest additions are those that keep it. It speaks of the masses as displayed; what the balance hides, {@link
     * AlkaliBalance} tells of the pot afterwards, so that a shortfall above 0 is asked for to leave it room.
     *
     * @param atLeast the shortfall to be left; 0 % for no hydroxide left
     * @return the condition, to be handed to {@code CorrectionRules.keeping}
     * @throws IllegalArgumentException if a line is undeclared
     */
    public Condition leaving(Unsaponified atLeast) {
        return new ShortfallEnd(this, Objects.requireNonNull(atLeast, "atLeast").shortfall(), true);
    }

    /**
     * That the shortfall lies between two figures for every lot and whatever the balance does, as a criterion of batch sizes: it
     * and every larger batch keep it, whatever the targets round to. A smaller one may too; of one plan {@link AlkaliBalance}
     * tells. Where the ranges of the fats are wider than what is asked, no size keeps it, and the reason is told.
     *
     * @param least the least shortfall
     * @param greatest the greatest shortfall
     * @param method how it is weighed
     * @return the criterion, for the smallest batch and for windows, to be asked about this formula only
     * @throws IllegalArgumentException if a line is undeclared, or the least is above the greatest
     */
    public Criterion shortfallWithin(Unsaponified least, Unsaponified greatest, WeighingMethod method) {
        Objects.requireNonNull(method, "method");
        return new ShortfallWithin(
                end(least, "least", true), end(greatest, "greatest", false), method, Optional.empty());
    }

    /**
     * As {@link #shortfallWithin(Unsaponified, Unsaponified, WeighingMethod)}, with k times the repeatability of the balance taken in;
     * it then holds within that coverage and not for certain.
     *
     * @param least the least shortfall
     * @param greatest the greatest shortfall
     * @param method how it is weighed
     * @param coverage the coverage factor k
     * @return the criterion
     * @throws IllegalArgumentException if a line is undeclared, or the least is above the greatest
     */
    public Criterion shortfallWithin(
            Unsaponified least, Unsaponified greatest, WeighingMethod method, CoverageFactor coverage) {
        Objects.requireNonNull(method, "method");
        Optional<CoverageFactor> factor = Optional.of(Objects.requireNonNull(coverage, "coverage"));
        return new ShortfallWithin(end(least, "least", true), end(greatest, "greatest", false), method, factor);
    }

    private ShortfallEnd end(Unsaponified shortfall, String name, boolean isLeast) {
        return new ShortfallEnd(this, Objects.requireNonNull(shortfall, name).shortfall(), isLeast);
    }

    /** The same with another value of one fat. */
    Soap certified(String lineName, SaponificationValue value) {
        FormulaLine line = formula.line(Objects.requireNonNull(lineName, "line"));
        if (!(roles.get(line.index()) instanceof SoapRole.Takes takes)) {
            throw new IllegalArgumentException(
                    Excerpt.of(line.name()) + " is not declared as a fat: name the line that the certificate is of");
        }
        List<@Nullable SoapRole> declared = new ArrayList<>(roles);
        declared.set(line.index(), new SoapRole.Takes(takes.fat().with(value), takes.late()));
        return new Soap(formula, declared);
    }

    /**
     * The lines of which one thing is declared.
     *
     * @param part what they are
     * @return the lines in the order of the formula, empty if there are none
     */
    public List<FormulaLine> lines(Part part) {
        Objects.requireNonNull(part, "part");
        return formula.lines().stream()
                .filter(line ->
                        role(line.index()).filter(role -> role.part() == part).isPresent())
                .toList();
    }

    /**
     * The fat that a line is declared to be, late or not.
     *
     * @param line the name of the line
     * @return the fat; empty if the line is not declared to be one
     * @throws IllegalArgumentException if there is no such line
     */
    public Optional<Fat> fatOf(String line) {
        return roleOf(line).filter(SoapRole.Takes.class::isInstance).map(role -> ((SoapRole.Takes) role).fat());
    }

    /**
     * The alkali that a line is declared to be.
     *
     * @param line the name of the line
     * @return the grade; empty if the line is not declared to be an alkali
     * @throws IllegalArgumentException if there is no such line
     */
    public Optional<AlkaliGrade> alkaliOf(String line) {
        return roleOf(line).filter(SoapRole.Gives.class::isInstance).map(role -> ((SoapRole.Gives) role).grade());
    }

    /**
     * The acid that a line is declared to be.
     *
     * @param line the name of the line
     * @return the acid; empty if the line is not declared to be one
     * @throws IllegalArgumentException if there is no such line
     */
    public Optional<Acid> acidOf(String line) {
        return roleOf(line)
                .filter(SoapRole.TakesFirst.class::isInstance)
                .map(role -> ((SoapRole.TakesFirst) role).acid());
    }

    private Optional<SoapRole> roleOf(String line) {
        return role(formula.line(Objects.requireNonNull(line, "line")).index());
    }

    /** What a line is, if that is said. */
    Optional<SoapRole> role(int index) {
        return Optional.ofNullable(roles.get(index));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Soap that && formula.equals(that.formula) && roles.equals(that.roles);
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, roles);
    }

    /** The name of the formula and how many of its lines are declared. */
    @Override
    public String toString() {
        return formula.name() + ", " + (roles.size() - undeclared().size()) + " of " + roles.size() + " lines declared";
    }
}
