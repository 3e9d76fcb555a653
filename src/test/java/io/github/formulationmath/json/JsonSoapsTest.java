package io.github.formulationmath.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.json.Json.Read;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliGradeTable;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.FatEntry;
import io.github.formulationmath.soap.FatTable;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeBuilder;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.Unsaponified;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Soaps and lyes as JSON: what comes back is what was written, to the last digit and with every source. */
class JsonSoapsTest {

    private static final Source CERTIFICATE = Source.published("certificate of lot 7", "line 2");

    private static final Acid HYDRATE = Acid.of("Citric Acid", "C6H8O7·H2O", 3, "99.5 %", "100 %");

    private static final AlkaliGrade FLAKES = AlkaliGrade.assay(
                    Alkali.SODIUM_HYDROXIDE, "97 %", "100.5 %", AlkaliGrade.Stated.TOTAL_ALKALI)
            .carbonate("0 %", "2 %", Evidence.MAXIMUM_ERROR, Source.published("label of the drum", ""));

    private static final AlkaliGrade STOCK = AlkaliGrade.solution(
            Alkali.POTASSIUM_HYDROXIDE, "44.9 %", "45.2 %", Evidence.COVERAGE_INTERVAL, CERTIFICATE);

    private static List<Fat> fats() {
        return List.of(
                Fat.triglycerides(
                                "Olive",
                                SaponificationValue.ofStandard("184 mg KOH/g", "0.196 g KOH/g", CERTIFICATE),
                                InertMatter.atMost("0.20 %"))
                        .withAcidValue("0.1 mg KOH/g", "1/3 mg KOH/g"),
                Fat.triglycerides(
                        "Coconut",
                        SaponificationValue.ofCertificate(
                                "0.18 g NaOH/g", "1 mg NaOH/g", CoverageFactor.of(2), CERTIFICATE),
                        InertMatter.countedInTheValue()),
                Fat.wax(
                        "Cera Alba",
                        SaponificationValue.within("95 mg KOH/g", "8 mg KOH/g", CERTIFICATE),
                        "17 mg KOH/g",
                        "22 mg KOH/g",
                        InertMatter.countedInTheValue()),
                Fat.wax(
                                "Lanolin",
                                SaponificationValue.within("95 mg KOH/g", "8 mg KOH/g", CERTIFICATE),
                                InertMatter.countedInTheValue())
                        .whoseEstersReact(),
                Fat.fattyAcids(
                        "Stearic Acid",
                        SaponificationValue.ofStandard("194 mg KOH/g", "212 mg KOH/g", CERTIFICATE),
                        InertMatter.atMost("0 %")));
    }

    private static Soap soap() {
        Formula formula = Formula.inMasses("everything")
                .phase("fats")
                .line("Olive", "7/3 g")
                .line("Coconut", "200.00 g")
                .line("Cera Alba", "1 oz")
                .line("Lanolin", "5 g")
                .line("Stearic Acid", "50 g")
                .phase("lye")
                .line("Sodium Hydroxide", "30 g")
                .line("Potassium Hydroxide", "5 g")
                .line("Aqua", "100 g")
                .line("Citric Acid", "1 g")
                .line("Parfum", "2 g")
                .line("Mica", "2 g")
                .build();
        List<Fat> fats = fats();
        return Soap.of(formula)
                .fat("Olive", fats.get(0))
                .fat("Coconut", fats.get(1))
                .fat("Cera Alba", fats.get(2))
                .lateFat("Lanolin", fats.get(3))
                .fat("Stearic Acid", fats.get(4))
                .alkali("Sodium Hydroxide", FLAKES)
                .alkali("Potassium Hydroxide", STOCK)
                .lyeWater("Aqua")
                .acid("Citric Acid", HYDRATE)
                .neither("Parfum");
    }

    @Test
    void a_soap_comes_back_with_every_range_and_source() {
        Soap soap = soap();
        Read<Soap> read = Json.soaps().read(Json.soaps().write(soap));
        assertThat(read.value()).isEqualTo(soap);
        assertThat(read.unknownFields()).isEmpty();
        assertThat(read.value().undeclared()).extracting(line -> line.name()).containsExactly("Mica");
        assertThat(read.value().fatOf("Olive").orElseThrow().saponification().source())
                .isEqualTo(CERTIFICATE);
        assertThat(Json.soaps().write(read.value())).isEqualTo(Json.soaps().write(soap));
    }

    @Test
    void what_is_said_of_one_thing_is_not_taken_for_another() {
        Soap soap = soap();
        String json = Json.soaps().write(soap);
        for (String part : List.of("\"0.20 %\"", "\"late-fat\"", "\"coverage-interval\"", "\"lye-water\"", "\"wax\"")) {
            assertThat(json).contains(part);
        }
        assertThat(Json.soaps().read(json.replace("\"late-fat\"", "\"fat\"")).value())
                .isNotEqualTo(soap);
        assertThat(Json.soaps()
                        .read(json.replace("certificate of lot 7", "certificate of lot 8"))
                        .value())
                .isNotEqualTo(soap);
        assertThat(Json.soaps().read(json.replace("C6H8O7·H2O", "C6H8O7")).value())
                .isNotEqualTo(soap);
    }

    static List<FatEntry> rows() {
        return FatTable.bundled().entries().stream()
                .filter(entry -> entry.basis() == FatEntry.Basis.STANDARD)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void every_row_of_the_table_comes_back(FatEntry row) {
        Fat fat = row.fat(InertMatter.countedInTheValue());
        Soap soap = Soap.of(Formula.inMasses("row").line(fat.name(), "1 kg").build())
                .fat(fat.name(), fat);
        assertThat(Json.soaps().read(Json.soaps().write(soap)).value()).isEqualTo(soap);
    }

    static List<LyeCalculation> lyes() {
        List<LyeCalculation> all = new ArrayList<>();
        List<LyeWater> waters = List.of(
                LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE),
                LyeWater.perAlkali("7/3", LyeWater.Of.ALKALI_AS_WEIGHED),
                LyeWater.ofFats("33 %"));
        for (LyeWater water : waters) {
            for (Reckoned reckoned : Reckoned.values()) {
                LyeBuilder one = LyeCalculation.named("one")
                        .fat(fats().get(0), "1/3 kg")
                        .fat(fats().get(2), "1 oz")
                        .acid(HYDRATE, "10 g")
                        .neither("Parfum", "20.0 g")
                        .alkali(FLAKES)
                        .leaving(Unsaponified.fatOverEquivalence("5 %"), reckoned)
                        .water("Rosa Damascena Flower Water", water);
                all.add(one.build());
                for (AlkaliMixture division : List.of(
                        AlkaliMixture.byMole("60 %"),
                        AlkaliMixture.byPureMass("60 %"),
                        AlkaliMixture.asWeighed("60 %"))) {
                    all.add(LyeCalculation.named("two")
                            .fat(fats().get(1), "500 g")
                            .alkalis(division, FLAKES, STOCK)
                            .leaving(Unsaponified.alkaliShortfall("5 %"), reckoned)
                            .water("Aqua", water)
                            .build());
                }
            }
        }
        for (AlkaliGradeTable.Entry entry : AlkaliGradeTable.bundled().entries()) {
            all.add(LyeCalculation.named("grade")
                    .fat(fats().get(0), "1 kg")
                    .alkali(entry.grade())
                    .leaving(Unsaponified.alkaliShortfall("0 %"), Reckoned.FOR_EVERY_LOT)
                    .water("Aqua", waters.get(0))
                    .build());
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("lyes")
    void what_a_lye_is_reckoned_from_comes_back_and_gives_the_same_lye(LyeCalculation lye) {
        Read<LyeCalculation> read = Json.lyes().read(Json.lyes().write(lye));
        assertThat(read.unknownFields()).isEmpty();
        assertThat(read.value()).isEqualTo(lye);
        assertThat(read.value().alkalis()).isEqualTo(lye.alkalis());
        assertThat(read.value().water()).isEqualTo(lye.water());
        assertThat(read.value().soap()).isEqualTo(lye.soap());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "184 mg KOH/g|0.184|needs its unit|/declared/0/fat/saponificationValue/least",
                "184 mg KOH/g|1840 mg KOH/g|must not be above|/declared/0/fat",
                "\"line\":\"1\"|\"line\":\"99\"|number of no line|/declared/0/line",
                "\"line\":\"2\"|\"line\":\"1\"|declared already|",
                "conforms-to-standard|trust-me|is expected here|/declared/0/fat/saponificationValue/evidence",
                "\"protons\":\"3\"|\"protons\":\"0\"|1 to 12|/declared/8/acid",
                "\"by\":\"publication\"|\"by\":\"nobody\"|is expected here|/declared/0/fat/saponificationValue/source"
            })
    void what_is_wrong_is_refused_with_its_place(String from, String to, String reason, String place) {
        String json = Json.soaps().write(soap()).replaceAll("\\s*([:,{}\\[\\]])\\s*(?=\")", "$1");
        assertThat(json).contains(from);
        assertThatThrownBy(() -> Json.soaps().read(json.replace(from, to)))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining(reason)
                .hasMessageContaining(place == null ? "" : place);
    }

    @Test
    void two_alkalis_without_a_division_are_refused() {
        LyeCalculation lye = lyes().get(1);
        String json = Json.lyes().write(lye);
        assertThat(lye.division()).isPresent();
        assertThatThrownBy(() -> Json.lyes().read(json.replace("\"division\"", "\"dvision\"")))
                .isInstanceOf(RecordFormatException.class)
                .hasMessageContaining("division");
        assertThatThrownBy(() -> Json.lyes().read(Json.soaps().write(soap())))
                .hasMessageContaining("formulation-math/lye");
    }
}
