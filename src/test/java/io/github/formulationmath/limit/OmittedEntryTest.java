package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.CasNumbers;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the bundled table leaves out is told, and is what the raw exports say. */
class OmittedEntryTest {

    private static final LimitTable EU = LimitTable.eu2024February();
    private static final Pattern CAS = Pattern.compile("(?<![0-9-])[0-9]{2,7}-[0-9]{2}-[0-9](?![0-9-])");

    private static LimitReport report(Substance substance) {
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("Material", substance), MassFraction.parse("1 %"))
                .build();
        Product paste = Product.rinseOff().on("oral").ofKind("toothpaste").inForm("paste");
        return LimitChecker.of(EU, paste, DecisionRule.worstCase()).check(formula);
    }

    /** Regulation (EC) No 1223/2009, Annex III, entries 14, 31, 35, 59, 60, 61; CAS numbers as in the export. */
    @ParameterizedTest
    @CsvSource({
        "Sodium Fluoride, 31",
        "Stannous Fluoride, 35",
        "TALC, 59",
        "Cocamide DEA, 60",
        "Ethanolamine, 61",
        "hydroquinone, 14"
    })
    void a_substance_of_an_entry_left_out_is_not_without_limit(String name, String entry) {
        LimitReport report = report(Substance.of(name));
        assertThat(report.notTranscribed()).singleElement().satisfies(finding -> {
            assertThat(finding.substance().name()).isEqualTo(name);
            assertThat(finding.entries()).anyMatch(omitted -> omitted.number().equals(entry));
        });
        assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Aqua");
        assertThat(report.outcome()).isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(String.join("\n", report.describe(Wording.english())))
                .contains(name + ": Annex III, entry " + entry)
                .contains("speaks of it; not transcribed (");
        assertThat(report.toString()).contains("not transcribed: [" + name + "]");
    }

    @Test
    void a_cas_number_is_enough() {
        assertThat(report(Substance.of("NaF").withCas("7681-49-4")).notTranscribed())
                .singleElement()
                .satisfies(finding -> assertThat(finding.entries())
                        .extracting(OmittedEntry::toString)
                        .containsExactly("Annex III, entry 31 (Sodium fluoride)"));
    }

    @Test
    void every_entry_left_out_is_in_the_table_and_all_but_the_deleted_ones_name_something() {
        assertThat(EU.omitted()).hasSize((int) SnapshotTable.OMITTED.stream()
                .map(SnapshotTable::key)
                .distinct()
                .count());
        assertThat(EU.omitted())
                .filteredOn(entry -> !entry.reason().contains("moved or deleted"))
                .allSatisfy(entry -> assertThat(entry.names()).isNotEmpty());
    }

    /** Read from the raw exports with a general-purpose CSV library and nothing of ours. */
    @Test
    void names_and_numbers_are_those_of_the_raw_exports() {
        for (OmittedEntry omitted : EU.omitted()) {
            Set<String> numbers = new HashSet<>();
            StringBuilder text = new StringBuilder();
            for (RawEntry raw : RawEntry.annex(omitted.annex())) {
                if (raw.key().equals(omitted.annex() + " " + omitted.number() + " " + omitted.name())) {
                    Matcher found = CAS.matcher(raw.casNumbers());
                    while (found.find()) {
                        numbers.add(found.group());
                    }
                    text.append(raw.name())
                            .append('\n')
                            .append(raw.everything())
                            .append('\n');
                }
            }
            numbers.removeIf(number -> !CasNumbers.hasCheckDigit(number));
            if (!omitted.reason().contains("moved or deleted")) {
                assertThat(new HashSet<>(omitted.casNumbers()))
                        .as(omitted.toString())
                        .isEqualTo(numbers);
            }
            String all = PrintedText.normalised(text.toString()).toUpperCase(Locale.ROOT);
            assertThat(omitted.names())
                    .as(omitted.toString())
                    .allSatisfy(name -> assertThat(all).contains(name.toUpperCase(Locale.ROOT)));
        }
    }

    @Test
    void a_table_of_ones_own_can_tell_what_it_leaves_out() {
        OmittedEntry entry =
                new OmittedEntry("H", "1", "Some resin", "no figure", List.of("Some Resin"), List.of(), EntryText.NONE);
        LimitTable table = LimitTable.of("house", List.of()).withOmitted(List.of(entry));
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("some resin", "1 %")
                .build();
        LimitReport report = LimitChecker.of(table, Product.leaveOn(), DecisionRule.worstCase())
                .check(formula);
        assertThat(report.notTranscribed()).hasSize(1);
        assertThat(table).isNotEqualTo(LimitTable.of("house", List.of()));
        assertThat(LimitTable.of("house", List.of()).notHeld()).isEmpty();
    }

    private static List<OmittedEntry> read(String entry, String name) throws IOException {
        return LimitTableReader.omitted(
                LimitTableReader.OMITTED.read(
                        "entries",
                        new StringReader(
                                "annex,ref_no,substance_group,reason,scope_as_printed,limit_as_printed,conditions,"
                                        + "warning_text\n" + entry)),
                LimitTableReader.OMITTED_NAMES.read(
                        "names", new StringReader("annex,ref_no,substance_group,name,cas_number\n" + name)));
    }

    /** Regulation (EC) No 1223/2009, Annex III, entry 31, columns d to f. */
    @Test
    void the_text_of_the_entry_is_told() {
        LimitReport report = report(Substance.of("Sodium Fluoride"));
        EntryText text = report.notTranscribed().get(0).entries().get(0).text();
        assertThat(text.scope()).isEqualTo("Oral products");
        assertThat(text.limit()).startsWith("0,15 %");
        assertThat(String.join("\n", report.describe(Wording.english())))
                .contains("As printed: " + text.scope() + "; " + text.limit());
    }

    @Test
    void texts_are_those_of_the_raw_exports() {
        for (OmittedEntry omitted : EU.omitted()) {
            assertThat(RawEntry.annex(omitted.annex()))
                    .filteredOn(
                            raw -> raw.key().equals(omitted.annex() + " " + omitted.number() + " " + omitted.name()))
                    .singleElement()
                    .satisfies(raw -> assertThat(omitted.text())
                            .isEqualTo(new EntryText(
                                    PrintedText.normalised(raw.productType()),
                                    PrintedText.normalised(raw.concentration()),
                                    PrintedText.normalised(raw.conditions()),
                                    PrintedText.normalised(raw.wording()),
                                    "",
                                    "",
                                    "")));
        }
    }

    @Test
    void an_entry_that_stands_twice_is_refused() {
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read("III,1,X,oral,,,,\nIII,1,X,nails,,,,\n", "III,1,X,Xylo,\n"))
                .withMessageStartingWith("entries, line 3, column 5: ref_no is \"1\" with this name a second time");
    }

    @Test
    void a_file_of_names_without_its_entry_is_refused() throws IOException {
        assertThat(read("III,1,X,oral,,,,\n", "III,1,X,Xylo,\n"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.names()).containsExactly("Xylo"));
        assertThatExceptionOfType(CsvException.class)
                .isThrownBy(() -> read("III,1,X,oral,,,,\n", "III,2,X,Xylo,\n"))
                .withMessageStartingWith("names, line 2, column 5: ref_no is \"2\", no entry left out");
    }
}
