package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The units of {@link FormulationUnits} with symbol and exact size, which stand here and nowhere else. An amount keeps one
 * of these and needs no {@link Unit} object, so that plain arithmetic never waits for the reference implementation to start.
 */
enum KnownUnit implements UnitScale {
    // Of two units that measure the same (mL, cm³), a foreign unit is taken for the one that stands first.
    GRAM("g", Measured.MASS, "1"),
    KILOGRAM("kg", Measured.MASS, "1000"),
    MILLIGRAM("mg", Measured.MASS, "0.001"),
    MICROGRAM("µg", Measured.MASS, "0.000001"),
    OUNCE("oz", Measured.MASS, "28.349523125"),
    POUND("lb", Measured.MASS, "453.59237"),
    GRAIN("grain", Measured.MASS, "0.06479891"),
    TROY_OUNCE("oz t", Measured.MASS, "31.1034768"),
    MILLILITRE("mL", Measured.VOLUME, "1"),
    CUBIC_CENTIMETRE("cm³", Measured.VOLUME, "1"),
    CENTILITRE("cL", Measured.VOLUME, "10"),
    DECILITRE("dL", Measured.VOLUME, "100"),
    LITRE("L", Measured.VOLUME, "1000"),
    US_FLUID_OUNCE("US fl oz", Measured.VOLUME, "29.5735295625"),
    IMPERIAL_FLUID_OUNCE("imp fl oz", Measured.VOLUME, "28.4130625"),
    US_CUP("US cup", Measured.VOLUME, "236.5882365"),
    US_TABLESPOON("US tbsp", Measured.VOLUME, "14.78676478125"),
    US_TEASPOON("US tsp", Measured.VOLUME, "4.92892159375"),
    METRIC_CUP("metric cup", Measured.VOLUME, "250"),
    METRIC_TABLESPOON("metric tbsp", Measured.VOLUME, "15"),
    METRIC_TEASPOON("metric tsp", Measured.VOLUME, "5"),
    ONE("", Measured.NUMBER, "1"),
    PERCENT("%", Measured.NUMBER, "0.01"),
    PER_MILLE("‰", Measured.NUMBER, "0.001"),
    PPM("ppm", Measured.NUMBER, "0.000001"),
    CELSIUS("°C", Measured.TEMPERATURE, "1", "273.15"),
    KELVIN("K", Measured.TEMPERATURE, "1"),
    FAHRENHEIT("°F", Measured.TEMPERATURE, "5/9", "45967/180");

    private final String symbol;
    private final Measured kind;
    private final Ratio factor;
    private final Ratio offset;
    private final boolean counting;

    KnownUnit(String symbol, Measured kind, String factor) {
        this(symbol, kind, factor, "0");
    }

    KnownUnit(String symbol, Measured kind, String factor, String offset) {
        this.symbol = symbol;
        this.kind = kind;
        this.factor = Ratio.parse(factor);
        this.offset = Ratio.parse(offset);
        this.counting = this.factor.equals(Ratio.ONE) && this.offset.isZero();
    }

    @Override
    public Unit<?> unit() {
        return FormulationUnits.unitOf(this);
    }

    @Override
    public Measured kind() {
        return kind;
    }

    @Override
    public Ratio factor() {
        return factor;
    }

    @Override
    public Ratio offset() {
        return offset;
    }

    @Override
    public boolean isCounting() {
        return counting;
    }

    @Override
    public String symbol() {
        return symbol;
    }

    @Override
    public boolean isSameAs(UnitScale other) {
        return this == other;
    }

    /** The known unit that measures exactly the same as a foreign one. */
    static @Nullable KnownUnit findSame(ForeignUnit foreign) {
        for (KnownUnit known : values()) {
            if (known.kind == foreign.kind()
                    && known.factor.equals(foreign.factor())
                    && known.offset.equals(foreign.offset())) {
                return known;
            }
        }
        return null;
    }

    /** The unit in which less than one of another is told; null for units that have none. */
    static @Nullable KnownUnit partOf(UnitScale larger) {
        return larger == POUND ? OUNCE : larger == KILOGRAM ? GRAM : larger == LITRE ? MILLILITRE : null;
    }

    static KnownUnit bySymbol(String symbol) {
        for (KnownUnit known : values()) {
            if (known.symbol.equals(symbol)) {
                return known;
            }
        }
        throw new IllegalArgumentException("no unit has the symbol \"" + symbol + "\"");
    }
}
