package io.github.formulationmath.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.quantity.Amount;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Shelves at random against whole numbers: shares are parts, masses grams, prices cents for 100 g. */
final class ShelfOracleTest {

    private static final int CASES = 400 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
    private static final String[] NAMES = {"A", "B", "C"};

    /** Lines name an ingredient and its parts; lots an ingredient, grams, day of November to be used by (0 for none), and cents. */
    private record Case(int[][] lines, int[][] lots) {

        int parts() {
            return Arrays.stream(lines).mapToInt(line -> line[1]).sum();
        }

        boolean counts(int[] lot) {
            return lot[2] == 0 || lot[2] >= 15;
        }

        static Case random(Random dice) {
            int[][] lines = new int[2 + dice.nextInt(4)][];
            for (int i = 0; i < lines.length; i++) {
                lines[i] = new int[] {i < 2 ? i : dice.nextInt(3), 1 + dice.nextInt(20)};
            }
            int[][] lots = new int[2 + dice.nextInt(6)][];
            for (int i = 0; i < lots.length; i++) {
                int day = dice.nextBoolean() ? 0 : 10 + dice.nextInt(15);
                lots[i] = new int[] {i < 3 ? i : dice.nextInt(3), 1 + dice.nextInt(90), day, dice.nextInt(500)};
            }
            return new Case(lines, lots);
        }

        Formula formula() {
            FormulaBuilder builder = Formula.inParts("random");
            for (int i = 0; i < lines.length; i++) {
                builder.phase("phase " + i).line(NAMES[lines[i][0]], Integer.toString(lines[i][1]));
            }
            return builder.build();
        }

        Shelf shelf() {
            List<Lot> all = new ArrayList<>();
            for (int[] lot : lots) {
                Lot bare = Lot.of(NAMES[lot[0]], "L" + all.size(), lot[1] + " g")
                        .boughtAt(Offer.of(lot[3] + "/100 EUR", "100 g"));
                all.add(lot[2] == 0 ? bare : bare.useBy("2026-11-" + lot[2]));
            }
            return Shelf.of(all);
        }

        /** The largest batch, p/q grams, lots mixed: least of grams · parts / parts of the ingredient. */
        long[] mixed() {
            long[] least = null;
            for (int name = 0; name < 3; name++) {
                long need = 0;
                long have = 0;
                for (int[] line : lines) {
                    need += line[0] == name ? line[1] : 0;
                }
                for (int[] lot : lots) {
                    have += lot[0] == name && counts(lot) ? lot[1] : 0;
                }
                if (need > 0) {
                    long[] own = {have * parts(), need};
                    least = least == null || own[0] * least[1] < least[0] * own[1] ? own : least;
                }
            }
            return least;
        }

        /** Each line from one lot: the batch that some dealing of all lines allows, tried one by one. */
        long[] unmixed(int line, long[] used) {
            if (line == lines.length) {
                long[] least = {Long.MAX_VALUE / 1000, 1};
                for (int z = 0; z < lots.length; z++) {
                    long[] own = {(long) lots[z][1] * parts(), used[z]};
                    least = used[z] > 0 && own[0] * least[1] < least[0] * own[1] ? own : least;
                }
                return least;
            }
            long[] best = {0, 1};
            for (int z = 0; z < lots.length; z++) {
                if (lots[z][0] == lines[line][0] && counts(lots[z])) {
                    used[z] += lines[line][1];
                    long[] own = unmixed(line + 1, used);
                    used[z] -= lines[line][1];
                    best = own[0] * best[1] > best[0] * own[1] ? own : best;
                }
            }
            return best;
        }
    }

    @Test
    void the_largest_batch_is_that_of_whole_numbers() {
        Picking day = Picking.on("2026-11-15");
        for (int seed = 0; seed < CASES; seed++) {
            Case random = Case.random(new Random(seed));
            long[] mixed = random.mixed();
            long[] unmixed = random.unmixed(0, new long[random.lots().length]);
            LargestBatch told = random.shelf().largest(random.formula(), day);
            assertThat(told.mass().canonical()).as("seed %d", seed).isEqualTo(Ratio.of(mixed[0], mixed[1]));
            assertThat(random.shelf()
                            .largest(random.formula(), day.withOneLotPerLine())
                            .mass()
                            .canonical())
                    .as("seed %d", seed)
                    .isEqualTo(Ratio.of(unmixed[0], unmixed[1]));
            checkNext(random, told, day, seed);
        }
    }

    /** With what is told to be missing, the next batch is there, and with a thousandth less of any of it, it is not. */
    private static void checkNext(Case random, LargestBatch told, Picking day, int seed) {
        if (told.next().isEmpty()) {
            return;
        }
        Shelf more = random.shelf();
        Shelf lacking = random.shelf();
        for (LargestBatch.Shortage each : told.toReachNext()) {
            more = more.with(Lot.of(each.ingredientName(), "more", each.missing()));
            lacking = lacking.with(
                    Lot.of(each.ingredientName(), "more", each.missing().times(Ratio.of(999, 1000))));
        }
        assertThat(more.largest(random.formula(), day).mass())
                .as("seed %d", seed)
                .isEqualTo(told.next().get());
        assertThat(lacking.largest(random.formula(), day).mass())
                .isLessThan(told.next().get());
        assertThat(told.limiting()).hasSameSizeAs(told.toReachNext());
    }

    @Test
    void what_is_taken_adds_up_and_costs_what_whole_numbers_say() {
        Picking day = Picking.on("2026-11-15");
        int enough = 0;
        for (int seed = 0; seed < CASES; seed++) {
            Random dice = new Random(seed);
            Case random = Case.random(dice);
            int unit = 1 + dice.nextInt(4);
            Batch batch =
                    Batch.of(random.formula(), BatchSize.ofMass(Amount.grams(Ratio.of((long) unit * random.parts()))));
            for (Picking picking : List.of(day, day.withOneLotPerLine())) {
                Taking taking = random.shelf().take(batch, picking);
                long[] most = picking.mixesLots() ? random.mixed() : random.unmixed(0, new long[random.lots().length]);
                boolean isThere = most[0] >= (long) unit * random.parts() * most[1];
                assertThat(taking.isEnough()).as("seed %d, %s", seed, picking).isEqualTo(isThere);
                if (isThere) {
                    enough++;
                    check(random, unit, taking, seed);
                }
            }
        }
        assertThat(enough).isGreaterThan(CASES / 3);
    }

    private static void check(Case random, int unit, Taking taking, int seed) {
        int[] taken = new int[random.lots().length];
        BigInteger cost = BigInteger.ZERO;
        int[] got = new int[random.lines().length];
        for (Taking.Use use : taking.uses()) {
            int lot = Integer.parseInt(use.lot().code().substring(1));
            int grams = use.mass().canonical().numerator().intValueExact();
            taken[lot] += grams;
            got[use.line().index()] += grams;
            cost = cost.add(BigInteger.valueOf((long) grams * random.lots()[lot][3]));
            assertThat(random.lots()[lot][0])
                    .isEqualTo(random.lines()[use.line().index()][0]);
            assertThat(random.counts(random.lots()[lot])).isTrue();
        }
        for (int i = 0; i < got.length; i++) {
            assertThat(got[i]).as("seed %d, line %d", seed, i).isEqualTo(unit * random.lines()[i][1]);
        }
        for (int z = 0; z < taken.length; z++) {
            assertThat(taking.left().lots().get(z).left().canonical())
                    .isEqualTo(Ratio.of(random.lots()[z][1] - taken[z]));
        }
        assertThat(taking.cost().number()).isEqualTo(Ratio.of(cost, BigInteger.valueOf(10_000)));
    }
}
