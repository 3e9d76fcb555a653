package io.github.formulationmath.json;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A soap in a document: its formula, and what is declared of each line, with the ranges and where they were read. */
final class SoapDocument {

    private static final String FORMAT = "formulation-math/soap";
    private static final String LEAST = "least";
    private static final String GREATEST = "greatest";

    private SoapDocument() {}

    static Written writeAlone(Soap soap) {
        List<FormulaLine> declared = soap.formula().lines().stream()
                .filter(line -> !soap.undeclared().contains(line))
                .toList();
        return ValueDocument.document(FORMAT)
                .with("formula", FormulaDocument.write(soap.formula()))
                .with("declared", declared, line -> declared(soap, line));
    }

    private static Written declared(Soap soap, FormulaLine line) {
        Soap.Part part = Arrays.stream(Soap.Part.values())
                .filter(each -> soap.lines(each).contains(line))
                .findFirst()
                .orElseThrow();
        return Written.of("line", BenchDocument.number(line))
                .with("part", ValueDocument.word(part))
                .with("fat", soap.fatOf(line.name()), SoapDocument::write)
                .with("alkali", soap.alkaliOf(line.name()), SoapDocument::write)
                .with("acid", soap.acidOf(line.name()), SoapDocument::write);
    }

    static Soap readAlone(Node document) {
        return document.object(f -> {
            ValueDocument.requireFormat(f, FORMAT);
            Formula formula = FormulaDocument.read(f.get("formula"));
            Soap soap = Soap.of(formula);
            List<Function<Soap, Soap>> declarations = f.list("declared", node -> declaration(node, formula));
            for (Function<Soap, Soap> declaration : declarations) {
                soap = declaration.apply(soap);
            }
            return soap;
        });
    }

    private static Function<Soap, Soap> declaration(Node node, Formula formula) {
        return node.object(f -> {
            String line = BenchDocument.line(f.get("line"), formula).name();
            return switch (ValueDocument.constant(f.get("part"), Soap.Part.values())) {
                case FAT -> {
                    Fat fat = fat(f.get("fat"));
                    yield soap -> soap.fat(line, fat);
                }
                case LATE_FAT -> {
                    Fat fat = fat(f.get("fat"));
                    yield soap -> soap.lateFat(line, fat);
                }
                case ALKALI -> {
                    AlkaliGrade grade = grade(f.get("alkali"));
                    yield soap -> soap.alkali(line, grade);
                }
                case ACID -> {
                    Acid acid = acid(f.get("acid"));
                    yield soap -> soap.acid(line, acid);
                }
                case LYE_WATER -> soap -> soap.lyeWater(line);
                case NEITHER -> soap -> soap.neither(line);
            };
        });
    }

    static Written write(Fat fat) {
        SaponificationValue value = fat.saponification();
        return Written.of("name", fat.name())
                .with("nature", ValueDocument.word(fat.nature()))
                .with(
                        "saponificationValue",
                        numbers(value.range())
                                .with("evidence", ValueDocument.word(value.evidence()))
                                .with("source", write(value.source())))
                .with("acidValue", fat.acidValue(), SoapDocument::numbers)
                .with(
                        "inert",
                        Written.of("most", ValueDocument.share(fat.inert().most()))
                                .with(
                                        "statement",
                                        ValueDocument.word(fat.inert().statement())));
    }

    static Fat fat(Node node) {
        return node.object(f -> new Fat(
                f.get("name").text(),
                ValueDocument.constant(f.get("nature"), Fat.Nature.values()),
                value(f.get("saponificationValue")),
                acidRange(f.find("acidValue")),
                inert(f.get("inert"))));
    }

    private static SaponificationValue value(Node node) {
        return node.object(f -> new SaponificationValue(
                numbers(f), ValueDocument.constant(f.get("evidence"), Evidence.values()), source(f.get("source"))));
    }

    private static Fat.AcidRange acidRange(Optional<Node> node) {
        AlkaliNumber none = AlkaliNumber.ZERO;
        return node.map(known -> new Fat.AcidRange(true, known.object(SoapDocument::numbers)))
                .orElseGet(() -> new Fat.AcidRange(false, Interval.of(none, none)));
    }

    private static InertMatter inert(Node node) {
        return node.object(f -> new InertMatter(
                ValueDocument.share(f.get("most")),
                ValueDocument.constant(f.get("statement"), InertMatter.Statement.values())));
    }

    private static Written numbers(Interval<AlkaliNumber> range) {
        return Written.of(LEAST, range.least().toString())
                .with(GREATEST, range.greatest().toString());
    }

    private static Interval<AlkaliNumber> numbers(Node.Fields f) {
        return Interval.of(
                f.get(LEAST).parsed(AlkaliNumber::parse), f.get(GREATEST).parsed(AlkaliNumber::parse));
    }

    private static Written write(Source source) {
        Optional<String> locator = Optional.of(source.locator()).filter(text -> !text.isEmpty());
        Optional<String> title = Optional.of(source.title()).filter(text -> !text.isEmpty());
        Optional<String> written = Optional.of(source.writtenText()).filter(text -> !text.isEmpty());
        return Written.of("by", title.isPresent() ? "publication" : "caller")
                .with("title", title, text -> text)
                .with("locator", locator, text -> text)
                .with("written", written, text -> text);
    }

    private static Source source(Node node) {
        return node.object(f -> {
            if (f.get("by").text().equals("publication")) {
                return Source.published(
                        f.get("title").text(), f.find("locator").map(Node::text).orElse(""));
            }
            ValueDocument.require(f.get("by"), "caller");
            return f.find("written").map(text -> Source.written(text.text())).orElseGet(Source::user);
        });
    }

    static Written write(AlkaliGrade grade) {
        return Written.of("alkali", ValueDocument.word(grade.alkali()))
                .with("form", ValueDocument.word(grade.form()))
                .with("hydroxide", shares(grade.hydroxide()))
                .with("carbonate", shares(grade.carbonate()))
                .with("evidence", ValueDocument.word(grade.evidence()))
                .with("source", write(grade.source()));
    }

    static AlkaliGrade grade(Node node) {
        return node.object(f -> new AlkaliGrade(
                ValueDocument.constant(f.get("alkali"), Alkali.values()),
                shares(f.get("hydroxide")),
                shares(f.get("carbonate")),
                ValueDocument.constant(f.get("form"), AlkaliGrade.Form.values()),
                ValueDocument.constant(f.get("evidence"), Evidence.values()),
                source(f.get("source"))));
    }

    private static Written shares(Interval<MassFraction> range) {
        return Written.of(LEAST, ValueDocument.share(range.least()))
                .with(GREATEST, ValueDocument.share(range.greatest()));
    }

    private static Interval<MassFraction> shares(Node node) {
        return node.object(f -> Interval.of(ValueDocument.share(f.get(LEAST)), ValueDocument.share(f.get(GREATEST))));
    }

    /** The molar mass follows from the formula, by the atomic masses that come with the library. */
    static Written write(Acid acid) {
        MolecularFormula formula = acid.molarMass().formula();
        if (!MolarMass.of(formula).equals(acid.molarMass())) {
            throw new IllegalArgumentException("the molar mass of " + acid.name()
                    + " is of other atomic masses than those of the library, which a document does not keep: declare the"
                    + " acid with Acid.of(…)");
        }
        return Written.of("name", acid.name())
                .with("formula", formula.toString())
                .with("protons", Integer.toString(acid.protons()))
                .with("assay", shares(acid.assay()));
    }

    static Acid acid(Node node) {
        return node.object(f -> new Acid(
                f.get("name").text(),
                MolarMass.of(f.get("formula").parsed(MolecularFormula::parse)),
                ValueDocument.count(f.get("protons")),
                shares(f.get("assay"))));
    }
}
