package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Lines among stations, held against every way there is, in integers: masses are twelfths of a gram. */
final class OnePotTest {

    private static final int UNIT = 12;

    /** Parts of a line, and twelfths of a gram in a millilitre of it; 0 if the density is not known. */
    record Line(int twelfths, int density) {}

    /** Vessel 0 or 1, or a boat; step, capacity and least load of the balance in twelfths; room in millilitres or 0. */
    record Station(boolean boat, int vessel, int step, int capacity, int least, int room) {

        WeighingStation asStation(int number, int[] potRoom) {
            Balance balance = Balance.of(twelfths(step), twelfths(capacity))
                    .withMinimumLoad(twelfths(least))
                    .named("balance " + number);
            return boat
                    ? WeighingStation.fromBoat(balance, held("boat " + number, 12, room))
                    : WeighingStation.inVessel(balance, held("pot " + vessel, potMass(), potRoom[vessel]));
        }

        int potMass() {
            return boat ? 12 : 24 * (1 + vessel);
        }
    }

    private static Vessel held(String name, int mass, int room) {
        Vessel vessel = Vessel.of(name, twelfths(mass));
        return room == 0 ? vessel : vessel.holding(room + " mL");
    }

    private static Amount<javax.measure.quantity.Mass> twelfths(int number) {
        return Amount.grams(Ratio.of(number, UNIT));
    }

    /** Lines, stations, tolerance in percent, and the room of the two pots in millilitres (0 if not known). */
    record Case(List<Line> lines, List<Station> stations, int tolerance, int[] potRoom) {

        BalanceAssignment assignment() {
            FormulaBuilder parts = Formula.inParts("random");
            for (int i = 0; i < lines.size(); i++) {
                Ingredient ingredient = Ingredient.of("L" + i);
                int density = lines.get(i).density;
                parts.line(
                        density == 0
                                ? ingredient
                                : ingredient.withDensity(Density.ofGramsPerMillilitre(Ratio.of(density, UNIT))),
                        Ratio.of(lines.get(i).twelfths));
            }
            int total = lines.stream().mapToInt(Line::twelfths).sum();
            Batch batch = Batch.of(parts.build(), BatchSize.ofMass(twelfths(total)));
            List<WeighingStation> all = IntStream.range(0, stations.size())
                    .mapToObj(i -> stations.get(i).asStation(i, potRoom))
                    .toList();
            return BalanceAssignment.of(batch, all, Tolerances.of(MassFraction.of(Ratio.of(tolerance, 100))));
        }

        /** Twice the largest error of a line at a station, or -1 if it cannot be weighed there with this pot. */
        int twiceError(int line, int number, int pot) {
            return twiceError(line, number, pot, readBefore(line, pot));
        }

        /** What the displays have read of the lines before, each where it is best, or as it is where it is nowhere. */
        private int readBefore(int line, int pot) {
            int read = 0;
            for (int i = 0; i < line; i++) {
                int step = 0;
                int least = -1;
                for (int number = 0; number < stations.size(); number++) {
                    int twice = twiceError(i, number, pot, read);
                    if (twice >= 0 && (least < 0 || twice < least)) {
                        least = twice;
                        step = stations.get(number).step;
                    }
                }
                read += step == 0 ? lines.get(i).twelfths : reading(lines.get(i).twelfths, step);
            }
            return read;
        }

        private int twiceError(int line, int number, int pot, int readBefore) {
            Station station = stations.get(number);
            if (!station.boat && station.vessel != pot) {
                return -1;
            }
            int mass = lines.get(line).twelfths;
            int reading = reading(mass, station.step);
            int own = Math.max(mass, reading);
            int before = station.boat
                    ? 0
                    : lines.subList(0, line).stream().mapToInt(Line::twelfths).sum();
            int onPan = station.boat ? own : Math.max(before + mass, readBefore + reading);
            boolean carried = onPan + station.potMass() <= station.capacity;
            boolean held = station.boat
                    ? fits(List.of(new Line(own, lines.get(line).density)), station.room)
                    : fits(with(lines.subList(0, line), new Line(own, lines.get(line).density)), potRoom[pot]);
            // The reading is off by what is known, and by half a step at the tare and half a step at the end.
            int twice = 2 * (Math.abs(reading - mass) + station.step);
            boolean within = twice * 100L <= 2L * tolerance * mass;
            return carried && held && mass >= station.least && within ? twice : -1;
        }

        private static List<Line> with(List<Line> lines, Line more) {
            List<Line> all = new ArrayList<>(lines);
            all.add(more);
            return all;
        }

        private static int reading(int mass, int step) {
            int down = mass / step * step;
            int twice = 2 * (mass - down);
            boolean up = twice > step || twice == step && mass / step % 2 == 1;
            return up ? down + step : down;
        }

        /** Volumes are compared as fractions with the product of all densities below the line. */
        private static boolean fits(List<Line> content, int room) {
            if (room == 0 || content.stream().anyMatch(line -> line.density == 0)) {
                return true;
            }
            long below = 1;
            for (Line line : content) {
                below *= line.density;
            }
            long volume = 0;
            for (Line line : content) {
                volume += line.twelfths * (below / line.density);
            }
            return volume <= room * below;
        }

        /** Fewest lines left over any pot, of those the smallest greatest relative error, of those the first: all is tried. */
        Ratio[] best() {
            Ratio[] best = null;
            int[] pots = stations.stream()
                    .filter(station -> !station.boat)
                    .mapToInt(Station::vessel)
                    .distinct()
                    .toArray();
            for (int used : pots.length == 0 ? new int[] {0} : pots) {
                int left = 0;
                Ratio worst = Ratio.ZERO;
                for (int i = 0; i < lines.size(); i++) {
                    int line = i;
                    int least = IntStream.range(0, stations.size())
                            .map(number -> twiceError(line, number, used))
                            .filter(error -> error >= 0)
                            .min()
                            .orElse(-1);
                    left += least < 0 ? 1 : 0;
                    worst = least < 0 ? worst : worst.max(Ratio.of(least, 2L * lines.get(i).twelfths));
                }
                boolean better = best == null
                        || left < best[0].toBigDecimal().intValueExact()
                        || Ratio.of(left).equals(best[0]) && worst.compareTo(best[1]) < 0;
                best = better ? new Ratio[] {Ratio.of(left), worst, Ratio.of(used)} : best;
            }
            return best;
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Line> lines = Combinators.combine(
                        Arbitraries.integers().between(1, 240), Arbitraries.of(0, 9, 10, 12, 12, 15))
                .as(Line::new);
        Arbitrary<Station> stations = Combinators.combine(
                        Arbitraries.of(true, false),
                        Arbitraries.of(0, 1),
                        Arbitraries.of(1, 2, 6, 12),
                        Arbitraries.integers().between(40, 700),
                        Arbitraries.of(0, 0, 5, 30),
                        Arbitraries.of(0, 2, 5, 12))
                .as(Station::new);
        Arbitrary<Integer> rooms = Arbitraries.of(0, 0, 5, 20, 40);
        return Combinators.combine(
                        lines.list().ofMinSize(1).ofMaxSize(4),
                        stations.list().ofMinSize(1).ofMaxSize(4),
                        Arbitraries.of(1, 5, 20, 60, 99),
                        Combinators.combine(rooms, rooms).as((a, b) -> new int[] {a, b}))
                .as(Case::new);
    }

    @Property(tries = 500)
    void a_batch_is_assigned_to_one_pot_as_well_as_any_way_there_is(@ForAll("cases") Case one) {
        BalanceAssignment assignment = one.assignment();
        Ratio[] best = one.best();
        assertThat(assignment.lines().size() + assignment.unassigned().size()).isEqualTo(one.lines.size());
        assertThat(Ratio.of(assignment.unassigned().size())).isEqualTo(best[0]);
        assertThat(assignment.lines().stream()
                        .map(line -> line.relativeError().canonical())
                        .reduce(Ratio.ZERO, Ratio::max))
                .isEqualTo(best[1]);
        assertThat(assignment.lines().stream()
                        .map(BalanceAssignment.AssignedLine::station)
                        .filter(station -> !station.method().usesBoat())
                        .map(WeighingStation::vessel)
                        .distinct())
                .hasSizeLessThanOrEqualTo(1);
    }

    /** Nothing is called usable that is not, and of what is the one with the smallest error is taken. */
    @Property(tries = 500)
    void only_what_passes_is_usable(@ForAll("cases") Case one) {
        BalanceAssignment assignment = one.assignment();
        int pot = one.best()[2].toBigDecimal().intValueExact();
        for (BalanceAssignment.AssignedLine line : assignment.lines()) {
            int place = line.line().line().index();
            List<Integer> usable = new ArrayList<>();
            for (int number = 0; number < one.stations.size(); number++) {
                BalanceAssignment.AssignedLine.Candidate candidate =
                        line.candidates().get(number);
                int twice = one.twiceError(place, number, pot);
                assertThat(candidate.isUsable()).isEqualTo(twice >= 0);
                if (twice >= 0) {
                    usable.add(twice);
                }
            }
            assertThat(line.relativeError().canonical())
                    .isEqualTo(Ratio.of(
                            usable.stream().mapToInt(Integer::intValue).min().orElseThrow(),
                            2L * one.lines.get(place).twelfths));
        }
    }

    /** What is in the pot as the displays of coarse balances read it counts, not only what it should be. */
    @Property(tries = 500)
    void no_balance_under_the_pot_has_to_read_more_than_it_carries(@ForAll("cases") Case one) {
        BalanceAssignment assignment = one.assignment();
        Ratio read = Ratio.ZERO;
        for (BalanceAssignment.AssignedLine line :
                assignment.unassigned().isEmpty() ? assignment.lines() : List.<BalanceAssignment.AssignedLine>of()) {
            read = read.plus(line.addition().reading().canonical());
            WeighingStation station = line.station();
            if (!station.method().usesBoat()) {
                assertThat(read.plus(station.vessel().mass().in(FormulationUnits.GRAM)))
                        .as("%s of %s", line, assignment)
                        .isLessThanOrEqualTo(station.balance().capacity().in(FormulationUnits.GRAM));
            }
        }
    }

    /** The whole batch in one pot: 1.2 kg do not stand on a balance that carries 600 g, wherever the lines before were. */
    @Test
    void a_pot_that_is_too_heavy_for_one_balance_stands_on_the_other() {
        Formula formula = Formula.inPercent("Balm")
                .line("P", "25 %")
                .line("Q", "60 %")
                .line("R", "15 %")
                .build();
        Batch batch = Batch.of(formula, BatchSize.ofMass("1.2 kg"));
        Vessel pot = Vessel.of("pot", "400 g");
        WeighingStation kitchen =
                WeighingStation.inVessel(Balance.of("0.1 g", "600 g").named("kitchen"), Vessel.of("beaker", "200 g"));
        WeighingStation coarse =
                WeighingStation.inVessel(Balance.of("1 g", "5 kg").named("coarse"), pot);
        BalanceAssignment assignment = BalanceAssignment.of(batch, List.of(kitchen, coarse), Tolerances.of("5 %"));
        assertThat(assignment.lines())
                .hasSize(3)
                .allMatch(line -> line.station().equals(coarse));
        assertThat(assignment.lines().get(0).candidates().get(0).verdict().key())
                .isEqualTo("station.other-pot");
    }

    @Test
    void a_volume_without_a_density_is_told_and_a_readability_is_named_once() {
        Formula formula = Formula.inMasses("Drops")
                .line("Citric Acid", "0.5 g")
                .line("Aqua", "99.5 g")
                .build();
        Batch batch = Batch.of(formula, BatchSize.ofMass("100 g"));
        WeighingStation boat = WeighingStation.fromBoat(
                Balance.of("0.01 g", "200 g").named("pocket"),
                Vessel.of("boat", "2 g").holding("40 mL", "30 mL"));
        BalanceAssignment assignment = BalanceAssignment.of(batch, List.of(boat), Tolerances.of("5 %"));
        assertThat(assignment.notConsidered()).hasSize(2);
        BalanceAssignment.AssignedLine acid = assignment.lines().get(0);
        WorkingAssertions.assertSelfChecking(acid);
        assertThat(acid.working().toString()).contains("d_pocket").doesNotContain("d =", "/ d ", "· d ");
    }
}
