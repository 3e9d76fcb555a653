package io.github.formulationmath.solution;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * The polynomial of the law, {@code Σ A_k p^(k−1) + Σ B_k (t−20)^k + Σ C_ik p^k (t−20)^i}, as its three groups of
 * coefficients.
 */
record EthanolWaterFormula(List<Ratio> a, List<Ratio> b, List<List<Ratio>> c) {

    private static final int MIXED_GROUPS = 5;

    private static final Ratio TWENTY = Ratio.of(20);

    static final EthanolWaterFormula BUNDLED = bundled();

    private static EthanolWaterFormula bundled() {
        CsvFormat table = CsvFormat.of(List.of("group", "index", "value", "source", "tag"))
                .withCommentHead();
        Map<String, List<Ratio>> groups = new TreeMap<>();
        for (CsvRow row : table.shipped(
                        EthanolWaterFormula.class, "/io/github/formulationmath/chemistry/ethanol-water.csv")
                .rows()) {
            groups.computeIfAbsent(row.required("group"), group -> new ArrayList<>())
                    .add(Ratio.parse(row.required("value")));
        }
        List<List<Ratio>> mixed = new ArrayList<>();
        for (int i = 1; i <= MIXED_GROUPS; i++) {
            mixed.add(List.copyOf(Objects.requireNonNull(groups.get("C" + i))));
        }
        return new EthanolWaterFormula(
                List.copyOf(Objects.requireNonNull(groups.get("A"))),
                List.copyOf(Objects.requireNonNull(groups.get("B"))),
                List.copyOf(mixed));
    }

    /** In kg/m³, at a mass fraction and a temperature in °C. */
    Ratio density(Ratio p, Ratio celsius) {
        Ratio t = celsius.minus(TWENTY);
        Ratio density = polynomial(a, p);
        if (t.isZero()) {
            return density;
        }
        Ratio power = Ratio.ONE;
        density = density.plus(polynomial(b, t).times(t));
        for (List<Ratio> row : c) {
            power = power.times(t);
            density = density.plus(polynomial(row, p).times(p).times(power));
        }
        return density;
    }

    /** Horner's scheme; the first coefficient is that of the power 0. */
    private static Ratio polynomial(List<Ratio> coefficients, Ratio x) {
        Ratio sum = Ratio.ZERO;
        for (int k = coefficients.size() - 1; k >= 0; k--) {
            sum = sum.times(x).plus(coefficients.get(k));
        }
        return sum;
    }
}
