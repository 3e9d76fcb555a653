package io.github.formulationmath.label;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.formula.WrittenName;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Breaks materials up, merges what has one name, and puts it in order; used once. */
final class LabelDraft {

    private final Label label;
    private final Formula formula;
    private final @Nullable MadeMasses masses;
    private final Map<String, List<IngredientList.ListedIngredient.Part>> parts = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Set<String> colorantKeys = new HashSet<>();
    private final Set<Phrase> remarks = new LinkedHashSet<>();
    private final LabelName style;

    LabelDraft(Label label, Formula formula, @Nullable MadeMasses masses) {
        this.label = label;
        this.formula = formula;
        this.masses = masses;
        this.style = LabelName.of(formula, label.capitals());
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
                    || WrittenName.of(key).colourIndex().isPresent();
            (colorant ? colorants : label.rule().isFree(one.share()) ? free : ordered).add(one);
        });
        Comparator<IngredientList.ListedIngredient> descending = Comparator.comparing(
                        IngredientList.ListedIngredient::share, Comparator.reverseOrder())
                .thenComparing(IngredientList.ListedIngredient::name);
        ordered.sort(descending);
        free.sort(descending);
        colorants.sort(descending);
        return new IngredientList(label.rule(), ordered, free, colorants, mayContain(), List.copyOf(remarks));
    }

    /** The colorants of other shades, each once, without those of this one. */
    private List<String> mayContain() {
        Set<String> own = new HashSet<>(parts.keySet());
        return label.mayContain().stream()
                .map(style::printed)
                .filter(name -> own.add(SubstanceName.normalise(name)))
                .toList();
    }

    private void addLine(FormulaLine line) {
        String word = wordFor(line);
        if (word != null) {
            add(word, Set.of(), new IngredientList.ListedIngredient.Part(line, MassFraction.WHOLE));
        } else {
            addMaterial(line);
        }
        for (Map.Entry<Substance, MassFraction> part : line.ingredient().parts().entrySet()) {
            if (word != null && SubstanceName.areAlike(part.getKey().name(), line.name())) {
                continue; // what is left of a breakdown, counted with the whole
            }
            SubstanceShare one = formula.composition().shareOf(part.getKey()).orElseThrow();
            String declared = declared(one);
            if (declared != null || word == null) {
                String name = declared == null ? one.substance().name() : declared;
                add(name, one.keys(), new IngredientList.ListedIngredient.Part(line, part.getValue()));
            }
        }
    }

    /** The one word for all of a material: as stated, or the name of an oil whose constituents are told. */
    private @Nullable String wordFor(FormulaLine line) {
        String word = label.perfumes().get(line.ingredient().normalName());
        if (word != null) {
            return word;
        }
        WrittenName named = WrittenName.of(line.name());
        Set<Substance> held = line.ingredient().parts().keySet();
        if (held.size() > 1 && isBrokenDown(named, held)) {
            remarks.add(Phrase.of("label.own-name", line.name()));
            return label.declared().getOrDefault(line.ingredient().normalName(), line.name());
        }
        ask(line, named, held);
        return null;
    }

    /** An oil of which constituents are told: none of them is an oil itself, or what is left of it has its own name. */
    private static boolean isBrokenDown(WrittenName named, Set<Substance> held) {
        return named.isVolatileOil()
                && held.stream()
                        .map(Substance::name)
                        .filter(name -> !SubstanceName.areAlike(name, named.toString()))
                        .noneMatch(name -> WrittenName.of(name).isPreparation());
    }

    /** What the list cannot tell by itself. */
    private void ask(FormulaLine line, WrittenName named, Set<Substance> held) {
        if (held.size() > 1 && named.isAromatic() && !named.isPreparation()) {
            remarks.add(Phrase.of("label.perfume-forgotten", line.name()));
        }
        for (Substance one : held) {
            WrittenName part = WrittenName.of(one.name());
            if (part.parts().size() > 1) {
                remarks.add(Phrase.of("label.several-names", one.name()));
            } else if (part.isAromatic() && (held.size() == 1 || !named.isAromatic())) {
                remarks.add(Phrase.of("label.breakdown", one.name()));
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

    private void add(String written, Set<String> substanceKeys, IngredientList.ListedIngredient.Part part) {
        String name = style.printed(written);
        String key = SubstanceName.normalise(name);
        names.putIfAbsent(key, name);
        if (!Collections.disjoint(label.colorants(), substanceKeys)) {
            colorantKeys.add(key);
        }
        parts.computeIfAbsent(key, k -> new ArrayList<>()).add(part);
    }
}
