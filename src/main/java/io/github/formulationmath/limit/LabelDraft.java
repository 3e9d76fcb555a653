package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Breaks materials up, merges what has one name, and puts it in order; used once. */
final class LabelDraft {

    private static final Pattern COLOUR_INDEX = Pattern.compile("CI [0-9]{5}");

    private final Label label;
    private final Formula formula;
    private final @Nullable MadeMasses masses;
    private final Map<String, List<ListedPart>> parts = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();

    LabelDraft(Label label, Formula formula, @Nullable MadeMasses masses) {
        this.label = label;
        this.formula = formula;
        this.masses = masses;
    }

    IngredientList list() {
        formula.lines().forEach(this::addLine);
        List<ListedIngredient> ordered = new ArrayList<>();
        List<ListedIngredient> free = new ArrayList<>();
        List<ListedIngredient> colorants = new ArrayList<>();
        parts.forEach((key, from) -> {
            ListedIngredient one = new ListedIngredient(names.getOrDefault(key, key), formula, from, masses);
            boolean colorant =
                    label.colorants().contains(key) || COLOUR_INDEX.matcher(key).matches();
            (colorant ? colorants : label.rule().isFree(one.share()) ? free : ordered).add(one);
        });
        Comparator<ListedIngredient> descending = Comparator.comparing(
                        ListedIngredient::share, Comparator.reverseOrder())
                .thenComparing(ListedIngredient::name);
        ordered.sort(descending);
        free.sort(descending);
        colorants.sort(descending);
        return new IngredientList(label.rule(), ordered, free, colorants);
    }

    private void addLine(FormulaLine line) {
        String word = label.perfumes().get(LimitNames.normalise(line.name()));
        if (word != null) {
            add(word, new ListedPart(line, MassFraction.WHOLE));
        }
        for (Map.Entry<Substance, MassFraction> part : line.ingredient().parts().entrySet()) {
            String declared =
                    label.declared().get(LimitNames.normalise(part.getKey().name()));
            if (declared != null || word == null) {
                add(declared == null ? part.getKey().name() : declared, new ListedPart(line, part.getValue()));
            }
        }
    }

    private void add(String name, ListedPart part) {
        String key = LimitNames.normalise(name);
        names.putIfAbsent(key, name);
        parts.computeIfAbsent(key, k -> new ArrayList<>()).add(part);
    }
}
