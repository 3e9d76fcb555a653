package io.github.formulationmath.verification;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.verification.LyeFigures.AcidFigure;
import io.github.formulationmath.verification.LyeFigures.AcidRule;
import io.github.formulationmath.verification.LyeFigures.AlkaliFigure;
import io.github.formulationmath.verification.LyeFigures.FatFigure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Mass;

/** The known slips of a lye calculation: each is the right calculation with one number or one rule exchanged. */
public enum LyeSlip {
    /** The figure of one alkali used for the other: mg KOH/g taken as mg NaOH/g, 40 % too much, or the other way round. */
    VALUE_OF_OTHER_ALKALI(figures -> valueTimes(figures, true)),
    /** The value turned from one alkali into the other twice. */
    VALUE_TURNED_TWICE(figures -> valueTimes(figures, false)),
    /** The molar mass of one alkali taken for the other's, acids included. */
    ALKALI_EXCHANGED(LyeSlip::alkaliExchanged),
    /** The purity of the alkali forgotten. */
    PURITY_FORGOTTEN(figures -> purity(figures, any -> Ratio.ONE)),
    /** Divided by the purity twice. */
    PURITY_TWICE(figures -> purity(figures, w -> w.times(w))),
    /** Multiplied by the purity instead of divided by it. */
    PURITY_MULTIPLIED(figures -> purity(figures, Ratio.ONE::dividedBy)),
    /** The assay as total alkali taken for hydroxide, its carbonate counted. */
    CARBONATE_COUNTED(LyeSlip::carbonateCounted),
    /** The unsaponified fat reckoned in the other convention. */
    OTHER_CONVENTION(LyeSlip::otherConvention),
    /** The unsaponified fat forgotten. */
    SHORTFALL_FORGOTTEN(figures -> kept(figures, "", Ratio.ONE)),
    /** The shortfall added to the alkali instead of taken off. */
    SHORTFALL_ADDED(LyeSlip::shortfallAdded),
    /** The shortfall taken off twice. */
    SHORTFALL_TWICE(figures -> kept(figures, "", figures.kept().times(figures.kept()))),
    /** The acid discounted with the fats, which is to be paid in full. */
    ACID_DISCOUNTED(figures -> acidRule(figures, AcidRule.DISCOUNTED)),
    /** What the acid takes subtracted instead of added. */
    ACID_TAKEN_OFF(figures -> acidRule(figures, AcidRule.TAKEN_OFF)),
    /** An acid forgotten. */
    ACID_FORGOTTEN(LyeSlip::acidForgotten),
    /** A hydrate taken for the acid free of water, or the other way round. */
    HYDRATE_CONFUSED(LyeSlip::hydrateConfused),
    /** An acid of several hydroxides taken for one of one. */
    ONE_PROTON(LyeSlip::oneProton),
    /** Another end of the ranges of the fats, or their middle. */
    OTHER_END_OF_RANGES(LyeSlip::otherEnd),
    /** A fat left out. */
    FAT_LEFT_OUT(LyeSlip::fatLeftOut),
    /** The values of two fats exchanged. */
    FATS_EXCHANGED(LyeSlip::fatsExchanged),
    /** One unit of mass taken for another: pounds, ounces, kilograms, grams. */
    UNIT_EXCHANGED(LyeSlip::unitExchanged),
    /** The division of two alkalis by another basis: moles, pure mass, mass as weighed. */
    OTHER_BASIS_OF_DIVISION(LyeSlip::otherBasis),
    /** The water figure read in another convention. */
    WATER_BY_OTHER_CONVENTION(LyeSlip::otherWater),
    /** Water and alkali exchanged in the water figure. */
    WATER_REVERSED(LyeSlip::waterReversed),
    /** The water reckoned on the alkali as weighed instead of the pure hydroxide, or the other way round. */
    WATER_OF_OTHER_ALKALI_MASS(LyeSlip::otherAlkaliMass);

    /** One way in which it can have been made. */
    record Way(String detail, LyeFigures figures) {}

    private static final Map<String, Unit<Mass>> UNITS = Map.of(
            "g", FormulationUnits.GRAM,
            "kg", FormulationUnits.KILOGRAM,
            "oz", FormulationUnits.OUNCE,
            "lb", FormulationUnits.POUND);
    private static final Ratio WATER =
            MolarMass.of(MolecularFormula.parse("H2O")).gramsPerMole();
    private static final String HYDRATE = "·";

    private final Function<LyeFigures, Stream<Way>> ways;

    LyeSlip(Function<LyeFigures, Stream<Way>> ways) {
        this.ways = ways;
    }

    /** The slip in each way it can be made with these figures; none if they offer no place for it. */
    Stream<Way> ways(LyeFigures figures) {
        return ways.apply(figures);
    }

    /** The key of its name in the wording. */
    String key() {
        return "lye-slip." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** KOH for NaOH, exact and as common tables have it (40 and 56.1, 56.11, 56; to three and four places). */
    private static Stream<Ratio> potassiumPerSodium() {
        Ratio exact = LyeFigures.molarMass(Alkali.POTASSIUM_HYDROXIDE)
                .dividedBy(LyeFigures.molarMass(Alkali.SODIUM_HYDROXIDE));
        return Stream.of(
                exact,
                Ratio.of(561, 400),
                Ratio.of(5611, 4000),
                Ratio.of(7, 5),
                Ratio.of(1403, 1000),
                Ratio.of(1000, 713),
                Ratio.of(10000, 7129));
    }

    private static boolean uses(LyeFigures figures, Alkali alkali) {
        return figures.alkalis().stream().anyMatch(each -> each.alkali() == alkali);
    }

    /** Sodium hydroxide by the number for potassium hydroxide is too much; turned once more, too little. */
    private static Stream<Way> valueTimes(LyeFigures figures, boolean notTurned) {
        Stream<Way> sodium = uses(figures, Alkali.SODIUM_HYDROXIDE)
                ? potassiumPerSodium()
                        .map(factor -> notTurned ? factor : Ratio.ONE.dividedBy(factor))
                        .map(factor -> valued(figures, "NaOH", factor))
                : Stream.empty();
        Stream<Way> potassium = uses(figures, Alkali.POTASSIUM_HYDROXIDE)
                ? potassiumPerSodium()
                        .map(factor -> notTurned ? Ratio.ONE.dividedBy(factor) : factor)
                        .map(factor -> valued(figures, "KOH", factor))
                : Stream.empty();
        return Stream.concat(sodium, potassium);
    }

    private static Way valued(LyeFigures figures, String detail, Ratio factor) {
        return new Way(detail, figures.withFats(fat -> fat.valued(fat.value().times(factor))));
    }

    private static Stream<Way> alkaliExchanged(LyeFigures figures) {
        return eachOrAll(
                figures.alkalis(),
                AlkaliFigure::name,
                one -> new AlkaliFigure(
                        one.name(),
                        one.alkali(),
                        LyeFigures.molarMass(other(one.alkali())),
                        one.purity(),
                        one.carbonate(),
                        one.isStockLye()),
                figures::withAlkalis);
    }

    private static Alkali other(Alkali alkali) {
        return alkali == Alkali.SODIUM_HYDROXIDE ? Alkali.POTASSIUM_HYDROXIDE : Alkali.SODIUM_HYDROXIDE;
    }

    private static Stream<Way> purity(LyeFigures figures, UnaryOperator<Ratio> change) {
        return eachOrAll(
                figures.alkalis(),
                AlkaliFigure::name,
                one -> divided(one, change.apply(one.purity())),
                figures::withAlkalis);
    }

    private static AlkaliFigure divided(AlkaliFigure one, Ratio by) {
        return new AlkaliFigure(one.name(), one.alkali(), one.molarMass(), by, one.carbonate(), one.isStockLye());
    }

    private static Stream<Way> carbonateCounted(LyeFigures figures) {
        boolean has =
                figures.alkalis().stream().anyMatch(one -> !one.carbonate().isZero());
        return has
                ? Stream.of(new Way(
                        "",
                        figures.withAlkalis(one ->
                                divided(one, one.purity().plus(one.carbonate()).min(Ratio.ONE)))))
                : Stream.empty();
    }

    private static Stream<Way> kept(LyeFigures figures, String detail, Ratio kept) {
        return Stream.of(new Way(detail, figures.keeping(kept)));
    }

    private static Stream<Way> otherConvention(LyeFigures figures) {
        Ratio left = Ratio.ONE.minus(figures.stated());
        Ratio over = Ratio.ONE.dividedBy(Ratio.ONE.plus(figures.stated()));
        return Stream.of(left, over).flatMap(kept -> kept(figures, "", kept));
    }

    private static Stream<Way> shortfallAdded(LyeFigures figures) {
        return Stream.of(
                        Ratio.ONE.plus(figures.stated()),
                        Ratio.of(2).minus(figures.kept()),
                        Ratio.ONE.dividedBy(figures.kept()))
                .flatMap(kept -> kept(figures, "", kept));
    }

    private static Stream<Way> acidRule(LyeFigures figures, AcidRule rule) {
        return figures.acids().isEmpty() ? Stream.empty() : Stream.of(new Way("", figures.withRule(rule)));
    }

    private static Stream<Way> acidForgotten(LyeFigures figures) {
        return each(figures.acids(), AcidFigure::name, acid -> Stream.empty(), figures::withAcids);
    }

    private static Stream<Way> hydrateConfused(LyeFigures figures) {
        return each(figures.acids(), AcidFigure::name, acid -> Stream.of(hydrateConfused(acid)), figures::withAcids);
    }

    private static AcidFigure hydrateConfused(AcidFigure acid) {
        int water = acid.formula().indexOf(HYDRATE);
        Ratio molarMass = water >= 0
                ? MolarMass.of(MolecularFormula.parse(acid.formula().substring(0, water)))
                        .gramsPerMole()
                : acid.molarMass().plus(WATER);
        return new AcidFigure(acid.name(), acid.formula(), acid.grams(), acid.share(), acid.protons(), molarMass);
    }

    private static Stream<Way> oneProton(LyeFigures figures) {
        return each(figures.acids(), AcidFigure::name, acid -> Stream.of(oneProton(acid)), figures::withAcids)
                .filter(way -> !way.figures().equals(figures));
    }

    private static AcidFigure oneProton(AcidFigure acid) {
        return new AcidFigure(acid.name(), acid.formula(), acid.grams(), acid.share(), Ratio.ONE, acid.molarMass());
    }

    private static Stream<Way> otherEnd(LyeFigures figures) {
        return Stream.of(
                new Way("least", figures.withFats(fat -> fat.valued(fat.least()))),
                new Way(
                        "middle",
                        figures.withFats(
                                fat -> fat.valued(fat.least().plus(fat.most()).dividedBy(2)))),
                new Way("greatest", figures.withFats(fat -> fat.valued(fat.most()))));
    }

    private static Stream<Way> fatLeftOut(LyeFigures figures) {
        return figures.fats().size() < 2
                ? Stream.empty()
                : each(figures.fats(), FatFigure::name, fat -> Stream.empty(), figures::withFats);
    }

    private static Stream<Way> fatsExchanged(LyeFigures figures) {
        List<FatFigure> fats = figures.fats();
        List<Way> all = new ArrayList<>();
        for (int i = 0; i < fats.size(); i++) {
            for (int j = i + 1; j < fats.size(); j++) {
                FatFigure one = fats.get(i);
                FatFigure two = fats.get(j);
                List<FatFigure> changed = new ArrayList<>(fats);
                changed.set(i, one.valued(two.value()));
                changed.set(j, two.valued(one.value()));
                all.add(new Way(one.name() + " · " + two.name(), figures.withFats(changed)));
            }
        }
        return all.stream();
    }

    private static Stream<Way> unitExchanged(LyeFigures figures) {
        return UNITS.keySet().stream()
                .sorted()
                .flatMap(from -> UNITS.keySet().stream()
                        .sorted()
                        .filter(to -> !to.equals(from))
                        .map(to -> new Way(
                                from + " → " + to, figures.times(grams(to).dividedBy(grams(from))))));
    }

    private static Ratio grams(String unit) {
        Unit<Mass> found = UNITS.get(unit);
        if (found == null) {
            throw new IllegalStateException(unit);
        }
        return FormulationUnits.factorOf(found);
    }

    private static Stream<Way> otherBasis(LyeFigures figures) {
        return figures.division().stream()
                .flatMap(known -> Arrays.stream(AlkaliMixture.Basis.values())
                        .filter(basis -> basis != known.basis())
                        .map(basis -> new Way(
                                basis.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                figures.withDivision(new AlkaliMixture(known.sodium(), basis)))));
    }

    private static Stream<Way> otherWater(LyeFigures figures) {
        Ratio number = figures.water().number();
        LyeWater.Of alkali = figures.water().alkali();
        return Arrays.stream(LyeWater.Convention.values())
                .filter(convention -> convention != figures.water().convention())
                .filter(convention ->
                        convention != LyeWater.Convention.CONCENTRATION || number.compareTo(Ratio.ONE) < 0)
                .flatMap(convention -> Stream.of(alkali, other(alkali))
                        .map(of -> new Way(
                                convention.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                                figures.withWater(convention, number, of))));
    }

    private static Stream<Way> waterReversed(LyeFigures figures) {
        Ratio number = figures.water().number();
        return switch (figures.water().convention()) {
            case CONCENTRATION -> water(figures, Ratio.ONE.minus(number));
            case PER_ALKALI -> water(figures, Ratio.ONE.dividedBy(number));
            case OF_FATS -> Stream.empty();
        };
    }

    private static Stream<Way> water(LyeFigures figures, Ratio number) {
        return Stream.of(new Way(
                "",
                figures.withWater(
                        figures.water().convention(), number, figures.water().alkali())));
    }

    private static Stream<Way> otherAlkaliMass(LyeFigures figures) {
        return figures.water().convention() == LyeWater.Convention.OF_FATS
                ? Stream.empty()
                : Stream.of(new Way(
                        "",
                        figures.withWater(
                                figures.water().convention(),
                                figures.water().number(),
                                other(figures.water().alkali()))));
    }

    private static LyeWater.Of other(LyeWater.Of of) {
        return of == LyeWater.Of.PURE_HYDROXIDE ? LyeWater.Of.ALKALI_AS_WEIGHED : LyeWater.Of.PURE_HYDROXIDE;
    }

    /** One item at a time, and all of them, put otherwise. */
    private static <T> Stream<Way> eachOrAll(
            List<T> items, Function<T, String> name, UnaryOperator<T> change, Function<List<T>, LyeFigures> figures) {
        Way all = new Way("", figures.apply(items.stream().map(change).toList()));
        return items.size() < 2
                ? Stream.of(all)
                : Stream.concat(each(items, name, item -> Stream.of(change.apply(item)), figures), Stream.of(all));
    }

    /** One item at a time, with what stands there instead; with nothing, it is left out. */
    private static <T> Stream<Way> each(
            List<T> items,
            Function<T, String> name,
            Function<T, Stream<T>> instead,
            Function<List<T>, LyeFigures> figures) {
        return items.stream()
                .map(item -> new Way(
                        name.apply(item),
                        figures.apply(items.stream()
                                .flatMap(other -> other == item ? instead.apply(other) : Stream.of(other))
                                .toList())));
    }
}
