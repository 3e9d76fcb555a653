package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.choice.Demand;
import io.github.formulationmath.choice.Equipment;
import io.github.formulationmath.choice.EquipmentAnswer;
import io.github.formulationmath.choice.EquipmentChoice;
import io.github.formulationmath.choice.ServingPlan;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.shelf.LargestBatch;
import io.github.formulationmath.shelf.Lot;
import io.github.formulationmath.shelf.Makeable;
import io.github.formulationmath.shelf.Picking;
import io.github.formulationmath.shelf.Shelf;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What shelf, series and choice tell as a least or a greatest is read back from the text and asked for by itself: it has to be given, and to be
 * the end but for a thousandth.
 */
class PrintedEndsOfTheBenchTest {

    private static final int CASES = Cases.of(60);
    private static final String NUMBER = "((?:[0-9]+/)?[0-9.]+ (?:g|oz|lb|kg))(?: ≈ [0-9.]+ (?:g|oz|lb|kg))?";
    private static final Pattern LARGEST = Pattern.compile(": " + NUMBER + ", limited by");
    private static final Pattern MORE = Pattern.compile(NUMBER + " more (material [0-9])");
    private static final Pattern NEXT = Pattern.compile("material [0-9] " + NUMBER + "$");
    private static final Pattern UP_TO = Pattern.compile(": up to " + NUMBER + "$");
    private static final Pattern MISSING = Pattern.compile("(material [0-9]) " + NUMBER);
    private static final Pattern IN_ALL = Pattern.compile(", " + NUMBER + " in all:");
    private static final Pattern LEAST_IN_ALL = Pattern.compile("made in all is " + NUMBER + ",");
    private static final Pattern TAKEN = Pattern.compile("(material [0-9]): " + NUMBER + " would be taken");
    private static final Picking TODAY = Picking.on("2026-11-26");
    private static final BigDecimal A_THOUSANDTH_LESS = new BigDecimal("0.999");

    private final Dice dice = new Dice(151_513);

    /** A fraction in grams, read from a text. */
    private record Grams(BigDecimal above, BigDecimal below) {

        static Grams of(String text) {
            String[] parts = text.split(" ");
            String[] fraction = parts[0].split("/");
            BigDecimal unit = switch (parts[1]) {
                case "oz" -> new BigDecimal("28.349523125");
                case "lb" -> new BigDecimal("453.59237");
                case "kg" -> new BigDecimal(1000);
                default -> BigDecimal.ONE;
            };
            return new Grams(
                    new BigDecimal(fraction[0]).multiply(unit),
                    fraction.length == 1 ? BigDecimal.ONE : new BigDecimal(fraction[1]));
        }

        Grams plus(Grams more) {
            return new Grams(above.multiply(more.below).add(more.above.multiply(below)), below.multiply(more.below));
        }

        /** Whether part/whole of this is no more than another. */
        boolean isEnough(int part, int whole, Grams there) {
            return above.multiply(BigDecimal.valueOf(part))
                            .multiply(there.below)
                            .compareTo(there.above.multiply(below).multiply(BigDecimal.valueOf(whole)))
                    <= 0;
        }

        Grams times(BigDecimal factor) {
            return new Grams(above.multiply(factor), below);
        }
    }

    private int[] parts() {
        int[] parts = new int[dice.between(2, 5)];
        Arrays.setAll(parts, i -> i == 0 ? dice.between(40, 400) : dice.between(1, 60));
        return parts;
    }

    private static Formula formula(String name, int[] parts) {
        FormulaBuilder builder = Formula.inParts(name);
        for (int i = 0; i < parts.length; i++) {
            builder.line("material " + i, Integer.toString(parts[i]));
        }
        return builder.build();
    }

    private static Optional<String> told(Pattern pattern, Object answer) {
        Matcher matcher = pattern.matcher(answer.toString());
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }

    private List<String> stock(int lines) {
        List<String> stock = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            stock.add(dice.of("0.", "1.", "12.", "7.") + dice.between(1, 999) + dice.of(" g", " oz"));
        }
        return stock;
    }

    private static Shelf shelf(List<String> stock) {
        List<Lot> lots = new ArrayList<>();
        stock.forEach(mass -> lots.add(Lot.of("material " + lots.size(), "A", mass)));
        return Shelf.of(lots);
    }

    /** By whole numbers alone: what is told of the largest batch is there, and so is the next with what is told to be missing. */
    @Test
    void a_shelf_gives_the_largest_batch_as_printed() {
        for (int run = 0; run < CASES; run++) {
            int[] parts = parts();
            int whole = Arrays.stream(parts).sum();
            List<String> stock = stock(parts.length);
            LargestBatch answer = shelf(stock).largest(formula("cream", parts), TODAY);
            Grams largest = Grams.of(told(LARGEST, answer).orElseThrow());
            boolean isTight = false;
            for (int i = 0; i < parts.length; i++) {
                Grams there = Grams.of(stock.get(i));
                assertThat(largest.isEnough(parts[i], whole, there))
                        .as("%s of %s", answer, stock)
                        .isTrue();
                isTight |= !largest.isEnough(parts[i], whole, there.times(A_THOUSANDTH_LESS));
            }
            assertThat(isTight).as("%s of %s", answer, stock).isTrue();
            Grams next = Grams.of(told(NEXT, answer).orElseThrow());
            Matcher more = MORE.matcher(answer.toString());
            Grams[] then = stock.stream().map(Grams::of).toArray(Grams[]::new);
            while (more.find()) {
                int material = Integer.parseInt(more.group(2).substring("material ".length()));
                then[material] = then[material].plus(Grams.of(more.group(1)));
            }
            for (int i = 0; i < parts.length; i++) {
                assertThat(next.isEnough(parts[i], whole, then[i]))
                        .as("%s of %s", answer, stock)
                        .isTrue();
            }
        }
    }

    @Test
    void what_can_be_made_at_all_passes_as_printed_and_what_is_missing_is_enough() {
        int made = 0;
        for (int run = 0; run < CASES; run++) {
            int[] parts = parts();
            Formula formula = formula("cream", parts);
            Bench bench = Bench.of(Balance.of(dice.of("0.01 g", "0.1 g", "0.01 oz", "0.05 oz"), "5 kg"));
            Criterion criterion = Criterion.roundingWithin(Tolerances.of(dice.between(1, 20) + " %"));
            List<String> stock = stock(parts.length);
            Makeable answer = shelf(stock)
                    .makeable(List.of(criterion.on(formula, bench)), TODAY)
                    .get(0);
            Optional<String> most = told(UP_TO, answer);
            if (most.isPresent()) {
                made++;
                assertThat(criterion.on(formula, bench).contains(most.get()))
                        .as("%s", answer)
                        .isTrue();
                for (int i = 0; i < parts.length; i++) {
                    assertThat(Grams.of(most.get())
                                    .isEnough(parts[i], Arrays.stream(parts).sum(), Grams.of(stock.get(i))))
                            .as("%s of %s", answer, stock)
                            .isTrue();
                }
                continue;
            }
            Shelf fuller = shelf(stock);
            Matcher missing = MISSING.matcher(answer.toString());
            while (missing.find()) {
                fuller = fuller.with(Lot.of(missing.group(1), "B", missing.group(2)));
            }
            assertThat(fuller.makeable(List.of(criterion.on(formula, bench)), TODAY)
                            .get(0)
                            .isMakeable())
                    .as("%s of %s", answer, stock)
                    .isTrue();
        }
        assertThat(made).isBetween(CASES / 10, CASES - 1);
    }

    @Test
    void a_series_is_made_within_the_total_and_the_stock_as_printed() {
        int stocked = 0;
        for (int run = 0; run < CASES / 3; run++) {
            List<Formula> versions = new ArrayList<>();
            int common = dice.between(3, 12);
            for (int i = 0; i < 2; i++) {
                versions.add(Formula.inParts("version " + i)
                        .line("material 0", "60")
                        .line("material 1", Integer.toString(common))
                        .line("material 2", Integer.toString(dice.between(2, 15)))
                        .build());
            }
            Balance balance = Balance.of(dice.of("0.1 g", "0.05 oz", "0.02 oz"), "1 kg");
            TrialSeries series = TrialSeries.of(
                    versions, Bench.of(balance), dice.between(20, 60) + " g", dice.between(6, 15) + " %");
            SeriesPlan best = series.best().orElseThrow();
            String total = told(IN_ALL, best).orElseThrow();
            assertThat(series.upTo(total).best()).as("%s", best).isPresent();
            TrialSeries tooLittle = series.upTo("10 g");
            String least = told(LEAST_IN_ALL, tooLittle.obstacles()).orElseThrow();
            assertThat(series.upTo(least).best())
                    .as("%s", tooLittle.obstacles())
                    .isPresent();
            assertThat(Amount.mass(least)).isLessThanOrEqualTo(best.total().times(Ratio.of(1001, 1000)));
            Matcher taken = TAKEN.matcher(
                    series.withStock("material 2", "0.1 g").obstacles().toString());
            if (taken.find()) {
                stocked++;
                assertThat(series.withStock("material 2", taken.group(2)).best())
                        .isPresent();
            }
        }
        assertThat(stocked).isPositive();
    }

    @Test
    void the_smallest_batches_of_a_set_are_served_as_printed() {
        int rounded = 0;
        for (int run = 0; run < CASES; run++) {
            Formula formula = formula("cream", parts());
            List<Equipment> candidates = List.of(
                    Equipment.balance(Balance.of("1 g", "5 kg").named("kitchen"), "0 EUR"),
                    Equipment.balance(
                            Balance.of(dice.of("0.1 g", "0.05 oz", "0.2 g"), "500 g")
                                    .named("lab"),
                            "20 EUR"),
                    Equipment.boat(Vessel.of("boat", "2 g"), "1 EUR"));
            int percent = dice.between(2, 12);
            EquipmentChoice choice =
                    EquipmentChoice.of(candidates, List.of(Demand.of(formula, "1 g", "3 kg", percent + " %")));
            EquipmentAnswer answer = choice.cheapest();
            for (ServingPlan plan : answer.plans()) {
                String size = told(Pattern.compile(", " + NUMBER + ": "), plan).orElseThrow();
                assertThat(answer.toString()).contains(plan.formula().name() + " " + size);
                Demand just = Demand.of(formula, size, size, percent + " %");
                assertThat(EquipmentChoice.of(candidates, List.of(just))
                                .serving(answer.equipment())
                                .servesAll())
                        .as("%s", plan)
                        .isTrue();
                assertThat(Amount.mass(size))
                        .isGreaterThanOrEqualTo(plan.size())
                        .isLessThanOrEqualTo(plan.size().times(Ratio.of(1001, 1000)));
                rounded += Amount.mass(size).equals(plan.size()) ? 0 : 1;
            }
        }
        assertThat(rounded).isPositive();
    }
}
