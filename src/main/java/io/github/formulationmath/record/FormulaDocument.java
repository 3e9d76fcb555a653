package io.github.formulationmath.record;

import io.github.formulationmath.formula.BlendBuilder;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A formula in a document: its lines as written, and the rule that makes them shares. */
final class FormulaDocument {

    private static final String FORMAT = "formulation-math/formula";
    private static final String VERSION = "1";
    private static final String QUANTITY_SUFFICIENT = "quantity-sufficient";

    /** What the lines are shares of. */
    private enum Rule {
        PERCENT,
        NORMALISED,
        PARTS,
        MASSES,
        MASSES_TO_MAKE
    }

    private FormulaDocument() {}

    /** A formula that is a document of its own. */
    static Map<String, Object> writeAlone(Formula formula) {
        Map<String, Object> map = new LinkedHashMap<>();
        ValueDocument.putFormat(map, FORMAT, VERSION);
        map.put("formula", write(formula));
        return map;
    }

    static ReadFormula readAlone(Object document) {
        Node root = Node.root(document);
        Formula formula = root.object(f -> {
            ValueDocument.requireFormat(f, FORMAT, VERSION);
            return read(f.get("formula"));
        });
        return new ReadFormula(formula, root.unknownFields());
    }

    static Map<String, Object> write(Formula formula) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", formula.name());
        Rule rule = rule(formula);
        map.put("rule", ValueDocument.word(rule));
        if (rule == Rule.MASSES_TO_MAKE) {
            map.put("whole", ValueDocument.amount(whole(formula)));
        }
        List<Object> phases = new ArrayList<>();
        formula.phases().forEach(phase -> phases.add(phase(phase)));
        map.put("phases", phases);
        return map;
    }

    private static Rule rule(Formula formula) {
        boolean rest = formula.quantitySufficientLine().isPresent();
        LineAmount first = formula.lines().stream()
                .filter(line -> !line.isQuantitySufficient())
                .findFirst()
                .map(FormulaLine::amount)
                .orElseGet(() -> new LineAmount.Share(MassFraction.WHOLE));
        if (first instanceof LineAmount.Parts) {
            return Rule.PARTS;
        }
        if (first instanceof LineAmount.Weight) {
            return rest ? Rule.MASSES_TO_MAKE : Rule.MASSES;
        }
        return rest || writtenSum(formula).equals(Ratio.ONE) ? Rule.PERCENT : Rule.NORMALISED;
    }

    private static Ratio writtenSum(Formula formula) {
        return formula.lines().stream()
                .map(line -> ((LineAmount.Share) line.amount()).fraction().fraction())
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    /** Any weighed line tells the whole, m/w. */
    private static Amount<?> whole(Formula formula) {
        FormulaLine weighed = formula.lines().stream()
                .filter(line -> !line.isQuantitySufficient())
                .findFirst()
                .orElseThrow();
        return ((LineAmount.Weight) weighed.amount()).mass().dividedBy(weighed.fraction());
    }

    private static Map<String, Object> phase(Phase phase) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", phase.name());
        List<Object> lines = new ArrayList<>();
        for (FormulaLine line : phase.lines()) {
            Map<String, Object> each = new LinkedHashMap<>();
            each.put("ingredient", ingredient(line.ingredient()));
            each.put("amount", lineAmount(line.amount()));
            lines.add(each);
        }
        map.put("lines", lines);
        return map;
    }

    private static Map<String, Object> lineAmount(LineAmount amount) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (amount instanceof LineAmount.Share share) {
            map.put("share", ValueDocument.share(share.fraction()));
        } else if (amount instanceof LineAmount.Parts parts) {
            map.put("parts", ValueDocument.number(parts.parts()));
        } else if (amount instanceof LineAmount.Weight weight) {
            map.put("mass", ValueDocument.amount(weight.mass()));
        } else {
            map.put("rest", QUANTITY_SUFFICIENT);
        }
        return map;
    }

    private static Map<String, Object> ingredient(Ingredient ingredient) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("name", ingredient.name());
        ingredient.density().ifPresent(density -> map.put("density", ValueDocument.density(density)));
        List<Object> parts = new ArrayList<>();
        ingredient.parts().forEach((substance, strength) -> {
            Map<String, Object> part = new LinkedHashMap<>();
            part.put("inci", substance.name());
            substance.cas().ifPresent(cas -> part.put("cas", cas));
            if (!substance.synonyms().isEmpty()) {
                part.put("synonyms", new ArrayList<>(substance.synonyms()));
            }
            part.put("strength", ValueDocument.share(strength));
            parts.add(part);
        });
        map.put("parts", parts);
        return map;
    }

    static Formula read(Node node) {
        return node.object(f -> {
            String name = f.get("name").text();
            Rule rule = ValueDocument.constant(f.get("rule"), Rule.values());
            Node phases = f.get("phases");
            return switch (rule) {
                case PERCENT -> filled(Formula.inPercent(name), rule, phases).build();
                case NORMALISED -> filled(Formula.inPercent(name), rule, phases).buildNormalised();
                case PARTS -> filled(Formula.inParts(name), rule, phases).build();
                case MASSES -> filled(Formula.inMasses(name), rule, phases).build();
                case MASSES_TO_MAKE ->
                    filled(Formula.inMasses(name), rule, phases).buildToMake(ValueDocument.mass(f.get("whole")));
            };
        });
    }

    private static FormulaBuilder filled(FormulaBuilder builder, Rule rule, Node phases) {
        phases.list(phase -> phase.object(f -> {
            builder.phase(f.get("name").text());
            return f.get("lines").list(line -> line.object(g -> line(builder, rule, g)));
        }));
        return builder;
    }

    private static FormulaBuilder line(FormulaBuilder builder, Rule rule, Node.Fields fields) {
        Ingredient ingredient = ingredient(fields.get("ingredient"));
        return fields.get("amount").object(amount -> builder.line(ingredient, lineAmount(rule, amount)));
    }

    private static LineAmount lineAmount(Rule rule, Node.Fields amount) {
        if (amount.find("rest").isPresent()) {
            ValueDocument.require(amount.get("rest"), QUANTITY_SUFFICIENT);
            return new LineAmount.QuantitySufficient();
        }
        return switch (rule) {
            case PERCENT, NORMALISED -> new LineAmount.Share(ValueDocument.share(amount.get("share")));
            case PARTS -> new LineAmount.Parts(ValueDocument.number(amount.get("parts")));
            case MASSES, MASSES_TO_MAKE -> new LineAmount.Weight(ValueDocument.mass(amount.get("mass")));
        };
    }

    private static Ingredient ingredient(Node node) {
        return node.object(f -> {
            BlendBuilder blend = Ingredient.blend(f.get("name").text());
            f.get("parts")
                    .list(part -> part.object(g -> {
                        Substance substance = Substance.of(g.get("inci").text());
                        Substance known = g.find("cas")
                                .map(cas -> cas.parsed(substance::withCas))
                                .orElse(substance);
                        String[] synonyms =
                                g.list("synonyms", FormulaDocument::synonym).toArray(String[]::new);
                        return blend.part(known.withSynonyms(synonyms), ValueDocument.share(g.get("strength")));
                    }));
            Ingredient ingredient = blend.build();
            return f.find("density")
                    .map(ValueDocument::density)
                    .map(ingredient::withDensity)
                    .orElse(ingredient);
        });
    }

    private static String synonym(Node node) {
        return node.parsed(text -> Substance.of(text).name());
    }
}
