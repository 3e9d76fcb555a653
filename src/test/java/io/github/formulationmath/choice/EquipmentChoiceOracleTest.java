package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The choice of equipment against every set there is; 10 000 repertoires in the long profile. */
final class EquipmentChoiceOracleTest {

    private static final int FACTOR = Math.max(1, Integer.getInteger("formulationmath.cases", 1));
    private static final int CASES = 100 * FACTOR;

    /** Of what asks the oracle for every set: fewer in the plain build, all in the long one. */
    private static final int SLOW_CASES = FACTOR == 1 ? CASES / 4 : CASES;

    private static EquipmentChoice choice(BenchOracle oracle) {
        return EquipmentChoice.of(equipment(oracle), demands(oracle));
    }

    private static List<Equipment> equipment(BenchOracle oracle) {
        List<Equipment> all = new ArrayList<>();
        for (BenchOracle.Thing thing : oracle.things()) {
            String price = thing.cents() + "/100 EUR";
            String name = "thing " + all.size();
            all.add(
                    switch (thing.use()) {
                        case BALANCE ->
                            Equipment.balance(
                                    Balance.of(thing.step() + " mg", thing.mass() + " mg")
                                            .named(name),
                                    price);
                        case POT -> Equipment.pot(Vessel.of(name, thing.mass() + " mg"), price);
                        case BOAT -> Equipment.boat(Vessel.of(name, thing.mass() + " mg"), price);
                    });
        }
        return all;
    }

    private static List<Demand> demands(BenchOracle oracle) {
        List<Demand> all = new ArrayList<>();
        for (BenchOracle.Recipe recipe : oracle.recipes()) {
            FormulaBuilder builder = Formula.inParts("recipe " + all.size());
            for (int i = 0; i < recipe.shares().size(); i++) {
                builder.line("line " + i, recipe.shares().get(i).toString());
            }
            Demand demand =
                    Demand.of(builder.build(), recipe.from() + " mg", recipe.to() + " mg", recipe.percent() + " %");
            all.add(recipe.step() == 0 ? demand : demand.inStepsOf(recipe.step() + " mg"));
        }
        return all;
    }

    private static int word(List<Equipment> set) {
        return set.stream()
                .mapToInt(item -> 1 << Integer.parseInt(item.name().substring("thing ".length())))
                .sum();
    }

    private static Ratio grams(BigInteger[] milligrams) {
        return Ratio.of(milligrams[0], milligrams[1].multiply(BigInteger.valueOf(1000)));
    }

    private static Ratio cents(int cents) {
        return Ratio.of(cents, 100);
    }

    /** Every set that holds what is owned. */
    private static List<Integer> sets(BenchOracle oracle) {
        List<Integer> all = new ArrayList<>();
        for (int set = 0; set < 1 << oracle.things().size(); set++) {
            if ((set & oracle.owned()) == oracle.owned()) {
                all.add(set);
            }
        }
        return all;
    }

    @Test
    void the_cheapest_set_is_that_of_exhaustive_search() {
        int served = 0;
        int greedyDearer = 0;
        for (int seed = 0; seed < CASES; seed++) {
            BenchOracle oracle = BenchOracle.random(new Random(seed));
            EquipmentAnswer answer = choice(oracle).cheapest();
            int everything = (1 << oracle.things().size()) - 1;
            assertThat(answer.servesAll()).as("seed %d", seed).isEqualTo(oracle.servesAll(everything));
            if (answer.servesAll()) {
                served++;
                greedyDearer += greedy(oracle) > cheapestPrice(oracle) ? 1 : 0;
                checkCheapest(oracle, answer, seed);
                checkClauses(oracle, answer, seed);
            } else {
                checkUnserved(oracle, answer, everything, seed);
            }
            checkSizes(oracle, answer, seed);
        }
        assertThat(served).isGreaterThan(CASES / 10);
        assertThat(greedyDearer)
                .as("cases in which buying what serves most for its price is dearer")
                .isPositive();
    }

    private static int cheapestPrice(BenchOracle oracle) {
        return sets(oracle).stream()
                .filter(oracle::servesAll)
                .mapToInt(oracle::price)
                .min()
                .orElseThrow();
    }

    private static void checkCheapest(BenchOracle oracle, EquipmentAnswer answer, int seed) {
        int price = cheapestPrice(oracle);
        Set<Integer> best = sets(oracle).stream()
                .filter(set -> oracle.servesAll(set) && oracle.price(set) == price)
                .collect(Collectors.toSet());
        Set<Integer> told = new HashSet<>(Set.of(word(answer.equipment())));
        answer.othersOfThatPrice().forEach(other -> told.add(word(other)));
        assertThat(answer.isProven()).isTrue();
        assertThat(answer.price().number()).as("seed %d", seed).isEqualTo(cents(price));
        assertThat(told).as("seed %d", seed).isEqualTo(best);
    }

    /** Each clause: all else fails its demand. All of them: no cheaper set has something of each. */
    private static void checkClauses(BenchOracle oracle, EquipmentAnswer answer, int seed) {
        int everything = (1 << oracle.things().size()) - 1;
        List<Integer> clauses = new ArrayList<>();
        for (EquipmentClause clause : answer.clauses()) {
            int oneOf = word(clause.oneOf());
            int recipe = Integer.parseInt(
                    clause.demand().orElseThrow().formula().name().substring("recipe ".length()));
            assertThat(oracle.least(everything & ~oneOf, recipe))
                    .as("seed %d, %s", seed, clause)
                    .isNull();
            clauses.add(oneOf);
        }
        int cheapestHit = sets(oracle).stream()
                .filter(set -> clauses.stream().allMatch(clause -> (clause & set) != 0))
                .mapToInt(oracle::price)
                .min()
                .orElseThrow();
        assertThat(answer.price().number()).as("seed %d", seed).isEqualTo(cents(cheapestHit));
    }

    /** Every size told is the least of exhaustive search. */
    private static void checkSizes(BenchOracle oracle, EquipmentAnswer answer, int seed) {
        int set = word(answer.equipment());
        int plan = 0;
        for (int j = 0; j < oracle.recipes().size(); j++) {
            BenchOracle.Size least = oracle.least(set, j);
            if (least != null) {
                ServingPlan told = answer.plans().get(plan++);
                assertThat(told.size().canonical())
                        .as("seed %d, recipe %d", seed, j)
                        .isEqualTo(Ratio.of(least.p(), 1000 * least.q()));
                checkPlan(told, oracle.recipes().get(j).percent());
            }
        }
        assertThat(plan).isEqualTo(answer.plans().size());
    }

    /** One pot on one balance to the end, and every reading near enough to its target. */
    private static void checkPlan(ServingPlan plan, int percent) {
        Amount<javax.measure.quantity.Mass> onPan =
                plan.pot().vessel().mass().plus(plan.batch().mass());
        assertThat(onPan).isLessThanOrEqualTo(plan.pot().balance().capacity());
        for (ServingPlan.AtStation line : plan.lines()) {
            WeighingStation station = line.station();
            assertThat(station.equals(plan.pot()) || station.method().usesBoat())
                    .isTrue();
            assertThat(station.vessel().mass().plus(line.line().mass()))
                    .isLessThanOrEqualTo(station.balance().capacity());
            Ratio off = line.addition()
                    .reading()
                    .minus(line.line().mass())
                    .canonical()
                    .abs();
            assertThat(off).isLessThanOrEqualTo(line.line().mass().canonical().times(Ratio.of(percent, 100)));
        }
    }

    private static void checkUnserved(BenchOracle oracle, EquipmentAnswer answer, int everything, int seed) {
        assertThat(answer.unserved())
                .as("seed %d", seed)
                .hasSize(oracle.recipes().size() - oracle.served(everything));
        assertThat(answer.equipment()).hasSize(oracle.things().size());
    }

    /** Buys, again and again, what serves most more for its price, or else the cheapest thing; then gives back what is not needed. */
    private static int greedy(BenchOracle oracle) {
        int set = oracle.owned();
        while (!oracle.servesAll(set)) {
            int best = -1;
            for (int i = 0; i < oracle.things().size(); i++) {
                if ((set >> i & 1) == 0 && (best < 0 || isBetter(oracle, set, i, best))) {
                    best = i;
                }
            }
            set |= 1 << best;
        }
        for (int i = 0; i < oracle.things().size(); i++) {
            set = oracle.servesAll(set & ~(1 << i)) && oracle.things().get(i).cents() > 0 ? set & ~(1 << i) : set;
        }
        return oracle.price(set);
    }

    private static boolean isBetter(BenchOracle oracle, int set, int one, int other) {
        long gainOne = (long) oracle.served(set | 1 << one)
                * oracle.things().get(other).cents();
        long gainOther = (long) oracle.served(set | 1 << other)
                * oracle.things().get(one).cents();
        return gainOne != gainOther
                ? gainOne > gainOther
                : oracle.things().get(one).cents() < oracle.things().get(other).cents();
    }

    @Test
    void the_best_within_a_budget_is_that_of_exhaustive_search() {
        for (int seed = 0; seed < SLOW_CASES; seed++) {
            BenchOracle oracle = BenchOracle.random(new Random(seed));
            int budget = new Random(~seed).nextInt(4000);
            EquipmentAnswer answer = choice(oracle).within(Money.of(cents(budget), "EUR"));
            int best = -1;
            for (int set : sets(oracle)) {
                if (oracle.price(set) <= budget && (best < 0 || isBetterSet(oracle, set, best))) {
                    best = set;
                }
            }
            int told = word(answer.equipment());
            assertThat(oracle.served(told)).as("seed %d", seed).isEqualTo(oracle.served(best));
            assertThat(answer.plans()).hasSize(oracle.served(best));
            assertThat(answer.price().number()).as("seed %d", seed).isEqualTo(cents(oracle.price(best)));
            assertThat(answer.totalSize().canonical()).as("seed %d", seed).isEqualTo(grams(oracle.total(best)));
            checkSizes(oracle, answer, seed);
        }
    }

    private static boolean isBetterSet(BenchOracle oracle, int one, int other) {
        if (oracle.served(one) != oracle.served(other)) {
            return oracle.served(one) > oracle.served(other);
        }
        return oracle.price(one) != oracle.price(other)
                ? oracle.price(one) < oracle.price(other)
                : BenchOracle.compare(oracle.total(one), oracle.total(other)) < 0;
    }

    @Test
    void the_front_is_that_of_exhaustive_search() {
        int points = 0;
        for (int seed = 0; seed < SLOW_CASES; seed++) {
            BenchOracle oracle = BenchOracle.random(new Random(seed));
            TreeMap<Integer, BigInteger[]> smallest = new TreeMap<>();
            sets(oracle).stream()
                    .filter(oracle::servesAll)
                    .forEach(set -> smallest.merge(
                            oracle.price(set), oracle.total(set), (a, b) -> BenchOracle.compare(a, b) <= 0 ? a : b));
            List<String> front = new ArrayList<>();
            Optional<BigInteger[]> last = Optional.empty();
            for (var entry : smallest.entrySet()) {
                if (last.isEmpty() || BenchOracle.compare(entry.getValue(), last.get()) < 0) {
                    front.add(cents(entry.getKey()) + " " + grams(entry.getValue()));
                    last = Optional.of(entry.getValue());
                }
            }
            List<EquipmentAnswer> told = choice(oracle).front();
            points += told.size();
            assertThat(told.stream()
                            .map(each -> each.price().number() + " "
                                    + each.totalSize().canonical())
                            .toList())
                    .as("seed %d", seed)
                    .isEqualTo(front);
            int seen = seed;
            told.forEach(each -> checkSizes(oracle, each, seen));
            told.forEach(each -> checkTotals(oracle, each, seen));
        }
        assertThat(points).isGreaterThan(SLOW_CASES / 5);
    }

    /** What is left without a clause fails its demand, or stays at its total or above. */
    private static void checkTotals(BenchOracle oracle, EquipmentAnswer answer, int seed) {
        int everything = (1 << oracle.things().size()) - 1;
        for (EquipmentClause clause : answer.clauses()) {
            int rest = everything & ~word(clause.oneOf());
            if (clause.totalBelow().isPresent() && oracle.servesAll(rest)) {
                Ratio below = clause.totalBelow().get().canonical();
                assertThat(grams(oracle.total(rest)))
                        .as("seed %d, %s", seed, clause)
                        .isGreaterThanOrEqualTo(below);
            }
        }
    }
}
