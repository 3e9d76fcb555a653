package io.github.formulationmath.json;

import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.LyeBuilder;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.Unsaponified;
import java.util.List;
import javax.measure.quantity.Mass;

/** What a lye is reckoned from, in a document. The alkali and the water are not in it: they are reckoned again. */
final class LyeDocument {

    private static final String FORMAT = "formulation-math/lye";

    private LyeDocument() {}

    static Written write(LyeCalculation lye) {
        LyeWater water = lye.waterFigure();
        return ValueDocument.document(FORMAT)
                .with("name", lye.name())
                .with(
                        "fats",
                        lye.fats(),
                        p -> Written.of("fat", SoapDocument.write(p.what())).with("mass", mass(p.mass())))
                .with(
                        "acids",
                        lye.acids(),
                        p -> Written.of("acid", SoapDocument.write(p.what())).with("mass", mass(p.mass())))
                .with(
                        "others",
                        lye.others(),
                        p -> Written.of("name", p.what().name()).with("mass", mass(p.mass())))
                .with("alkalis", lye.alkalis(), p -> SoapDocument.write(p.what()))
                .with(
                        "division",
                        lye.division(),
                        division -> Written.of("sodium", ValueDocument.share(division.sodium()))
                                .with("basis", ValueDocument.word(division.basis())))
                .with(
                        "unsaponified",
                        Written.of(
                                        "alkaliShortfall",
                                        ValueDocument.share(lye.goal().shortfall()))
                                .with("statedAs", ValueDocument.word(lye.goal().convention())))
                .with("reckoned", ValueDocument.word(lye.reckoned()))
                .with(
                        "water",
                        Written.of("name", lye.waterName())
                                .with("convention", ValueDocument.word(water.convention()))
                                .with("number", ValueDocument.number(water.number()))
                                .with("alkali", ValueDocument.word(water.alkali())));
    }

    private static Written mass(Amount<Mass> mass) {
        return ValueDocument.amount(mass);
    }

    private static String mass(Node node) {
        Amount<Mass> mass = ValueDocument.mass(node);
        return mass.exactValue() + " " + mass.symbol();
    }

    static LyeCalculation read(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, FORMAT);
            LyeBuilder builder = LyeCalculation.named(f.get("name").text());
            f.list("fats", node -> node.object(g -> builder.fat(SoapDocument.fat(g.get("fat")), mass(g.get("mass")))));
            f.list(
                    "acids",
                    node -> node.object(g -> builder.acid(SoapDocument.acid(g.get("acid")), mass(g.get("mass")))));
            f.list("others", node -> node.object(g -> builder.neither(other(g.get("name")), mass(g.get("mass")))));
            alkalis(f, builder);
            builder.leaving(
                    f.get("unsaponified").object(LyeDocument::goal),
                    ValueDocument.constant(f.get("reckoned"), Reckoned.values()));
            f.get("water").object(g -> builder.water(g.get("name").text(), water(g)));
            return builder.build();
        });
    }

    private static String other(Node name) {
        return name.parsed(Ingredient::of).name();
    }

    private static void alkalis(Node.Fields f, LyeBuilder builder) {
        List<AlkaliGrade> grades = f.list("alkalis", SoapDocument::grade);
        AlkaliMixture division = f.find("division")
                .map(node -> node.object(g -> new AlkaliMixture(
                        ValueDocument.share(g.get("sodium")),
                        ValueDocument.constant(g.get("basis"), AlkaliMixture.Basis.values()))))
                .orElse(null);
        if (grades.size() != (division == null ? 1 : 2)) {
            throw f.wrong("\"alkalis\" has " + grades.size()
                    + " entries: write one, or two (sodium hydroxide first) and how they are divided as \"division\"");
        }
        if (division == null) {
            builder.alkali(grades.get(0));
        } else {
            builder.alkalis(division, grades.get(0), grades.get(1));
        }
    }

    private static Unsaponified goal(Node.Fields f) {
        MassFraction shortfall = ValueDocument.share(f.get("alkaliShortfall"));
        return new Unsaponified(shortfall, ValueDocument.constant(f.get("statedAs"), Unsaponified.Convention.values()));
    }

    private static LyeWater water(Node.Fields f) {
        return new LyeWater(
                ValueDocument.constant(f.get("convention"), LyeWater.Convention.values()),
                ValueDocument.number(f.get("number")),
                ValueDocument.constant(f.get("alkali"), LyeWater.Of.values()));
    }
}
