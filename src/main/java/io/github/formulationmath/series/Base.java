package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What some versions have in common and can be made of it at once: lines whose shares keep their proportions in all of them, and of
 * the q.s. line as much as each has beside these.
 *
 * @param versions the versions that are made from it
 * @param shares the share of each line in the base, in the order of the first version
 * @param portions how much of each version is base, as a fraction of it
 */
record Base(List<Formula> versions, Map<LineKey, Ratio> shares, List<Ratio> portions) {

    private static final String NAME = "Base";

    /** Every base that some versions can be made from without some materials, that of most lines first. */
    static List<Base> allOf(List<Formula> versions, Set<String> without) {
        List<Map<LineKey, FormulaLine>> lines =
                versions.stream().map(LineKey::lines).toList();
        Map<List<Ratio>, List<LineKey>> classes = new LinkedHashMap<>();
        for (LineKey key : lines.get(0).keySet()) {
            if (!without.contains(key.normalName()) && lines.stream().allMatch(all -> all.containsKey(key))) {
                List<Ratio> against = lines.stream()
                        .map(all -> share(all, key).dividedBy(share(lines.get(0), key)))
                        .toList();
                classes.computeIfAbsent(against, none -> new ArrayList<>()).add(key);
            }
        }
        List<Base> all = new ArrayList<>();
        for (List<LineKey> together : classes.values()) {
            if (together.size() > 1) {
                all.add(of(versions, lines, together));
            }
            rest(lines)
                    .filter(rest -> !together.contains(rest) && !without.contains(rest.normalName()))
                    .ifPresent(rest -> all.add(of(versions, lines, together).toppedUp(lines, rest)));
        }
        all.sort(Comparator.comparing((Base base) -> base.shares().size()).reversed());
        return all;
    }

    /** The line that takes the rest in all versions. */
    private static Optional<LineKey> rest(List<Map<LineKey, FormulaLine>> lines) {
        return lines.get(0).keySet().stream()
                .filter(key -> lines.stream().allMatch(all -> {
                    FormulaLine line = all.get(key);
                    return line != null && line.isQuantitySufficient();
                }))
                .findFirst();
    }

    private static Ratio share(Map<LineKey, FormulaLine> lines, LineKey key) {
        FormulaLine line = lines.get(key);
        return line == null ? Ratio.ZERO : line.fraction();
    }

    private static Base of(List<Formula> versions, List<Map<LineKey, FormulaLine>> lines, List<LineKey> together) {
        List<Ratio> portions = lines.stream()
                .map(all -> together.stream().map(key -> share(all, key)).reduce(Ratio.ZERO, Ratio::plus))
                .toList();
        Map<LineKey, Ratio> shares = new LinkedHashMap<>();
        together.forEach(key -> shares.put(key, share(lines.get(0), key).dividedBy(portions.get(0))));
        return new Base(versions, shares, portions);
    }

    /** With as much of one more line as every version has for so much of the others. */
    private Base toppedUp(List<Map<LineKey, FormulaLine>> lines, LineKey more) {
        Ratio least = null;
        for (int i = 0; i < lines.size(); i++) {
            Ratio own = share(lines.get(i), more).dividedBy(portions.get(i));
            least = least == null ? own : least.min(own);
        }
        Ratio top = least == null ? Ratio.ZERO : least;
        Ratio whole = Ratio.ONE.plus(top);
        Map<LineKey, Ratio> all = new LinkedHashMap<>();
        for (LineKey key : lines.get(0).keySet()) {
            Ratio own = key.equals(more) ? top : shares.getOrDefault(key, Ratio.ZERO);
            if (own.signum() > 0) {
                all.put(key, own.dividedBy(whole));
            }
        }
        return new Base(
                versions, all, portions.stream().map(own -> own.times(whole)).toList());
    }

    /** The base as a formula of its own, its lines in their phases. */
    Formula formula() {
        return Formula.inPercent(name())
                .linesOf(
                        versions.get(0),
                        FormulaLine::ingredient,
                        line -> Optional.ofNullable(shares.get(LineKey.of(line)))
                                .map(Base::amount))
                .build();
    }

    /** The base as it is weighed into a version: a material of the substances that it is made of. */
    private Ingredient ingredient() {
        List<SubstanceShare> parts = formula().composition().shares();
        var blend = Ingredient.blend(name());
        parts.forEach(part -> blend.part(part.substance(), part.share()));
        return blend.build();
    }

    /** A version as it is weighed: a portion of base first, then what it has beside it. */
    Formula portion(int version) {
        Formula whole = versions.get(version);
        Ratio portion = portions.get(version);
        return Formula.inPercent(whole.name())
                .phase(name())
                .line(ingredient(), amount(portion))
                .linesOf(whole, FormulaLine::ingredient, line -> {
                    Ratio inBase =
                            shares.getOrDefault(LineKey.of(line), Ratio.ZERO).times(portion);
                    return Optional.of(line.fraction().minus(inBase))
                            .filter(beside -> beside.signum() > 0)
                            .map(Base::amount);
                })
                .build();
    }

    private static LineAmount amount(Ratio fraction) {
        return new LineAmount.Share(MassFraction.of(fraction));
    }

    /** A name that no phase of a version has. */
    private String name() {
        List<String> taken = versions.stream()
                .flatMap(version -> version.phases().stream())
                .map(phase -> SubstanceName.normalise(phase.name()))
                .toList();
        String name = NAME;
        for (int i = 2; taken.contains(SubstanceName.normalise(name)); i++) {
            name = NAME + " " + i;
        }
        return name;
    }

    @Override
    public String toString() {
        return versions.stream().map(Formula::name).collect(Collectors.joining(", ", "base of ", ""));
    }
}
