package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.io.Serial;
import java.io.Serializable;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * Amounts as text, strictly: a number, a unit, and nothing else.
 *
 * <p>The number is written {@code 12.5}, {@code 1e-3}, {@code 3/4}, {@code 1 3/4}, {@code 1-3/4} or {@code 1¾}, in the digits of any
 * script, with marks between groups of digits where they can be nothing else; the unit by its {@linkplain FormulationUnits#symbolOf
 * symbol} or another spelling of it and no other ({@code grams}, {@code mcg}, {@code ml}, {@code cm3}), or as a product of units:
 * {@code g²}, {@code J/(kg·K)}, {@code g⁻¹}. Names that stand for several units, such as "cup", or "gr" for the
 * gram and the grain, are refused with the units to choose from. A refused text comes back with what may have been meant, in
 * the form that is read. {@link #standard()} is the same in every locale; {@link #forLocale} takes that locale's
 * decimal mark and no other.
 *
 * <p>Example: {@code AmountFormat.standard().parseMass("1 3/4 oz")} is 1.75 oz; printed to one decimal place it is {@code
 * 1.8 oz}.
 *
 * <p>Immutable and thread-safe.
 */
public final class AmountFormat implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final List<String> MASSES = List.of("12.5 g", "1 3/4 oz");
    private static final List<String> NUMBERS = List.of("12.5", "1e-3", "3/4", "1 3/4");

    private static final AmountFormat STANDARD = new AmountFormat('.');

    private final char decimalMark;

    private AmountFormat(char decimalMark) {
        this.decimalMark = decimalMark;
    }

    /**
     * The form for data: decimal point, the same in every locale.
     *
     * @return the standard form
     */
    public static AmountFormat standard() {
        return STANDARD;
    }

    /**
     * The form for people of a locale: its decimal mark, everything else as in {@link #standard()}.
     *
     * @param locale the locale that says what the decimal mark is
     * @return the form with that decimal mark
     */
    public static AmountFormat forLocale(Locale locale) {
        Objects.requireNonNull(locale, "locale");
        char mark = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
        return with(mark);
    }

    static AmountFormat with(char mark) {
        return mark == '.' ? STANDARD : new AmountFormat(mark);
    }

    /**
     * The decimal mark of this form.
     *
     * @return the character between whole part and decimals
     */
    public char decimalMark() {
        return decimalMark;
    }

    /**
     * Reads an amount of any kind.
     *
     * @param text number and unit
     * @return the amount
     * @throws NumberTextException if the text is not a number and a unit
     */
    public Amount<?> parse(String text) {
        AmountText parts = read(text, typed -> AmountText.read(typed, decimalMark, null), MASSES);
        return Amount.ofScale(parts.number(), parts.scale());
    }

    /**
     * Reads a mass.
     *
     * @param text number and unit of mass
     * @return the mass
     * @throws NumberTextException if the text is not a number and a unit of mass
     */
    public Amount<Mass> parseMass(String text) {
        return parse(text, Measured.MASS, "mass, such as g or oz", MASSES);
    }

    /**
     * Reads a volume.
     *
     * @param text number and unit of volume
     * @return the volume
     * @throws NumberTextException if the text is not a number and a unit of volume
     */
    public Amount<Volume> parseVolume(String text) {
        return parse(text, Measured.VOLUME, "volume, such as mL or US fl oz", List.of("12.5 mL", "1 3/4 US fl oz"));
    }

    /**
     * What a text that should be a mass is, if it is a volume; so that a refusal can say what helps.
     *
     * @param text number and unit, perhaps of volume, with a decimal point
     * @return the volume; empty if it is none
     */
    public static Optional<Amount<Volume>> volumeIn(String text) {
        try {
            return Optional.of(Amount.volume(text));
        } catch (NumberTextException e) {
            return Optional.empty();
        }
    }

    /**
     * Reads a temperature.
     *
     * @param text number and unit of temperature
     * @return the temperature
     * @throws NumberTextException if the text is not a number and a unit of temperature
     */
    public Amount<Temperature> parseTemperature(String text) {
        return parse(text, Measured.TEMPERATURE, "temperature: °C, °F or K", List.of("72.5 °C", "160 °F"));
    }

    /**
     * Reads a share whose basis the caller knows; see {@link MassFraction} for one that says it.
     *
     * @param text number and one of %, ‰, ppm
     * @return the share
     * @throws NumberTextException if the text is not a number and such a unit
     */
    public Amount<Dimensionless> parseShare(String text) {
        return parse(text, Measured.NUMBER, "share: %, ‰ or ppm", List.of("0.5 %", "200 ppm"));
    }

    /**
     * Reads a share by mass.
     *
     * @param text number and one of %, ‰, ppm; {@code w/w} may follow
     * @return the share; it keeps the digits as written, with a decimal point
     * @throws NumberTextException if the text is not such a share
     * @throws IllegalArgumentException if the share lies outside 0 to 1
     */
    public MassFraction parseMassFraction(String text) {
        return MassFraction.parse(Objects.requireNonNull(text, "text"), decimalMark);
    }

    /**
     * Reads a share by volume.
     *
     * @param text number, one of %, ‰, ppm, and {@code v/v}
     * @return the share; it keeps the digits as written, with a decimal point
     * @throws NumberTextException if the text is not such a share
     * @throws IllegalArgumentException if the share lies outside 0 to 1
     */
    public VolumeFraction parseVolumeFraction(String text) {
        return VolumeFraction.parse(Objects.requireNonNull(text, "text"), decimalMark);
    }

    /**
     * Reads a mass in a volume.
     *
     * @param text number and a mass per volume, {@code 0,9 g/100 mL}; or number, one of %, ‰, ppm, and {@code w/v}
     * @return the concentration; it keeps the digits as written, with a decimal point
     * @throws NumberTextException if the text is not such a share
     * @throws IllegalArgumentException if the number is below 0
     */
    public MassConcentration parseMassConcentration(String text) {
        return MassConcentration.parse(Objects.requireNonNull(text, "text"), decimalMark);
    }

    /**
     * Reads a density, optionally with its temperature behind the word "at".
     *
     * @param text as {@link Density#parse} reads it, with this decimal mark: {@code "0,92 g/mL"}
     * @return the density
     * @throws NumberTextException if the text is not a density
     * @throws IllegalArgumentException if the number is not above 0
     */
    public Density parseDensity(String text) {
        return new DensityText(decimalMark).parse(Objects.requireNonNull(text, "text"));
    }

    /**
     * Reads a sum of money.
     *
     * @param text a number, a space, the currency: {@code "12,50 EUR"}
     * @return the sum
     * @throws NumberTextException if the text is not of that form
     * @throws IllegalArgumentException if the currency is none, as {@link Money#of} tells
     */
    public Money parseMoney(String text) {
        return Money.parse(Objects.requireNonNull(text, "text"), this);
    }

    /**
     * Reads a number without a unit, such as a number of parts.
     *
     * @param text the number: {@code "2,5"}, {@code "1 3/4"}
     * @return the number
     * @throws NumberTextException if the text is not a number
     */
    public Ratio parseNumber(String text) {
        Objects.requireNonNull(text, "text");
        return read(text, typed -> AmountText.number(typed, decimalMark), NUMBERS);
    }

    private <Q extends Quantity<Q>> Amount<Q> parse(
            String text, Measured kind, String expected, List<String> examples) {
        AmountText parts = read(
                text,
                typed -> {
                    AmountText read = AmountText.read(typed, decimalMark, kind);
                    if (read.scale().kind() != kind) {
                        throw AmountText.refused(
                                typed,
                                "refusal.text.no-" + kind.name().toLowerCase(Locale.ROOT),
                                "\"{unit}\" is not a unit of " + expected,
                                "unit",
                                read.scale().symbol());
                    }
                    return read;
                },
                examples);
        return Amount.ofScale(parts.number(), parts.scale());
    }

    private <T> T read(String text, Function<String, T> strict, List<String> examples) {
        return AmountText.orProposals(
                Objects.requireNonNull(text, "text"),
                decimalMark,
                strict,
                typed -> Repairs.of(typed, decimalMark),
                examples);
    }

    /**
     * Prints an amount exactly; a value without finite decimals is printed as a fraction.
     *
     * @param amount the amount
     * @return value, space, symbol; the value alone for a pure number
     */
    public String format(Amount<?> amount) {
        return format(amount, Rounding.none());
    }

    /**
     * Prints an amount with its value, in its own unit, rounded.
     *
     * @param amount the amount
     * @param rounding the grid and the mode; it decides the number of decimals shown
     * @return value, space, symbol; the value alone for a pure number
     * @throws ArithmeticException if the rounding refuses to lose digits and would have to
     */
    public String format(Amount<?> amount, Rounding rounding) {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(rounding, "rounding");
        String number = rounding.format(amount.exactValue()).replace('.', decimalMark);
        String symbol = amount.scale().symbol();
        return symbol.isEmpty() ? number : number + " " + symbol;
    }

    /**
     * Prints an amount in two units where its own is a pound, a kilogram or a litre: {@code 2 lb 3.5 oz}. What the smaller unit
     * is rounded to is carried: there are never 16 ounces behind a pound.
     *
     * @param amount the amount
     * @param rounding the grid and the mode for the smaller unit
     * @return whole large units, if there are any, and small ones, if there are any or nothing else; an amount in any other unit
     *     as {@link #format(Amount, Rounding)}; {@link #parse} reads it again
     * @throws ArithmeticException if the rounding refuses to lose digits and would have to
     */
    public String formatInTwoUnits(Amount<?> amount, Rounding rounding) {
        Amount<?> small = Objects.requireNonNull(amount, "amount").inSmallerUnit();
        if (small.scale().isSameAs(amount.scale())) {
            return format(amount, rounding);
        }
        Ratio per = amount.scale().factor().dividedBy(small.scale().factor());
        Ratio rounded = Objects.requireNonNull(rounding, "rounding").apply(small.exactValue());
        Ratio whole = rounded.abs().dividedBy(per).floor();
        Ratio rest = rounded.abs().minus(whole.times(per));
        String large = whole.isZero() ? "" : whole + " " + amount.symbol();
        String little = rest.isZero() && !whole.isZero()
                ? ""
                : rounding.format(rest).replace('.', decimalMark) + " " + small.symbol();
        return (rounded.signum() < 0 ? "-" : "") + (large + " " + little).strip();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AmountFormat that && decimalMark == that.decimalMark;
    }

    @Override
    public int hashCode() {
        return Character.hashCode(decimalMark);
    }

    /** The decimal mark, in words. */
    @Override
    public String toString() {
        return "amounts with decimal mark " + decimalMark;
    }
}
