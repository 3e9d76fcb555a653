package io.github.formulationmath.soap;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The alkali and the water for given fats.
 *
 * <p>With masses m, saponification values S and the molar mass M of potassium hydroxide the fats can take {@code n₀ = Σ m · S /
 * M} moles of hydroxide. They get {@code n = (1 − d) · n₀}, with d the alkali shortfall, and the acids get theirs on top and in
 * full: {@code n + Σ z · m/M(acid)}. Of an alkali with the share w of hydroxide that is {@code n · M(alkali) / w} grams.
 *
 * <p>Example, by hand: 1000 g of a fat of 190 mg KOH/g can take 190/56.10564 = 3.38647 mol; at 5 % shortfall 3.21715 mol are
 * 128.677 g of pure NaOH.
 *
 * <p>An amount reckoned with the middles of the ranges is nobody's guarantee. What a lot may really leave over, {@link
 * AlkaliBalance} tells.
 *
 * <p>Source: the definition of the saponification value, ISO 3657:2023; the relations are stoichiometry.
 */
public final class LyeCalculation {

    private static final Rounding NEAREST = Rounding.toDecimalPlaces(0);

    private static final Symbol FAT = Symbol.of("m", "fat-mass", Kind.MASS);
    private static final Symbol VALUE = Symbol.of("S", "saponification-value", Kind.ALKALI_NUMBER);
    private static final Symbol ACID = Symbol.of("c", "acid-mass", Kind.MASS);
    private static final Symbol ACID_SHARE = Symbol.of("q", "acid-assay", Kind.SHARE);
    private static final Symbol PROTONS = Symbol.of("z", "protons", Kind.NUMBER);
    private static final Symbol OF_FAT = Symbol.of("n", "demand-of-fat", Kind.SUBSTANCE);
    private static final Symbol OF_ACID = Symbol.of("a", "demand-of-acid", Kind.SUBSTANCE);
    private static final Symbol FATS = Symbol.of("n_0", "demand-of-fats", Kind.SUBSTANCE);
    private static final Symbol SHORTFALL = Symbol.of("d", "alkali-shortfall", Kind.SHARE);
    private static final Symbol SHARE_OF_MOLES = Symbol.of("x", "share-of-moles", Kind.SHARE);
    private static final Symbol HYDROXIDE = Symbol.of("N", "hydroxide-wanted", Kind.SUBSTANCE);
    private static final Symbol PURITY = Symbol.of("w", "hydroxide-share", Kind.SHARE);
    private static final Symbol ALKALI = Symbol.of("A", "alkali-mass", Kind.MASS);

    private final String name;
    private final List<Portion<Fat>> fats;
    private final List<Portion<Acid>> acids;
    private final List<Portion<Ingredient>> others;
    private final List<Portion<AlkaliGrade>> alkalis;
    private final Unsaponified goal;
    private final Reckoned reckoned;
    private final @Nullable AlkaliMixture mixture;
    private final LyeWater waterFigure;
    private final Amount<Mass> water;
    private final String waterName;

    /**
     * So much of something.
     *
     * @param what what it is
     * @param mass how much
     * @param <T> the kind of thing
     */
    public record Portion<T>(T what, Amount<Mass> mass) {

        /**
         * Checks presence.
         *
         * @param what what it is
         * @param mass how much
         */
        public Portion {
            Objects.requireNonNull(what, "what");
            Objects.requireNonNull(mass, "mass");
        }

        /** What it is and how much of it. */
        @Override
        public String toString() {
            return what + ": " + mass.told();
        }
    }

    LyeCalculation(
            String name,
            List<Portion<Fat>> fats,
            List<Portion<Acid>> acids,
            List<Portion<Ingredient>> others,
            List<AlkaliGrade> grades,
            @Nullable AlkaliMixture mixture,
            Unsaponified goal,
            Reckoned reckoned,
            LyeWater waterFigure,
            String waterName) {
        this.name = name;
        this.fats = List.copyOf(fats);
        this.acids = List.copyOf(acids);
        this.others = List.copyOf(others);
        this.goal = goal;
        this.reckoned = reckoned;
        this.mixture = mixture;
        this.waterFigure = waterFigure;
        this.waterName = waterName;
        requireDemand();
        List<Portion<AlkaliGrade>> portions = new ArrayList<>();
        Ratio pure = Ratio.ZERO;
        Ratio weighed = Ratio.ZERO;
        Ratio inStock = Ratio.ZERO;
        for (AlkaliGrade grade : grades) {
            AlkaliShare share = new AlkaliShare(this, grade, shareOfMoles(grade, grades, mixture));
            Amount<Mass> mass = share.mass();
            portions.add(new Portion<>(grade, mass));
            pure = pure.plus(mass.canonical().times(strength(grade)));
            weighed = weighed.plus(mass.canonical());
            if (grade.form() == AlkaliGrade.Form.SOLUTION) {
                inStock = inStock.plus(mass.canonical().times(Ratio.ONE.minus(strength(grade))));
            }
        }
        this.alkalis = List.copyOf(portions);
        this.water = Amount.grams(waterFigure.water(sum(fats), pure, weighed, inStock))
                .inUnitOf(unit());
    }

    /**
     * Begins a calculation.
     *
     * @param name the name of the soap
     * @return a builder
     */
    public static LyeBuilder named(String name) {
        return new LyeBuilder(name);
    }

    private void requireDemand() {
        for (Portion<Fat> p : fats) {
            if (!value(p.what()).isZero()) {
                return;
            }
        }
        throw new IllegalArgumentException("fats are "
                + Excerpt.ofAll(fats.stream().map(p -> p.what().name()).toList())
                + ": none is sure to take up any alkali, so that none is to be weighed; for a wax give its acid value,"
                + " or state that its esters react with whoseEstersReact()");
    }

    private Ratio shareOfMoles(AlkaliGrade grade, List<AlkaliGrade> grades, @Nullable AlkaliMixture mixture) {
        if (mixture == null) {
            return Ratio.ONE;
        }
        Ratio sodium = mixture.moleShareOfSodium(strength(grades.get(0)), strength(grades.get(1)));
        return grade.alkali() == Alkali.SODIUM_HYDROXIDE ? sodium : Ratio.ONE.minus(sodium);
    }

    private static Ratio sum(List<? extends Portion<?>> portions) {
        Ratio sum = Ratio.ZERO;
        for (Portion<?> p : portions) {
            sum = sum.plus(p.mass().canonical());
        }
        return sum;
    }

    /** The share of hydroxide that is reckoned with. */
    private Ratio strength(AlkaliGrade grade) {
        Ratio high = grade.hydroxide().greatest().fraction();
        return reckoned == Reckoned.FOR_EVERY_LOT
                ? high
                : high.plus(grade.hydroxide().least().fraction()).dividedBy(2);
    }

    private Ratio value(Fat fat) {
        return reckoned == Reckoned.FOR_EVERY_LOT ? fat.leastTaken() : fat.middleTaken();
    }

    private Ratio assay(Acid acid) {
        Ratio low = acid.assay().least().fraction();
        return reckoned == Reckoned.FOR_EVERY_LOT
                ? low
                : low.plus(acid.assay().greatest().fraction()).dividedBy(2);
    }

    /** One alkali's share of the hydroxide that is wanted. */
    private record AlkaliShare(LyeCalculation of, AlkaliGrade grade, Ratio ofMoles) {

        Amount<Mass> mass() {
            return Amount.grams(in(Reckoning.plain()))
                    .withWorking(AlkaliShare::question, this, AlkaliShare::in)
                    .inUnitOf(of.unit());
        }

        Phrase question() {
            return Phrase.of("question.alkali-mass", grade.alkali().inciName());
        }

        <V> V in(Reckoning<V> r) {
            Subject subject =
                    Subject.of(grade.alkali().toString(), grade.alkali().inciName());
            V wanted = of.hydroxide(r);
            V moles = ofMoles.equals(Ratio.ONE)
                    ? wanted
                    : r.product(r.given(SHARE_OF_MOLES, subject, ofMoles, Source.user()), wanted);
            V purity = r.given(PURITY, subject, of.strength(grade), grade.source());
            return r.named(
                    ALKALI,
                    subject,
                    r.quotient(r.product(moles, r.known(grade.alkali().known())), purity));
        }
    }

    /** Moles of hydroxide wanted: what the fats are to get, and what the acids take. */
    private <V> V hydroxide(Reckoning<V> r) {
        List<V> ofFats = new ArrayList<>();
        for (int i = 0; i < fats.size(); i++) {
            ofFats.add(demand(r, i));
        }
        V all = r.named(FATS, r.sum(ofFats));
        V short1 = r.product(
                r.difference(r.literal(1), r.given(SHORTFALL, goal.shortfall().fraction(), Source.user())), all);
        List<V> terms = new ArrayList<>(List.of(short1));
        for (int i = 0; i < acids.size(); i++) {
            terms.add(acidDemand(r, i));
        }
        return r.named(HYDROXIDE, terms.size() == 1 ? short1 : r.sum(terms));
    }

    private <V> V demand(Reckoning<V> r, int i) {
        Fat fat = fats.get(i).what();
        Subject subject = Subject.of(String.valueOf(i + 1), fat.name());
        V mass = r.given(FAT, subject, fats.get(i).mass(), Source.user());
        V value = r.given(VALUE, subject, value(fat), fat.saponification().source());
        return r.named(
                OF_FAT, subject, r.quotient(r.product(mass, value), r.known(Alkali.POTASSIUM_HYDROXIDE.known())));
    }

    private <V> V acidDemand(Reckoning<V> r, int i) {
        Acid acid = acids.get(i).what();
        Subject subject = Subject.of(String.valueOf(i + 1), acid.name());
        V mass = r.given(ACID, subject, acids.get(i).mass(), Source.user());
        V share = r.given(ACID_SHARE, subject, assay(acid), Source.user());
        V protons = r.given(PROTONS, subject, Ratio.of(acid.protons()), Source.user());
        V pure = r.product(mass, share);
        return r.named(OF_ACID, subject, r.quotient(r.product(protons, pure), r.known(acid.molarMass())));
    }

    /**
     * The alkali to weigh, each with its working.
     *
     * @return one portion for each alkali, sodium hydroxide first
     */
    public List<Portion<AlkaliGrade>> alkalis() {
        return alkalis;
    }

    /**
     * The alkali to weigh, if there is one.
     *
     * @return its mass as weighed, with its working
     * @throws IllegalStateException if there are two
     */
    public Amount<Mass> alkali() {
        if (alkalis.size() > 1) {
            throw new IllegalStateException("there are two alkalis: ask for alkalis()");
        }
        return alkalis.get(0).mass();
    }

    /**
     * The water to add; what comes with the alkali or with other ingredients is not in it. Of a stock lye see {@link LyeWater}.
     *
     * @return the mass of the water
     */
    public Amount<Mass> water() {
        return water;
    }

    /**
     * All of it together.
     *
     * @return the mass of fats, acids, alkali, water and the rest
     */
    public Amount<Mass> mass() {
        return Amount.grams(sum(fats)
                        .plus(sum(acids))
                        .plus(sum(others))
                        .plus(sum(alkalis))
                        .plus(water.canonical()))
                .inUnitOf(unit());
    }

    /** An amount in the unit that the fats are written in: that of the first. */
    private Amount<Mass> unit() {
        return fats.get(0).mass();
    }

    /**
     * What the soap is called.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * What was aimed at.
     *
     * @return the goal in its convention
     */
    public Unsaponified goal() {
        return goal;
    }

    /**
     * The fats.
     *
     * @return an unmodifiable list in the order given
     */
    public List<Portion<Fat>> fats() {
        return fats;
    }

    /**
     * The free acids.
     *
     * @return an unmodifiable list in the order given
     */
    public List<Portion<Acid>> acids() {
        return acids;
    }

    /**
     * What takes no alkali and gives none, the water of the lye apart.
     *
     * @return an unmodifiable list in the order given
     */
    public List<Portion<Ingredient>> others() {
        return others;
    }

    /**
     * How the alkali is divided.
     *
     * @return the division; empty if there is one alkali only
     */
    public Optional<AlkaliMixture> division() {
        return Optional.ofNullable(mixture);
    }

    /**
     * Which ends of the ranges it is reckoned with.
     *
     * @return the ends
     */
    public Reckoned reckoned() {
        return reckoned;
    }

    /**
     * How the water is figured.
     *
     * @return the figure in its convention
     */
    public LyeWater waterFigure() {
        return waterFigure;
    }

    /**
     * What the water is called in the formula.
     *
     * @return the name
     */
    public String waterName() {
        return waterName;
    }

    /** The masses on a balance, as {@link #expectedOn} has them, without a formula and its plan. */
    MadeMasses weighed(Balance balance, WeighingMethod method) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(method, "method");
        Weighings weighings = new Weighings(balance, method);
        fats.forEach(p -> weighings.add(p.what().name(), p.mass(), true));
        alkalis.forEach(p -> weighings.add(p.what().alkali().inciName(), p.mass(), true));
        weighings.add(waterName, water, true);
        acids.forEach(p -> weighings.add(p.what().name(), p.mass(), true));
        others.forEach(p -> weighings.add(p.what().name(), p.mass(), false));
        // What cannot be weighed is refused by the plan, with its reason.
        return weighings.areFine()
                ? weighings.masses()
                : expectedOn(balance, method).masses();
    }

    /** What each line is, in the order of the formula. */
    List<SoapRole> roles() {
        List<SoapRole> roles = new ArrayList<>();
        fats.forEach(p -> roles.add(new SoapRole.Takes(p.what(), false)));
        alkalis.forEach(p -> roles.add(new SoapRole.Gives(p.what())));
        if (!water.isZero()) {
            roles.add(SoapRole.Neither.LYE_WATER);
        }
        acids.forEach(p -> roles.add(new SoapRole.TakesFirst(p.what())));
        others.forEach(p -> roles.add(SoapRole.Neither.INSTANCE));
        return roles;
    }

    /** Weighings on one balance, one after the other. */
    private static final class Weighings {

        private final Balance balance;
        private final WeighingMethod method;
        private final List<Addition> additions = new ArrayList<>();
        private Ratio shown = Ratio.ZERO;
        private Ratio wanted = Ratio.ZERO;
        private boolean isAllShown = true;

        Weighings(Balance balance, WeighingMethod method) {
            this.balance = balance;
            this.method = method;
        }

        void add(String name, Amount<Mass> mass, boolean needed) {
            Amount<Mass> reading = balance.readability().times(NEAREST.apply(balance.divisions(mass)));
            Subject subject = Subject.of(String.valueOf(additions.size() + 1), name);
            additions.add(Addition.of(subject, mass, reading, balance).by(method));
            shown = shown.plus(reading.canonical());
            wanted = wanted.plus(mass.canonical());
            isAllShown = isAllShown && (!needed || !reading.isZero());
        }

        boolean areFine() {
            return isAllShown && balance.carries(Amount.grams(shown.max(wanted)));
        }

        MadeMasses masses() {
            return MadeMasses.of(additions);
        }
    }

    /**
     * All of it as a formula, which batches, plans and sheets take like any other: fats, acids, alkali, water, the rest.
     *
     * @return the formula in grams
     */
    public Formula formula() {
        FormulaBuilder builder = Formula.inMasses(name).phase("fats");
        fats.forEach(p -> builder.line(Ingredient.of(p.what().name()), p.mass()));
        builder.phase("lye");
        alkalis.forEach(p -> builder.line(Ingredient.of(p.what().alkali().inciName()), p.mass()));
        if (!water.isZero()) {
            builder.line(Ingredient.of(waterName), water);
        }
        if (!acids.isEmpty() || !others.isEmpty()) {
            builder.phase("additions");
        }
        acids.forEach(p -> builder.line(Ingredient.of(p.what().name()), p.mass()));
        others.forEach(p -> builder.line(p.what(), p.mass()));
        return builder.build();
    }

    /**
     * The formula with everything declared, ready to be judged.
     *
     * @return the soap
     */
    public Soap soap() {
        return new Soap(formula(), roles());
    }

    /**
     * The soap as it is going to be weighed: what the display has to read of each line, and between which ends the errors of the balance
     * leave it.
     *
     * <p>Example, by hand: 1000 g of an oil of at least 184 mg KOH/g, 5 % short, take 125.872 g of flakes of at most 99 %, so that
     * {@code lye.expectedOn(balance, WeighingMethod.TARE_EACH).plan().line("Sodium Hydroxide").reading()} is 125.9 g. The sheet for
     * the bench takes the same.
     *
     * @param balance the balance for every line
     * @param method how it is weighed
     * @return the plan and the errors of its weighings
     * @throws IllegalArgumentException if the balance does not carry the batch, or a fat, an acid or the alkali is so little that the
     *     display shows nothing
     */
    public ExpectedProduct expectedOn(Balance balance, WeighingMethod method) {
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(method, "method");
        Formula formula = formula();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(mass())), balance);
        requireShown(plan);
        return ExpectedProduct.of(plan, method);
    }

    private void requireShown(WeighingPlan plan) {
        int reacting = fats.size() + alkalis.size() + 1 + acids.size();
        for (PlannedLine planned : plan.lines().subList(0, reacting)) {
            if (planned.reading().isZero()) {
                throw new IllegalArgumentException("mass of "
                        + Excerpt.of(planned.line().name()) + " is "
                        + planned.target()
                                .mass()
                                .inUnitOf(plan.bench().balance().readability())
                                .told() + ": a display in steps of "
                        + plan.bench().balance().readability()
                        + " shows nothing of it; make more, or take a finer balance");
            }
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LyeCalculation that
                && name.equals(that.name)
                && fats.equals(that.fats)
                && acids.equals(that.acids)
                && others.equals(that.others)
                && alkalis.equals(that.alkalis)
                && Objects.equals(mixture, that.mixture)
                && goal.equals(that.goal)
                && reckoned == that.reckoned
                && waterFigure.equals(that.waterFigure)
                && waterName.equals(that.waterName);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, fats, acids, others, alkalis, goal, reckoned, waterFigure, waterName);
    }

    /** What to weigh of alkali and of water, shortened for reading. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(name).append(':');
        for (Portion<AlkaliGrade> p : alkalis) {
            text.append(' ').append(p.what().alkali().inciName()).append(' ');
            text.append(p.mass().told()).append(',');
        }
        return text.append(' ')
                .append(waterName)
                .append(' ')
                .append(water.told())
                .toString();
    }
}
