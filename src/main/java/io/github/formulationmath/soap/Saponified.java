package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A soap when all has reacted, by the middles of all ranges and the fats alike; for one kilogram, so that nothing is lost. */
final class Saponified {

    private static final Ratio WHOLE = Ratio.of(1000);
    private static final Ratio GLYCEROL =
            MolarMass.of(MolecularFormula.parse("C3H8O3")).gramsPerMole();

    private final Soap soap;
    private final SaltNames names;
    private final Map<Alkali, Ratio> moles = new EnumMap<>(Alkali.class);
    private final Ratio shareReacted;
    private Ratio glycerol = Ratio.ZERO;
    private Ratio water = Ratio.ZERO;

    Saponified(Soap soap, SaltNames names) {
        this.soap = soap;
        this.names = names;
        requireKnown();
        for (FormulaLine line : soap.lines(Soap.Part.ALKALI)) {
            addAlkali(line, soap.alkaliOf(line.name()).orElseThrow());
        }
        for (FormulaLine line : soap.lines(Soap.Part.LYE_WATER)) {
            water = water.plus(mass(line));
        }
        this.shareReacted = shareReacted();
    }

    private List<FormulaLine> fats() {
        List<FormulaLine> all = new ArrayList<>(soap.lines(Soap.Part.FAT));
        all.addAll(soap.lines(Soap.Part.LATE_FAT));
        return all;
    }

    private Fat fat(FormulaLine line) {
        return soap.fatOf(line.name()).orElseThrow();
    }

    private boolean reacts(FormulaLine line) {
        return fat(line).nature() != Fat.Nature.WAX;
    }

    private void requireKnown() {
        if (!soap.undeclared().isEmpty()) {
            throw new IllegalArgumentException("not declared are " + Excerpt.of(soap.undeclared())
                    + ": say of each line whether it takes alkali, gives it or does neither");
        }
        List<String> unnamed = new ArrayList<>();
        for (FormulaLine line : fats()) {
            if (fat(line).nature() == Fat.Nature.WAX_THAT_REACTS) {
                throw new IllegalArgumentException(Excerpt.of(line.name())
                        + " is a wax whose esters react: what it becomes is not worked out here; declare it as a wax,"
                        + " or write the list by hand");
            }
            if (reacts(line) && names.of(line.name()).isEmpty()) {
                unnamed.add(line.name());
            }
        }
        for (FormulaLine line : soap.lines(Soap.Part.ACID)) {
            if (names.of(line.name()).isEmpty()) {
                unnamed.add(line.name());
            }
        }
        if (!unnamed.isEmpty()) {
            throw new IllegalArgumentException("names has no salt of " + Excerpt.of(unnamed)
                    + ": look it up where the product is sold and say it with naming(\"…\", \"…ate\")");
        }
    }

    private static Ratio mass(FormulaLine line) {
        return line.fraction().times(WHOLE);
    }

    private static Ratio middle(Interval<MassFraction> range) {
        return range.least().fraction().plus(range.greatest().fraction()).dividedBy(2);
    }

    private void addAlkali(FormulaLine line, AlkaliGrade grade) {
        Ratio pure = mass(line).times(middle(grade.hydroxide()));
        moles.merge(grade.alkali(), pure.dividedBy(grade.alkali().gramsPerMole()), Ratio::plus);
        Ratio rest = Ratio.ONE.minus(middle(grade.hydroxide())).minus(middle(grade.carbonate()));
        water = water.plus(mass(line).times(rest.max(Ratio.ZERO)));
    }

    private Ratio acidMoles(FormulaLine line) {
        Acid acid = soap.acidOf(line.name()).orElseThrow();
        return mass(line).times(acid.leastDemand().plus(acid.greatestDemand())).dividedBy(2);
    }

    private Ratio allMoles() {
        return moles.values().stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    private Ratio shareReacted() {
        Ratio demand = Ratio.ZERO;
        for (FormulaLine line : fats()) {
            if (reacts(line)) {
                demand = demand.plus(mass(line).times(fat(line).middleDemand()));
            }
        }
        Ratio left = allMoles();
        for (FormulaLine line : soap.lines(Soap.Part.ACID)) {
            left = left.minus(acidMoles(line));
        }
        if (left.signum() < 0 || left.compareTo(demand) > 0) {
            throw new IllegalArgumentException("for the middles of all ranges the alkali is "
                    + (left.signum() < 0 ? "less than the acids take" : "more than the fats can take")
                    + ": there is no soap to list; judge it with AlkaliBalance.of(…) and mend it first");
        }
        return demand.isZero() ? Ratio.ZERO : left.dividedBy(demand);
    }

    private record Item(Ingredient what, Ratio grams) {}

    Formula formula() {
        Map<String, List<Item>> phases = new LinkedHashMap<>();
        List<Item> salts = phases.computeIfAbsent("salts", phase -> new ArrayList<>());
        fats().stream().filter(this::reacts).forEach(line -> addSalts(salts, line));
        List<Item> acids = phases.computeIfAbsent("acids", phase -> new ArrayList<>());
        soap.lines(Soap.Part.ACID).forEach(line -> addAcid(acids, line));
        phases.put("left", fats().stream().map(this::left).toList());
        phases.put("free", List.of(new Item(Ingredient.of("Glycerin"), glycerol), new Item(waterName(), water)));
        phases.put(
                "others",
                soap.lines(Soap.Part.NEITHER).stream()
                        .map(line -> new Item(line.ingredient(), mass(line)))
                        .toList());
        FormulaBuilder builder = Formula.inMasses(soap.formula().name());
        phases.forEach((name, items) -> write(builder, name, items));
        return builder.build();
    }

    private static void write(FormulaBuilder builder, String phase, List<Item> items) {
        List<Item> there =
                items.stream().filter(item -> item.grams().signum() > 0).toList();
        if (!there.isEmpty()) {
            builder.phase(phase);
            there.forEach(item -> builder.line(item.what(), Amount.grams(item.grams())));
        }
    }

    private Item left(FormulaLine line) {
        Ratio share = reacts(line) ? Ratio.ONE.minus(shareReacted) : Ratio.ONE;
        return new Item(line.ingredient(), mass(line).times(share));
    }

    private Ingredient waterName() {
        return soap.lines(Soap.Part.LYE_WATER).stream()
                .map(FormulaLine::ingredient)
                .findFirst()
                .orElseGet(() -> Ingredient.of("Aqua"));
    }

    /** The free acids first, then the esters, which set glycerol free. */
    private void addSalts(List<Item> items, FormulaLine line) {
        Fat fat = fat(line);
        Ratio reacted = mass(line).times(shareReacted);
        Ratio taken = reacted.times(fat.middleDemand());
        Ratio free = freeAcids(fat, mass(line)).min(taken);
        Ratio freed = taken.minus(free).times(GLYCEROL).dividedBy(3);
        Ratio formed = free.times(SoapComposition.WATER);
        glycerol = glycerol.plus(freed);
        water = water.plus(formed);
        addSalts(items, line, reacted.minus(freed).minus(formed), taken);
    }

    private static Ratio freeAcids(Fat fat, Ratio grams) {
        if (fat.nature() == Fat.Nature.FATTY_ACIDS) {
            return grams.times(fat.middleDemand());
        }
        return fat.acidValue()
                .map(range -> range.least().molesPerGram().plus(range.greatest().molesPerGram()))
                .map(both -> grams.times(both).dividedBy(2))
                .orElse(Ratio.ZERO);
    }

    private void addAcid(List<Item> items, FormulaLine line) {
        Ratio taken = acidMoles(line);
        Ratio formed = taken.times(SoapComposition.WATER);
        water = water.plus(formed);
        addSalts(items, line, mass(line).minus(formed), taken);
    }

    /** What is left of the fat or acid, with the alkali that it took, each metal by its share of the moles. */
    private void addSalts(List<Item> items, FormulaLine line, Ratio grams, Ratio taken) {
        String salt = names.of(line.name()).orElseThrow();
        moles.forEach((alkali, own) -> {
            Ratio share = own.dividedBy(allMoles());
            Ratio hydroxide = taken.times(alkali.gramsPerMole());
            items.add(new Item(
                    Ingredient.of(SaltNames.metal(alkali) + salt),
                    grams.plus(hydroxide).times(share)));
        });
    }
}
