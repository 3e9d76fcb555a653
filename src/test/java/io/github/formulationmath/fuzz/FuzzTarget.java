package io.github.formulationmath.fuzz;

import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvWriter;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.json.Json;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.verification.Verification;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * What reads text. A text is either refused with the documented exception, or it is read, and what was read prints as a text
 * that reads as the same thing.
 */
enum FuzzTarget {
    RATIO(text -> comesBack(Ratio.parse(text), Ratio::parse)),

    AMOUNT(text -> comesBack(AmountFormat.standard().parse(text), AmountFormat.standard()::parse)),

    AMOUNT_WITH_COMMA(text -> {
        AmountFormat format = AmountFormat.forLocale(Locale.GERMANY);
        Amount<?> amount = format.parse(text);
        same(amount, format.parse(format.format(amount)));
    }),

    MASS_FRACTION(text -> comesBack(MassFraction.parse(text), MassFraction::parse)),

    MASS_CONCENTRATION(text -> comesBack(MassConcentration.parse(text), MassConcentration::parse)),

    VOLUME_FRACTION(text -> comesBack(VolumeFraction.parse(text), VolumeFraction::parse)),

    DENSITY(text -> comesBack(Density.parse(text), Density::parse)),

    MOLECULAR_FORMULA(text -> comesBack(MolecularFormula.parse(text), MolecularFormula::parse)),

    WORDING(FuzzTarget::readWording),

    CSV(FuzzTarget::readCsv),

    LIMITS_CSV(FuzzTarget::readLimits),

    CLAIM_CSV(FuzzTarget::readClaim),

    BATCH_CODE(text -> comesBack(BatchCode.parse(text), BatchCode::parse)),

    RECORD_JSON(text -> {
        BatchRecord record = Json.records().read(text).value();
        same(record, Json.records().read(Json.records().write(record)).value());
    }),

    FORMULA_JSON(text -> {
        Formula formula = Json.formulas().read(text).value();
        same(formula, Json.formulas().read(Json.formulas().write(formula)).value());
    });

    private interface Reading {
        void read(String text);
    }

    private final Reading reading;

    FuzzTarget(Reading reading) {
        this.reading = reading;
    }

    /** Reads a text; throws whatever a reader must not throw. */
    void read(String text) {
        try {
            reading.read(text);
        } catch (IllegalArgumentException e) {
            if (e.getMessage() == null || e.getMessage().isEmpty()) {
                throw new AssertionError(this + " refuses without saying why", e);
            }
        }
    }

    String folder() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Longer texts than this are not read, as {@link Ratio#parse} says; 1e999 prints as one. */
    private static final int READ_AT_MOST = 1000;

    private static <T> void comesBack(T read, Function<String, T> parse) {
        if (read.toString().length() > READ_AT_MOST) {
            return;
        }
        T again;
        try {
            again = parse.apply(read.toString());
        } catch (IllegalArgumentException e) {
            throw new AssertionError("prints what it cannot read: " + read, e);
        }
        same(read, again);
    }

    private static void same(Object read, Object again) {
        if (!read.equals(again)) {
            throw new AssertionError("printed " + read + ", read back " + again);
        }
    }

    private static void readWording(String text) {
        try {
            Wording.read(new StringReader(text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whatever is read is written, and read back. */
    private static void readCsv(String text) {
        CsvFormat format = CsvFormat.of(List.of("a", "b")).withCommentHead();
        List<String> read = rows(format, text);
        same(read, rows(format, CsvWriter.row(format.columns()) + String.join("", read)));
    }

    private static List<String> rows(CsvFormat format, String text) {
        try {
            return format.read("fuzz", new StringReader(text)).rows().stream()
                    .map(row -> CsvWriter.row(List.of(row.text("a"), row.text("b"))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The two files of a table in one text, with a form feed between them. */
    private static void readLimits(String text) {
        int cut = Math.max(0, text.indexOf('\f'));
        try {
            LimitTable.read(
                    "fuzz",
                    new StringReader(text.substring(0, cut)),
                    new StringReader(text.substring(Math.min(text.length(), cut + 1))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A claim that is read can be verified, diagnosis and all. */
    private static void readClaim(String text) {
        try {
            Verification.of(Claim.read(new StringReader(text))).causes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
