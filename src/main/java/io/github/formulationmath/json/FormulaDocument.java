package io.github.formulationmath.json;

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
import java.util.List;

/** A formula in a document: its lines as written, and the rule that makes them shares. */
final class FormulaDocument {

    private static final String FORMAT = "formulation-math/formula";
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
    static Written writeAlone(Formula formula) {
        return ValueDocument.document(FORMAT).with("formula", write(formula));
    }

    static Formula readAlone(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, FORMAT);
            return read(f.get("formula"));
        });
    }

    static Written write(Formula formula) {
        Rule rule = rule(formula);
        Written written = Written.of("name", formula.name()).with("rule", ValueDocument.word(rule));
        if (rule == Rule.MASSES_TO_MAKE) {
            written.with("whole", ValueDocument.amount(whole(formula)));
        }
        return written.with("phases", formula.phases(), FormulaDocument::phase);
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

    private static Written phase(Phase phase) {
        return Written.of("name", phase.name()).with("lines", phase.lines(), FormulaDocument::line);
    }

    private static Written line(FormulaLine line) {
        return Written.of("ingredient", ingredient(line.ingredient())).with("amount", amount(line.amount()));
    }

    private static Written amount(LineAmount amount) {
        if (amount instanceof LineAmount.Share share) {
            return Written.of("share", ValueDocument.share(share.fraction()));
        }
        if (amount instanceof LineAmount.Parts parts) {
            return Written.of("parts", ValueDocument.number(parts.parts()));
        }
        return amount instanceof LineAmount.Weight weight
                ? Written.of("mass", ValueDocument.amount(weight.mass()))
                : Written.of("rest", QUANTITY_SUFFICIENT);
    }

    private static Written ingredient(Ingredient ingredient) {
        List<Written> parts = ingredient.parts().entrySet().stream()
                .map(part -> part(part.getKey(), part.getValue()))
                .toList();
        return Written.of("name", ingredient.name())
                .with("density", ingredient.density(), ValueDocument::density)
                .with("parts", parts);
    }

    private static Written part(Substance substance, MassFraction strength) {
        Written written = Written.of("inci", substance.name()).with("cas", substance.cas(), cas -> cas);
        if (!substance.synonyms().isEmpty()) {
            written.with("synonyms", List.copyOf(substance.synonyms()));
        }
        return written.with("strength", ValueDocument.share(strength));
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
            return f.with(blend.build(), "density", ValueDocument::density, Ingredient::withDensity);
        });
    }

    private static String synonym(Node node) {
        return node.parsed(text -> Substance.of(text).name());
    }
}
