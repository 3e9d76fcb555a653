package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.json.Json;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.quantity.UnitMismatchException;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.SearchEffort;
import io.github.formulationmath.size.SearchLimitException;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.IodineValue;
import io.github.formulationmath.solution.AcidTable;
import io.github.formulationmath.solution.ChargeBalance;
import io.github.formulationmath.solution.IonicStrength;
import io.github.formulationmath.solution.Neutralisation;
import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** Every exception of the library is a refusal: it has a key and fields, and can be said in another language. */
final class RefusalsTest {

    private static final Formula GEL = Formula.inPercent("Gel")
            .quantitySufficient("Aqua")
            .line("Glycerin", "5 %")
            .build();
    private static final Bench BENCH = Bench.of(Balance.of("0.1 g", "2 kg"));

    private static final Wording GERMAN = german();

    private static Wording german() {
        try (InputStream de = RefusalsTest.class.getResourceAsStream("/refusals-de.properties")) {
            return Wording.read(new InputStreamReader(Objects.requireNonNull(de), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Stream<Refusal> all() {
        return Stream.of(numbers(), amounts(), formulasAndPlans(), documents())
                .flatMap(List::stream)
                .map(sample -> {
                    Throwable thrown = catchThrowable(sample);
                    assertThat(thrown).isInstanceOf(Refusal.class);
                    return (Refusal) thrown;
                });
    }

    private static List<ThrowingCallable> numbers() {
        return List.of(
                () -> Ratio.parse("1".repeat(100_000)),
                () -> AlkaliNumber.parse("192"),
                () -> AlkaliNumber.parse("-1 mg KOH/g"),
                () -> IodineValue.parse("86"),
                () -> IonicStrength.parse("0.1"),
                () -> IonicStrength.parse("-0.1 mol/L"),
                () -> pureWater().withStrong("0.1", 1),
                () -> pureWater().withStrong("-0.1 mol/L", 1),
                () -> Neutralisation.ofAcidValue("200", "210"),
                () -> Ratio.parse("three"),
                () -> Ratio.parse("1,5"),
                () -> Ratio.parse("1e999999999"),
                () -> Ratio.parse("1/0"),
                () -> {
                    throw new NumberTextException("x", Sentence.of("my.own", "of another kind"));
                });
    }

    private static List<ThrowingCallable> amounts() {
        return List.of(
                () -> Amount.mass("three"),
                () -> Amount.mass("12"),
                () -> Amount.mass("1 2 g"),
                () -> Amount.mass("1\u200bg"),
                () -> Amount.mass("2 lb 3 g"),
                () -> Amount.mass("2 lb 16 oz"),
                () -> Amount.mass("1,5 g"),
                () -> Amount.mass("1 mL"),
                () -> Amount.volume("1 g"),
                () -> Amount.temperature("1 g"),
                () -> AmountFormat.standard().parseShare("1 g"),
                () -> Amount.mass("1 stone"),
                () -> Amount.mass("1 gr"),
                () -> Amount.volume("1 fl oz"),
                () -> Amount.volume("1 cup"),
                () -> Amount.volume("1 tbsp"),
                () -> Amount.volume("1 tsp"),
                () -> Density.parse("1 g"),
                () -> AmountFormat.standard().parse("5 J/kg·K"),
                () -> MassFraction.parse("1 g"),
                () -> MassConcentration.parse("1 %"),
                () -> MassConcentration.parse("1 mol/L w/v"),
                () -> Money.parse("12.50"),
                () -> {
                    throw new UnitMismatchException(FormulationUnits.GRAM, FormulationUnits.MILLILITRE);
                });
    }

    private static List<ThrowingCallable> formulasAndPlans() {
        Bench small = BENCH.with(Vessel.of("beaker", "214 g").holding("600 mL", "450 mL"))
                .withProductDensity(Density.ofGramsPerMillilitre("0.96"));
        return List.of(
                () -> Formula.inPercent("Gel").line("Aqua", "99 %").build(),
                () -> Formula.inPercent("Gel")
                        .line("Aqua", "101/2 %")
                        .line("B", "50 %")
                        .build(),
                () -> Formula.inPercent("Gel")
                        .line("A", "100 %")
                        .quantitySufficient("Aqua")
                        .build(),
                () -> Formula.inPercent("Gel").line("Glycerin", "3 g"),
                () -> WeighingPlan.of(Batch.of(GEL, BatchSize.ofMass("3 kg")), BENCH),
                () -> WeighingPlan.of(Batch.of(GEL, BatchSize.ofMass("480 g")), small),
                () -> Criterion.roundingWithin(Tolerances.of("0 %"))
                        .on(Formula.inPercent("A").line("A", "100 %").build(), BENCH)
                        .within(Interval.of(Amount.mass("1 g"), Amount.mass("10 kg"))),
                () -> Criterion.roundingWithin(Tolerances.of("0.0001 %"))
                        .on(GEL, BENCH)
                        .with(SearchEffort.ofChecks(1))
                        .within(Interval.of(Amount.mass("1 g"), Amount.mass("1 kg"))));
    }

    private static List<ThrowingCallable> documents() {
        String json = Json.formulas().write(GEL);
        CsvFormat format = CsvFormat.of(List.of("name", "mass"));
        return List.of(
                () -> Json.formulas().read(""),
                () -> Json.formulas().read(json.replace("\"5\"", "\"5,0\"")),
                () -> format.read("", new StringReader("name,mass\nA,\"1")),
                () -> format.read("masses.csv", new StringReader("name;mass\n")),
                () -> format.read("masses.csv", new StringReader("name,mass\nA,1 gr\n"))
                        .rows()
                        .get(0)
                        .read("mass", Amount::mass),
                () -> Claim.read(
                        new StringReader("record,group,name,value,figure\nformula,,f,percent,\nsize,,mass,1 gr,\n"
                                + "line,,Aqua,100 %,1 g\n")));
    }

    /** The samples are of every exception class that the library has. */
    private static ChargeBalance pureWater() {
        return ChargeBalance.of(AcidTable.shipped().constants("water", Amount.temperature("25 °C"), "0"));
    }

    @Test
    void every_own_exception_is_a_refusal() {
        Set<String> own = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(Ladder.ROOT)) {
            boolean ofTheLibrary = Ladder.chapterOf(type.getPackageName())
                    .filter(Ladder::isChapter)
                    .isPresent();
            if (ofTheLibrary
                    && type.isAssignableTo(Throwable.class)
                    && type.getModifiers().contains(JavaModifier.PUBLIC)) {
                assertThat(type.isAssignableTo(Refusal.class))
                        .as(type.getName())
                        .isTrue();
                own.add(type.getName());
            }
        }
        assertThat(own).hasSizeGreaterThanOrEqualTo(8);
        Set<String> sampled =
                all().map(refusal -> refusal.getClass().getName()).collect(Collectors.toCollection(TreeSet::new));
        assertThat(sampled).isEqualTo(own);
    }

    /** One text in two places: in the exception and in the wording. They are held to each other. */
    @Test
    void the_english_wording_says_what_the_exception_says() {
        assertThat(all())
                .allSatisfy(
                        refusal -> assertThat(Wording.english().text(refusal)).isEqualTo(refusal.getMessage()));
    }

    @Test
    void another_language_says_it_with_the_same_fields() {
        assertThat(all()).filteredOn(RefusalsTest::isKnown).allSatisfy(refusal -> {
            String german = GERMAN.text(refusal);
            assertThat(german).isNotEqualTo(refusal.getMessage()).doesNotContain("{");
            for (Refusal part : parts(refusal)) {
                String sentence = GERMAN.text(part);
                assertThat(german).contains(sentence);
                assertThat(Sentence.filled(part.said().english(), part.fields()::get))
                        .isEqualTo(part.said().getMessage());
                part.fields().forEach((name, value) -> {
                    boolean ofItsOwn = name.equals("reason") && part.because().isPresent() || name.equals("remedies");
                    if (part.said().english().contains("{" + name + "}") && !ofItsOwn) {
                        assertThat(sentence).as(name).contains(value);
                    }
                });
                assertThat(part.remedies())
                        .allSatisfy(remedy -> assertThat(german).contains(remedy));
            }
            refusal.place()
                    .ifPresent(place -> assertThat(german)
                            .startsWith(place.file().isEmpty() ? "Zeile " + place.line() : place.file() + ", Zeile ")
                            .contains("Spalte " + place.column() + ": "));
        });
    }

    private static boolean isKnown(Refusal refusal) {
        return parts(refusal).stream().allMatch(part -> GERMAN.has(part.key()));
    }

    private static List<Refusal> parts(Refusal refusal) {
        return Stream.iterate(Optional.of(refusal), Optional::isPresent, part -> part.flatMap(Refusal::because))
                .map(Optional::get)
                .toList();
    }

    /** A key that no sample says could hold any text. */
    @Test
    void every_sentence_is_said_by_a_sample() {
        Set<String> said = all().flatMap(refusal -> parts(refusal).stream())
                .map(Refusal::key)
                .filter(key -> !key.equals("my.own"))
                .collect(Collectors.toCollection(TreeSet::new));
        said.addAll(List.of("refusal.at", "refusal.at-file", "refusal.or"));
        assertThat(said)
                .isEqualTo(Wording.english().keys().stream()
                        .filter(key -> key.startsWith("refusal."))
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void what_was_typed_in_a_table_is_told_in_one_language() {
        Refusal refusal = all().filter(r -> r.place().isPresent() && r.key().equals("refusal.csv-column"))
                .findFirst()
                .orElseThrow();
        assertThat(refusal.place()).contains(new Refusal.Place("masses.csv", 2, 3));
        assertThat(refusal.fields()).containsEntry("column", "mass").containsEntry("value", "1 gr");
        assertThat(GERMAN.text(refusal))
                .isEqualTo(
                        "masses.csv, Zeile 2, Spalte 3: mass ist nicht lesbar: \"1 gr\" geht nicht: \"gr\" steht für "
                                + "mehrere Einheiten: g, das Gramm, oder grain (0.0648 g); schreibe 1 g oder 1 grain");
    }

    /** A refusal of an application's own that no wording knows is not lost for that. */
    @Test
    void what_no_wording_knows_is_said_in_english() {
        assertThat(GERMAN.text(Sentence.of("my.own", "of {kind} kind {left}", "kind", "{left} $1")))
                .isEqualTo("of {left} $1 kind {left}");
    }

    /** The classes are what they were to Java and to JSR 385. */
    @Test
    void their_classes_stay() {
        assertThat(all())
                .allSatisfy(refusal -> assertThat(refusal)
                        .isInstanceOfAny(
                                IllegalArgumentException.class,
                                javax.measure.UnconvertibleException.class,
                                SearchLimitException.class));
    }

    @Test
    void they_survive_being_sent() {
        assertThat(all()).allSatisfy(refusal -> {
            Refusal copy = sent(refusal);
            assertThat(copy.getMessage()).isEqualTo(refusal.getMessage());
            assertThat(copy.said()).isEqualTo(refusal.said());
            assertThat(GERMAN.text(copy)).isEqualTo(GERMAN.text(refusal));
        });
    }

    private static Refusal sent(Refusal refusal) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(refusal);
            return (Refusal) new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray())).readObject();
        } catch (IOException | ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void a_sentence_has_a_value_for_each_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sentence.of("k", "e", "name"))
                .withMessageContaining("must be even");
    }
}
