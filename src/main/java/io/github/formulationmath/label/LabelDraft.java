package io.github.formulationmath.label;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Breaks materials up, merges what has one name, and puts it in order; used once. */
final class LabelDraft {

    private static final Pattern COLOUR_INDEX = Pattern.compile("CI [0-9]{5}");

    private final Label label;
    private final Formula formula;
    private final @Nullable MadeMasses masses;
    private final Map<String, List<IngredientList.ListedIngredient.Part>> parts = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Set<String> colorantKeys = new HashSet<>();

    LabelDraft(Label label, Formula formula, @Nullable MadeMasses masses) {
        this.label = label;
        this.formula = formula;
        this.masses = masses;
    }

    IngredientList list() {
        formula.lines().forEach(this::addLine);
        List<IngredientList.ListedIngredient> ordered = new ArrayList<>();
        List<IngredientList.ListedIngredient> free = new ArrayList<>();
        List<IngredientList.ListedIngredient> colorants = new ArrayList<>();
        parts.forEach((key, from) -> {
            IngredientList.ListedIngredient one =
                    new IngredientList.ListedIngredient(names.getOrDefault(key, key), from, masses);
            boolean colorant = label.colorants().contains(key)
                    || colorantKeys.contains(key)
                    || COLOUR_INDEX.matcher(key).matches();
            (colorant ? colorants : label.rule().isFree(one.share()) ? free : ordered).add(one);
        });
        Comparator<IngredientList.ListedIngredient> descending = Comparator.comparing(
                        IngredientList.ListedIngredient::share, Comparator.reverseOrder())
                .thenComparing(IngredientList.ListedIngredient::name);
        ordered.sort(descending);
        free.sort(descending);
        colorants.sort(descending);
        return new IngredientList(label.rule(), ordered, free, colorants);
    }

    private void addLine(FormulaLine line) {
        String word = label.perfumes().get(line.ingredient().normalName());
        if (word != null) {
            add(word, Set.of(), new IngredientList.ListedIngredient.Part(line, MassFraction.WHOLE));
        } else {
            addMaterial(line);
        }
        for (Map.Entry<Substance, MassFraction> part : line.ingredient().parts().entrySet()) {
            SubstanceShare one = formula.composition().shareOf(part.getKey()).orElseThrow();
            String declared = declared(one);
            if (declared != null || word == null) {
                String name = declared == null ? one.substance().name() : declared;
                add(name, one.keys(), new IngredientList.ListedIngredient.Part(line, part.getValue()));
            }
        }
    }

    /** A material that has to be declared by a name of its own stands beside what it consists of. */
    private void addMaterial(FormulaLine line) {
        String name = label.declared().get(line.ingredient().normalName());
        boolean amongParts = line.ingredient().parts().keySet().stream()
                .anyMatch(part -> formula.composition()
                        .shareOf(part)
                        .orElseThrow()
                        .keys()
                        .contains(line.ingredient().normalName()));
        if (name != null && !amongParts) {
            add(name, Set.of(), new IngredientList.ListedIngredient.Part(line, MassFraction.WHOLE));
        }
    }

    private @Nullable String declared(SubstanceShare one) {
        return one.keys().stream()
                .map(label.declared()::get)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private void add(String name, Set<String> substanceKeys, IngredientList.ListedIngredient.Part part) {
        String key = SubstanceName.normalise(name);
        names.putIfAbsent(key, name);
        if (!Collections.disjoint(label.colorants(), substanceKeys)) {
            colorantKeys.add(key);
        }
        parts.computeIfAbsent(key, k -> new ArrayList<>()).add(part);
    }
}
