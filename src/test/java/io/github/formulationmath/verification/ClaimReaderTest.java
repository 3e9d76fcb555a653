package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Cause;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimReaderTest {

    private static final String TEXT = """
            record,group,name,value,figure
            formula,,"Wash, mild",percent,
            size,,packs,12,
            size,,fill mass,50 g,
            size,,overage,5 %,
            balance,,readability,0.1 g,
            balance,,capacity,2000 g,
            part,Betaine 30,Cocamidopropyl Betaine,30 %,
            part,Betaine 30,Aqua,70 %,
            density,,Betaine 30,1.05 g/mL,
            line,water,Aqua,q.s.,498.0 g
            line,water,Betaine 30,20 %,120.0 g
            line,care,"Panthenol ""5"" D",2 %,12.0 g
            total,,,,630 g
            """;

    @Test
    void a_table_is_a_claim() {
        Claim claim = Claims.read(TEXT);
        assertThat(claim.formula().name()).isEqualTo("Wash, mild");
        assertThat(claim.formula().line("Betaine 30").ingredient().parts()).hasSize(2);
        assertThat(claim.formula().line("Betaine 30").ingredient().density()).isPresent();
        assertThat(claim.formula().phases()).hasSize(2);
        assertThat(claim.formula().line("Panthenol \"5\" D").phase()).isEqualTo("care");
        assertThat(Verification.of(claim).batch().mass()).isEqualTo(Amount.mass("630 g"));
        assertThat(claim.balance()).isPresent();
        assertThat(claim.total()).contains(Figure.parse("630 g"));
        // Left out: 600 g of which 78 % are 468 g. The water figure is neither, so no slip explains all.
        Verification verification = Verification.of(claim);
        assertThat(verification.totalAgreement()).contains(Agreement.AGREES);
        assertThat(verification.runnerUp()).hasValueSatisfying(cause -> {
            assertThat(cause.slip()).isEqualTo(Slip.OVERAGE_LEFT_OUT);
            assertThat(cause.missed()).hasSize(1);
        });
    }

    /** The example in the documentation is a claim with its overage left out. */
    @Test
    void the_documented_table_is_a_claim() throws IOException {
        String page = Files.readString(Path.of("docs", "verifying.md"));
        int from = page.indexOf("record,group");
        Verification verification = Verification.of(Claims.read(page.substring(from, page.indexOf("```", from))));
        assertThat(verification.causes().stream().map(Cause::slip)).containsExactly(Slip.OVERAGE_LEFT_OUT);
        assertThat(verification.totalAgreement()).contains(Agreement.DISAGREES);
    }

    @Test
    void other_kinds_and_line_ends() {
        String parts = "record,group,name,value,figure\r\nformula,,p,parts,\r\nsize,,volume,500 mL,\r\n"
                + "size,,density,0.95 g/mL,\r\nline,A,Oil,3,356.3 g\r\nline,A,Wax,1,\r\n";
        assertThat(Verification.of(Claims.read(parts)).batch().mass()).isEqualTo(Amount.mass("475 g"));
        assertThat(Claims.read(parts).figures()).hasSize(1);
        String masses = "record,group,name,value,figure\nformula,,m,masses,\nsize,,mass,10 oz,\nline,A,Oil,30 g,2.5 oz";
        assertThat(Claims.read(masses).formula().lines()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "record,group~Record,group~1~1~first line",
                "formula,,~formular,,~2~1~record is",
                "percent,~percents,~2~23~percent, parts or masses",
                "size,,packs,12,~size,,packs,12~3~1~has 4 fields",
                "size,,packs,12,~size,,packs,1.5,~3~13~whole number",
                "size,,packs,12,~size,,packs,0,~3~13~at least one",
                "size,,packs,12,~size,,boxes,12,~3~13~not known",
                "size,,packs,12,~size,,fill mass,12 g,~4~1~stands twice",
                "50 g~50 grm~4~17~grm",
                "5 %~five~5~15~five",
                "0.1 g~0 g~6~22~0 g",
                "30 %~130 %~8~40~130 %",
                "1.05~0~10~21~0 g/mL",
                "20 %,120.0 g~20 %,120.0~12~28~plain decimal",
                "20 %,120.0 g~-20 %,120.0 g~12~23~-20",
                "line,care~line,water\"~13~11~quote inside",
                "\"Panthenol \"\"5\"\" D\"~\"Panthenol~13~11~never closed",
                "\"Panthenol \"\"5\"\" D\"~\"P\"x~13~14~comma or the end",
                "2 %~200 %~13~31~200",
                "630 g~630 mL~14~10~must be a mass",
                "size,,overage,5 %,~size,,mass,630 g,~5~12~keep the rows of one of them",
                "size,,packs,12,~size,,mass,630 g,~4~17~stands beside \"size mass\"",
                "size,,overage,5 %,~size,,volume,630 mL,~5~14~stands beside",
                "part,Betaine 30,Coc~part,Betaine30,Coc~8~6~no line has the material \"Betaine30\"",
                "density,,Betaine 30~density,,Betain 30~10~10~no line has the material \"Betain 30\"",
                "size,,packs,12,~size,x,packs,12,~3~6~no use for the field group",
                "size,,packs,12,~size,,packs,12,12 g~3~16~no use for the field figure",
                "percent,~percent,7 g~2~31~no use for the field figure",
                "total,,,,630 g~total,,,900 g,630 g~14~9~no use for the field value",
                "total,,,,630 g~total,,sum,,630 g~14~8~no use for the field name",
                "70 %,~70 %,1 g~9~27~no use for the field figure",
                "1.05 g/mL,~1.05 g/mL,1 g~10~31~no use for the field figure",
                "12.0 g~12.0 mL~13~35~add a record of density",
                "q.s.~70 %~14~1~92 %, from which no batch of 100 % follows",
                "q.s.~70 %~14~1~write q.s. for a line that takes what is left",
                "q.s.~70 %~14~1~write the value parts instead of percent",
                "20 %,120.0~98 %,120.0~14~1~the shares beside the q.s. line make 100 %"
            })
    void errors_say_where(String right, String wrong, int line, int column, String message) {
        String text = TEXT.replace(right, wrong);
        assertThat(text).isNotEqualTo(TEXT);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read(text))
                .withMessageStartingWith("line " + line + ", column " + column + ": ")
                .withMessageContaining(message)
                .satisfies(e -> {
                    assertThat(e.line()).isEqualTo(line);
                    assertThat(e.column()).isEqualTo(column);
                });
    }

    /** The lines of a phase together: two formulas with the same lines otherwise could read as one. */
    @Test
    void a_phase_stands_in_one_place() {
        String text = TEXT.replace("line,care", "line,other,A,1 %,1 g\nline,water");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read(text))
                .withMessage(
                        "line 14, column 6: the lines of phase \"water\" stand in two places: move them together, in "
                                + "the order of the formula");
    }

    @Test
    void a_table_without_figures_is_no_claim() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read(TEXT.replaceAll("(?m)^(line.*,)[^,]*$", "$1")))
                .withMessageContaining("no line has a figure");
    }

    @Test
    void a_name_too_long_is_refused_with_its_place() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read(TEXT.replace("\"Wash, mild\"", "x".repeat(900_000))))
                .withMessageStartingWith("line 2, column 10: ");
    }

    @ParameterizedTest
    @CsvSource({"';',semicolons", "'\t',tabs"})
    void another_separator_is_named(String separator, String name) {
        String text = TEXT.replace("\"Wash, mild\"", "Wash").replace(",", separator);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read(text))
                .withMessage("line 1, column 1: the fields are separated by " + name
                        + ": separate them by commas, and write decimals with a point");
    }

    /** The remedy in the message works: 70 : 20 : 2 parts of 630 g are 479.3…, 136.9… and 13.7 g. */
    @Test
    void shares_that_make_no_whole_can_be_read_as_parts() {
        String parts = TEXT.replace("mild\",percent", "mild\",parts")
                .replace("q.s.", "70")
                .replace("20 %,120.0", "20,120.0")
                .replace("2 %,12.0", "2,12.0");
        assertThat(Verification.of(Claims.read(parts))
                        .batch()
                        .line("Aqua")
                        .mass()
                        .canonical())
                .isEqualTo(io.github.formulationmath.number.Ratio.of(630 * 70, 92));
    }

    @Test
    void a_file_is_read(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("claim.csv"), TEXT.replace("Wash, mild", "Wäsche, mild"));
        assertThat(Claim.read(file).formula().name()).isEqualTo("Wäsche, mild");
        Path marked = Files.writeString(folder.resolve("marked.csv"), "\uFEFF" + TEXT);
        assertThat(Claim.read(marked)).isEqualTo(Claims.read(TEXT));
        Path latin = Files.writeString(
                folder.resolve("latin.csv"),
                TEXT.replace("Wash, mild", "Wäsche, mild"),
                java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claim.read(latin))
                .withMessage(
                        latin + ", line 2, column 12: from here on the file is not in UTF-8: save it as CSV in UTF-8");
        assertThatExceptionOfType(java.nio.file.NoSuchFileException.class)
                .isThrownBy(() -> Claim.read(folder.resolve("none.csv")));
        assertThatNullPointerException()
                .isThrownBy(() -> Claim.read((Path) null))
                .withMessage("file");
    }

    @ParameterizedTest
    @CsvSource({"formula", "size", "balance"})
    void what_is_missing_is_named(String record) {
        String text = TEXT.replaceFirst("(?m)^" + record + ".*\n", "");
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read(text))
                .withMessageContaining("ends without a row for");
    }

    @Test
    void nothing_is_too_long_to_refuse() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> Claims.read("x".repeat(2_000_000)))
                .withMessageContaining("longer than");
        assertThatExceptionOfType(CsvException.class).isThrownBy(() -> Claims.read(""));
    }

    @Property(tries = 500)
    void any_text_is_read_or_refused_with_its_place(@ForAll String garbage, @ForAll int at) {
        int cut = Math.floorMod(at, TEXT.length());
        String text = TEXT.substring(0, cut) + garbage + TEXT.substring(cut);
        try {
            Claims.read(text);
        } catch (CsvException e) {
            assertThat(e.line()).isPositive();
            assertThat(e.column()).isPositive();
        }
    }
}
