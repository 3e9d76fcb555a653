package io.github.formulationmath.printed;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.sheet.LabelText;
import io.github.formulationmath.sheet.RecordSheet;
import io.github.formulationmath.sheet.SeriesSheet;
import io.github.formulationmath.sheet.SoapSheet;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.verification.Verification;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** On a page in German or French the numbers have a comma: the same numbers in the same order as on the English page. */
class LocaleOfSheetsTest {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
    private static final Pattern POINT = Pattern.compile("[0-9]\\.[0-9]");

    private static final Formula CREAM = Formula.inPercent("Oat cream")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "3.33 %")
            .phase("oil")
            .line("Avena Sativa Kernel Oil", "12.5 %")
            .line("Benzoic Acid", "0.45 %")
            .build();

    private static final WeighingPlan PLAN = WeighingPlan.of(
            Batch.of(CREAM, BatchSize.ofMass("412.5 g")),
            Balance.of("0.1 g", "2.5 kg").named("bench"));

    private static final Formula BAR = Formula.inMasses("bar")
            .line("Olive", "700.5 g")
            .line("Sodium Hydroxide", "88.6 g")
            .line("Aqua", "200.2 g")
            .build();

    static Map<String, Function<Wording, Document>> pages() {
        Map<String, Function<Wording, Document>> pages = new LinkedHashMap<>();
        ExpectedProduct expected = ExpectedProduct.of(PLAN, WeighingMethod.TARE_EACH);
        pages.put("batch sheet", words -> BatchSheet.of(PLAN, words));
        pages.put(
                "what it is sure to make",
                words -> BatchSheet.of(
                        expected,
                        Tolerances.of("2.5 %").withPhase("oil", "1.25 %").withLine("Glycerin", "0.5 %"),
                        words));
        pages.put("record", words -> RecordSheet.of(record(), words));
        pages.put(
                "label",
                words -> LabelText.of(record())
                        .with(Label.of(LabelRule.eu()).list(CREAM))
                        .document(words));
        pages.put("soap", words -> SoapSheet.of(soap(), expectedBar(), words));
        pages.put("alkali", words -> AlkaliBalance.of(soap(), expectedBar()).document(words));
        pages.put("limits", words -> Checkers.LEAVE_ON.check(expected).document(words));
        pages.put(
                "verification",
                words -> Verification.of(Claim.about(CREAM, BatchSize.ofMass("412.5 g"))
                                .withFigure("Glycerin", "13.7 g")
                                .withFigure("Avena Sativa Kernel Oil", "15.6 g")
                                .withFigure("Benzoic Acid", "1.9 g")
                                .withTotal("412.5 g"))
                        .report(words));
        pages.put(
                "working",
                words -> PLAN.line("Glycerin")
                        .reading()
                        .working()
                        .document(Style.everything().with(words)));
        pages.put(
                "series",
                words -> SeriesSheet.of(
                        TrialSeries.of(
                                        List.of(trial("plain", "3.5 %"), trial("rich", "7.25 %")),
                                        io.github.formulationmath.plan.Bench.of(Balance.of("0.1 g", "2.5 kg")),
                                        "20.5 g",
                                        "5.5 %")
                                .best()
                                .orElseThrow(),
                        words));
        return pages;
    }

    private static Formula trial(String name, String oil) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Avena Sativa Kernel Oil", oil)
                .build();
    }

    private static BatchRecord record() {
        Readings readings = Readings.of(
                PLAN,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(CREAM.line("Aqua"), "345.2 g"),
                        Reading.of(CREAM.line("Glycerin"), "13.9 g"),
                        Reading.of(CREAM.line("Benzoic Acid"), "1.9 g")
                                .on(Balance.of("0.05 g", "200.5 g").named("pocket"))));
        return BatchRecord.of(BatchCode.of("OATCR", LocalDate.of(2026, 11, 25), 1), readings, Tolerances.of("2.5 %"))
                .with(BenchEntry.weighedAgain(Amount.mass("390.5 g"), CREAM.line("Aqua")))
                .with(BenchEntry.addition(LineAddition.of(CREAM.line("Aqua"), Amount.mass("6.5 g"))))
                .filled(Amount.mass("8.5 g"), PackFill.ofMass("50.5 g"));
    }

    private static Soap soap() {
        return Soap.of(BAR)
                .fat(
                        "Olive",
                        Fat.triglycerides(
                                "Olive",
                                SaponificationValue.ofStandard(
                                        "184.5 mg KOH/g",
                                        "196.5 mg KOH/g",
                                        io.github.formulationmath.reckoning.Source.published("example of a test", "")),
                                InertMatter.countedInTheValue()))
                .alkali(
                        "Sodium Hydroxide",
                        AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "97.5 %", "99 %", AlkaliGrade.Stated.HYDROXIDE)
                                .carbonate(
                                        "0 %",
                                        "1.5 %",
                                        io.github.formulationmath.soap.Evidence.MAXIMUM_ERROR,
                                        io.github.formulationmath.reckoning.Source.published("example of a test", "")))
                .lyeWater("Aqua");
    }

    private static ExpectedProduct expectedBar() {
        return ExpectedProduct.of(
                WeighingPlan.of(Batch.of(BAR, BatchSize.ofMass("989.3 g")), Balance.of("0.1 g", "2.5 kg")),
                WeighingMethod.TARE_EACH);
    }

    static List<String> names() {
        return List.copyOf(pages().keySet());
    }

    @ParameterizedTest
    @MethodSource("names")
    void the_same_numbers_stand_there_with_a_comma(String name) {
        Function<Wording, Document> page = pages().get(name);
        String english = text(page.apply(Wording.english()));
        assertThat(english).containsPattern(POINT);
        for (Wording words : List.of(Wording.german(), Wording.french())) {
            String other = text(page.apply(words));
            assertThat(other).doesNotContainPattern(POINT);
            assertThat(numbers(other)).isEqualTo(numbers(english).replace('.', ','));
        }
    }

    /** What a reader sees, without places that name a source: those are quoted as they are printed. */
    private static String text(Document page) {
        return page.print(Format.TEXT).replaceAll("ISO [0-9]+|(?:Regulation|Annex)[^.;)]*", " ");
    }

    private static String numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(found -> found.group())
                .sorted()
                .toList()
                .toString()
                .replace(", ", " ");
    }
}
