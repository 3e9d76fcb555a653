package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reference.ReferenceTable;
import io.github.formulationmath.reference.ReferenceTable.Row;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FatTableTest {

    private static final String HEADER = "inci,name,nature,basis,least,greatest,unit,as_printed,iodine_least,"
            + "iodine_greatest,unsaponifiable_least,unsaponifiable_greatest,acid_least,acid_greatest,locator,read_at,"
            + "read_on,source,tag\n";
    private static final String READ = ",certificate,binder 3,2026-11-20,Certificate 17 of the mill,SEEN\n";

    static List<Row> rows() {
        return ReferenceTable.read("shared/chemistry/saponification-values.csv").rows();
    }

    static List<FatEntry> entries() {
        return FatTable.bundled().entries();
    }

    @Test
    void the_library_holds_the_rows_of_the_file() {
        List<Row> rows = rows();
        assertThat(entries()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            FatEntry entry = entries().get(i);
            assertThat(entry.inci()).isEqualTo(rows.get(i).text("inci"));
            assertThat(entry.range().least())
                    .isEqualTo(AlkaliNumber.parse(rows.get(i).text("least") + " mg KOH/g"));
            assertThat(entry.range().greatest())
                    .isEqualTo(AlkaliNumber.parse(rows.get(i).text("greatest") + " mg KOH/g"));
            assertThat(entry.provenance().work()).isEqualTo(rows.get(i).text("source"));
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void every_row_says_where_it_stands_and_where_it_was_read_and_none_is_from_memory(Row row) {
        assertThat(List.of("source", "locator", "read_at", "as_printed", "inci", "name"))
                .allSatisfy(column -> assertThat(row.text(column)).isNotBlank());
        assertThat(row.text("read_on")).matches("20\\d\\d-\\d\\d-\\d\\d");
        assertThat(row.text("tag")).isIn("SEEN", "SEEN-2ND");
        assertThat(row.text("unit")).isEqualTo("mg KOH/g");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void every_value_lies_where_fats_lie(Row row) {
        BigDecimal least = row.decimal("least");
        BigDecimal greatest = row.decimal("greatest");
        assertThat(least).isPositive().isLessThanOrEqualTo(greatest);
        assertThat(greatest).isLessThanOrEqualTo(new BigDecimal("560"));
        if (!row.text("acid_greatest").isEmpty()) {
            assertThat(row.decimal("acid_greatest")).isLessThan(least);
        }
    }

    /** SV = 56100 / SE with the book's own 56.1, in arithmetic that is not the library's. */
    @Test
    void the_rows_of_1908_are_the_printed_equivalents_rounded_outward() {
        Pattern printed = Pattern.compile("saponification equivalent ([0-9.]+)(?: to ([0-9.]+))?; [0-9]+ samples?");
        List<Row> book = rows().stream()
                .filter(row -> row.text("source").startsWith("W. H. Simmons"))
                .toList();
        assertThat(book).hasSize(16);
        for (Row row : book) {
            Matcher matcher = printed.matcher(row.text("as_printed"));
            assertThat(matcher.matches()).as(row.text("as_printed")).isTrue();
            BigDecimal lightest = new BigDecimal(matcher.group(1));
            BigDecimal heaviest = matcher.group(2) == null ? lightest : new BigDecimal(matcher.group(2));
            BigDecimal constant = new BigDecimal("56100");
            assertThat(row.decimal("least")).isEqualTo(constant.divide(heaviest, 2, RoundingMode.FLOOR));
            assertThat(row.decimal("greatest")).isEqualTo(constant.divide(lightest, 2, RoundingMode.CEILING));
            assertThat(row.text("basis")).isEqualTo("samples");
        }
    }

    @Test
    void sources_that_differ_stand_side_by_side() {
        List<FatEntry> coconut = FatTable.bundled().of("coconut oil");

        assertThat(coconut).hasSize(4).isEqualTo(FatTable.bundled().of("COCOS NUCIFERA OIL"));
        assertThat(coconut.stream().map(entry -> entry.provenance().work()).distinct())
                .hasSize(4);
        assertThat(coconut.stream().map(entry -> entry.range().least().toString()))
                .contains("248 mg KOH/g", "250 mg KOH/g");
    }

    @Test
    void one_fat_is_asked_for_with_its_source_and_carries_it() {
        FatEntry codex = FatTable.bundled().entry("Cocos Nucifera Oil", "Codex CXS 210");
        SaponificationValue value = codex.ofConformingLot();

        assertThat(value.range())
                .isEqualTo(Interval.of(AlkaliNumber.parse("248 mg KOH/g"), AlkaliNumber.parse("265 mg KOH/g")));
        assertThat(value.evidence()).isEqualTo(Evidence.CONFORMS_TO_STANDARD);
        assertThat(value.source().citation())
                .startsWith("Codex CXS 210-1999, table 2; as quoted at ")
                .endsWith(" on 2026-11-26");
        assertThat(codex.iodine())
                .contains(Interval.of(IodineValue.parse("6.3 g I2/100 g"), IodineValue.parse("10.6 g I2/100 g")));
        assertThat(codex.fat(InertMatter.atMost("0.2 %")).nature()).isEqualTo(Fat.Nature.TRIGLYCERIDES);
    }

    @Test
    void a_choice_that_fits_no_source_or_several_is_refused_with_the_choices() {
        FatTable table = FatTable.bundled();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.entry("Coconut oil", "Codex CXS 33"))
                .withMessageContaining("fits no entry")
                .withMessageContaining("Codex CXS 210-1999");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.entry("Hydrogenated Vegetable Oil", "USP 29"))
                .withMessageContaining("fits 2 entries")
                .withMessageContaining("type II");
        assertThat(table.entry("Hydrogenated vegetable oil, type II", "USP 29")
                        .range()
                        .greatest())
                .isEqualTo(AlkaliNumber.parse("200 mg KOH/g"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.of("Snake oil"))
                .withMessageContaining("\"Snake oil\"")
                .withMessageContaining("Castor oil");
    }

    /** A guarantee cannot rest on one sample of 1908. */
    @Test
    void no_lot_conforms_to_samples() {
        FatEntry olive = FatTable.bundled().entry("Olive oil", "W. H. Simmons");
        assertThat(olive.range().least()).isEqualTo(AlkaliNumber.parse("194.79 mg KOH/g"));
        assertThatThrownBy(olive::ofConformingLot)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("ofCertificate");
        assertThatThrownBy(() -> olive.fat(InertMatter.countedInTheValue())).isInstanceOf(IllegalStateException.class);
    }

    /** The low end of a wax is its acid value: boiling it with watery lye leaves it whole (USP 35, yellow wax, test for fats). */
    @Test
    void a_wax_is_a_wax() {
        Fat carnauba = FatTable.bundled().entry("Carnauba wax", "USP 35").fat(InertMatter.countedInTheValue());
        assertThat(carnauba.nature()).isEqualTo(Fat.Nature.WAX);
        assertThat(carnauba.leastTaken())
                .isEqualTo(AlkaliNumber.parse("2 mg KOH/g").gramsPerGram());
        assertThat(carnauba.greatestDemand())
                .isEqualTo(AlkaliNumber.parse("95 mg KOH/g").molesPerGram());
    }

    /**
     * Published and wrong: palm kernel oil 280.5 ± 56.1 (Curr. Res. J. Biol. Sci. 2014), coconut oil 140.25 to 155.68 (Scientific
     * African 2023), 1880 from a school exercise with 13.44 kg for 134.4 kg; triacetin, no fat, would have 771.
     */
    @ParameterizedTest
    @CsvSource({
        "224.4, 336.6, Fat.wax",
        "140.25, 155.68, Fat.wax",
        "1880, 1880, beyond which there is no fat",
        "771, 771, beyond which there is no fat",
        "0, 190, above 0",
        "196, 184, least",
        "87, 104, Fat.wax"
    })
    void what_no_fat_has_is_refused_with_its_place(String least, String greatest, String remedy) {
        assertThatThrownBy(() ->
                        table("X Oil,X,triglycerides,standard," + least + "," + greatest + ",mg KOH/g,x,,,,,," + READ))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("mine, line 2, column ")
                .hasMessageContaining(remedy);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "X Oil,X,triglycerides,standard,184,196,,x,,,,,,,t,b,2026-11-20,W,SEEN|unit is empty",
                "X Oil,X,triglycerides,standard,184,196,mg/g,x,,,,,,,t,b,2026-11-20,W,SEEN|mg KOH/g",
                "X Oil,X,triglycerides,standard,\"184,5\",196,mg KOH/g,x,,,,,,,t,b,2026-11-20,W,SEEN|plain number",
                "X Oil,X,butter,standard,184,196,mg KOH/g,x,,,,,,,t,b,2026-11-20,W,SEEN|triglycerides, fatty acids, wax",
                "X Oil,X,triglycerides,typical,184,196,mg KOH/g,x,,,,,,,t,b,2026-11-20,W,SEEN|standard, samples",
                "X Oil,X,triglycerides,standard,184,196,mg KOH/g,x,,,,,,,t,b,2026-11-20,W,MEMORY|SEEN, SEEN-2ND",
                "X Oil,X,triglycerides,standard,184,196,mg KOH/g,x,,,,,,,t,b,2026-11-20,,SEEN|source is empty",
                "X Oil,X,triglycerides,standard,184,196,mg KOH/g,x,,,,,,,t,b,,W,SEEN|read_on is empty",
                "X Oil,X,triglycerides,standard,184,196,mg KOH/g,x,,,,,,,t,,2026-11-20,W,SEEN|read_at is empty",
                "X Oil,X,triglycerides,standard,184,196,mg KOH/g,x,75,,,,,,t,b,2026-11-20,W,SEEN|iodine_greatest",
                "X Wax,X,wax,standard,87,104,mg KOH/g,x,,,,,17,240,t,b,2026-11-20,W,SEEN|free acids already",
            })
    void a_row_that_does_not_say_all_is_refused_with_its_place_and_what_to_write(String row, String remedy) {
        assertThatThrownBy(() -> table(row + "\n"))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("mine, line 2, column ")
                .hasMessageContaining(remedy);
    }

    @Test
    void the_header_is_the_one_of_the_file() {
        assertThat(FatTable.header() + "\n").isEqualTo(HEADER);
        assertThat(FatTable.header())
                .isEqualTo(String.join(
                        ",",
                        ReferenceTable.read("shared/chemistry/saponification-values.csv")
                                .columns()));
    }

    /** As a page, a spreadsheet or a PDF gives it: spaces, kinds of hyphen and letters in two characters. */
    @Test
    void a_fat_is_found_in_every_spelling_that_is_one_name() {
        FatTable own = table("Cre\u0301me-Nut Seed Oil,\"Cre\u0301me-nut oil, raw\","
                + "triglycerides,standard,184,196,mg KOH/g,x,,,,,," + READ);
        for (String written : List.of(
                "Cr\u00e9me-Nut Seed Oil",
                "CR\u00c9ME\u2011NUT  SEED\u00a0OIL",
                "cr\u00e9me-nut\u200b oil, raw",
                " cr\u00e9me-nut  oil")) {
            assertThat(own.of(written)).as(written).hasSize(1);
        }
        assertThatThrownBy(() -> own.of("cr\u00e9me-nut")).hasMessageContaining("which the table does not have");
    }

    /** Two spellings of one name are one fat. */
    @Test
    void a_source_that_says_two_things_in_two_spellings_is_refused() {
        String rest = ",triglycerides,standard,184,196,mg KOH/g,x,,,,,," + READ;
        assertThatThrownBy(() -> table("Nut Oil,X y" + rest + "NUT\u00a0OIL,X  Y" + rest))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("tell them apart by name");
    }

    @Test
    void a_source_that_says_two_things_of_one_fat_is_refused() {
        String row = "X Oil,X,triglycerides,standard,184,196,mg KOH/g,x,,,,,," + READ;
        assertThatThrownBy(() -> table(row + row))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("mine, line 3, column ")
                .hasMessageContaining("tell them apart by name");
    }

    /** A value stated for sodium hydroxide is read as what it is: times M(KOH)/M(NaOH), 40 % more. */
    @Test
    void a_table_of_ones_own_is_read_as_easily(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("own.csv");
        Files.writeString(
                file,
                "# certificates of our mill\n" + HEADER
                        + "X Oil,Our oil,triglycerides,standard,0.131,0.140,g NaOH/g,0.131-0.140,,,,,," + READ);

        FatTable own = FatTable.read(file);

        assertThat(own.remarks()).containsExactly("certificates of our mill");
        SaponificationValue value = own.entry("our oil", "certificate 17").ofConformingLot();
        assertThat(value.range())
                .isEqualTo(Interval.of(AlkaliNumber.parse("0.131 g NaOH/g"), AlkaliNumber.parse("0.140 g NaOH/g")));
        assertThat(value.source())
                .isEqualTo(
                        Source.published("Certificate 17 of the mill", "certificate; read at binder 3 on 2026-11-20"));
    }

    private static FatTable table(String rows) {
        try {
            return FatTable.read("mine", new StringReader(HEADER + rows));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
