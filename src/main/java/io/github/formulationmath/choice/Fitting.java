package io.github.formulationmath.choice;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * At which least size a set of equipment serves a demand.
 *
 * <p>The pot v and the balance b under it stand outside: for each such pair the size is at most {@code min(U, C_b − m_v, what v holds)},
 * and every line is at a passing size of b, or of some balance b' on which some boat z carries the line: at most {@code min(C_b' −
 * m_z, what z holds)/w}. The search starts at the least size wanted and jumps from window to window; each jump goes to the next
 * size at which that line passes anywhere, so that no size is passed over. As the windows do not depend on the set, and more
 * equipment only adds to what a line may choose from, serving and the least size are monotone in the set.
 */
final class Fitting {

    private final Demand demand;
    private final EquipmentList list;
    private final List<FormulaLine> lines;
    private final Map<Long, Optional<Served>> known = new HashMap<>();

    /** By line and balance; null until asked for. */
    private final @Nullable SizeWindows[][] inPot;

    private final @Nullable SizeWindows[][] fromBoat;

    /** Up to which batch size a boat carries a line on a balance, by line, balance, boat; the last boat is none. */
    private final @Nullable Ratio[][][] carried;

    /** Up to which batch size a pot on a balance takes the batch; the last pot is none. */
    private final @Nullable Ratio[][] held;

    /** A line where it is weighed: on which balance, from which boat, or in the pot if that is null. */
    record Place(int balance, @Nullable Integer boat) {}

    /**
     * The least size, and how a batch of it is weighed.
     *
     * @param grams the size
     * @param main the balance under the pot
     * @param pot the pot, or null if there are none among the candidates
     * @param places where each line is weighed
     * @param pushed what the last jump went by, if it was a window's start
     */
    record Served(Ratio grams, int main, @Nullable Integer pot, List<Place> places, Optional<Amount<Mass>> pushed) {}

    Fitting(Demand demand, EquipmentList list) {
        this.demand = demand;
        this.list = list;
        this.lines = demand.formula().lines();
        int n = list.size();
        this.inPot = new SizeWindows[lines.size()][n];
        this.fromBoat = new SizeWindows[lines.size()][n];
        this.carried = new Ratio[lines.size()][n][n + 1];
        this.held = new Ratio[n][n + 1];
        for (int b = 0; b < n; b++) {
            if (list.at(b) instanceof Equipment.OfBalance item) {
                prepare(b, item.balance());
            }
        }
    }

    private void prepare(int b, Balance balance) {
        for (int i = 0; i < lines.size(); i++) {
            for (int z = 0; z <= list.size(); z++) {
                carried[i][b][z] = carried(lines.get(i), balance, z);
            }
        }
        for (int v = 0; v <= list.size(); v++) {
            held[b][v] = held(balance, v);
        }
    }

    private SizeWindows windows(FormulaLine line, Balance balance, WeighingMethod method) {
        return SizeWindows.of(
                demand.criterion()
                        .forLine(line, demand.formula(), Bench.of(balance), method)
                        .orElseThrow(
                                () -> new IllegalArgumentException("criterion is \"" + Excerpt.of(demand.criterion())
                                        + "\", which looks at lines together: several balances are chosen by what holds of each line,"
                                        + " such as Criterion.roundingWithin or Criterion.errorBound")),
                line,
                balance,
                demand.sizes());
    }

    private @Nullable Ratio carried(FormulaLine line, Balance balance, int z) {
        Vessel boat = boat(z);
        if (boat == null) {
            return null;
        }
        Ratio most = balance.capacity().canonical().minus(boat.mass().canonical());
        Ratio room = boat.workingVolume()
                .flatMap(volume -> line.ingredient()
                        .density()
                        .map(density -> density.massOf(volume).canonical()))
                .orElse(most);
        return most.min(room).dividedBy(line.fraction());
    }

    private @Nullable Ratio held(Balance balance, int v) {
        Vessel pot = pot(v);
        if (pot == null) {
            return null;
        }
        Ratio most = balance.capacity()
                .canonical()
                .minus(pot.mass().canonical())
                .min(demand.sizes().greatest().canonical());
        return pot.workingVolume()
                .filter(volume -> hasDensities())
                .map(volume -> Batch.of(demand.formula(), BatchSize.ofVolume(volume))
                        .mass()
                        .canonical()
                        .min(most))
                .orElse(most);
    }

    /** Whether the volume of a batch can be told. */
    boolean hasDensities() {
        return demand.formula().lines().stream()
                .allMatch(line -> line.ingredient().density().isPresent());
    }

    private @Nullable Vessel boat(int z) {
        if (z == list.size()) {
            return list.hasBoats() ? null : Vessel.none();
        }
        return list.at(z) instanceof Equipment.OfBoat item ? item.vessel() : null;
    }

    private @Nullable Vessel pot(int v) {
        if (v == list.size()) {
            return list.hasPots() ? null : Vessel.none();
        }
        return list.at(v) instanceof Equipment.OfPot item ? item.vessel() : null;
    }

    Demand demand() {
        return demand;
    }

    List<FormulaLine> lines() {
        return lines;
    }

    /** Whether everything together weighs a line, were it alone, at some size of the range. */
    boolean servesLine(int line) {
        long set = list.everything();
        Ratio least = demand.sizes().least().canonical();
        for (Way way : ways(set)) {
            if (inPot(line, way.balance()).next(least) != null || next(way, line, least) != null) {
                return true;
            }
        }
        return false;
    }

    boolean serves(long set) {
        return on(set).isPresent();
    }

    /** The least size that a set serves; of pots and balances that serve it, the first. */
    Optional<Served> on(long set) {
        return known.computeIfAbsent(set, this::search);
    }

    private Optional<Served> search(long set) {
        List<Way> ways = ways(set);
        Served best = null;
        for (int b = 0; b < list.size(); b++) {
            if (isIn(set, b) && list.at(b) instanceof Equipment.OfBalance) {
                Served served = search(set, b, ways, best == null ? null : best.grams());
                best = served != null ? served : best;
            }
        }
        return Optional.ofNullable(best);
    }

    /** A balance of the set beside the pot, and how far its boats carry each line. */
    private record Way(int balance, List<Optional<Ratio>> most) {}

    private List<Way> ways(long set) {
        List<Way> ways = new ArrayList<>();
        for (int b = 0; b < list.size(); b++) {
            if (isIn(set, b) && list.at(b) instanceof Equipment.OfBalance) {
                List<Optional<Ratio>> most = new ArrayList<>(lines.size());
                for (int i = 0; i < lines.size(); i++) {
                    Integer boat = boatFor(set, i, b);
                    most.add(boat == null ? Optional.empty() : Optional.ofNullable(carried[i][b][boat]));
                }
                ways.add(new Way(b, most));
            }
        }
        return ways;
    }

    /** The boat of a set that carries most of a line on a balance. */
    private @Nullable Integer boatFor(long set, int line, int balance) {
        Integer best = null;
        Ratio most = Ratio.ZERO;
        for (int z = 0; z <= list.size(); z++) {
            Ratio own = z == list.size() || isIn(set, z) ? carried[line][balance][z] : null;
            if (own != null && own.compareTo(most) > 0) {
                best = z;
                most = own;
            }
        }
        return best;
    }

    /** Whether a batch of another size could be weighed just as one that is served is. */
    boolean servesAlike(Served served, Ratio grams) {
        Ratio most = held[served.main()][served.pot() == null ? list.size() : served.pot()];
        boolean isInRange =
                grams.compareTo(demand.sizes().least().canonical()) >= 0 && most != null && grams.compareTo(most) <= 0;
        boolean isOnGrid = demand.step()
                .map(every -> grams.dividedBy(every.canonical()).isInteger())
                .orElse(true);
        return isInRange
                && isOnGrid
                && IntStream.range(0, lines.size())
                        .allMatch(i -> passes(i, served.places().get(i), grams));
    }

    private boolean passes(int line, Place place, Ratio grams) {
        Integer boat = place.boat();
        if (boat == null) {
            return grams.equals(inPot(line, place.balance()).next(grams));
        }
        Ratio most = carried[line][place.balance()][boat];
        return most != null
                && grams.compareTo(most) <= 0
                && grams.equals(fromBoat(line, place.balance()).next(grams));
    }

    /** With one balance under the pot: the least size below one that is known, or null. */
    private @Nullable Served search(long set, int main, List<Way> ways, @Nullable Ratio below) {
        Ratio top = Ratio.ZERO;
        for (int v = 0; v <= list.size(); v++) {
            Ratio own = v == list.size() || isIn(set, v) ? held[main][v] : null;
            top = own == null ? top : top.max(own);
        }
        Climb climb = new Climb(main, ways, demand.sizes().least().canonical());
        while (climb.moves()) {
            if (climb.at.compareTo(top) > 0 || (below != null && climb.at.compareTo(below) >= 0)) {
                return null;
            }
        }
        boolean found = climb.isFound && climb.at.signum() > 0 && climb.at.compareTo(top) <= 0;
        return found && (below == null || climb.at.compareTo(below) < 0) ? served(set, main, climb) : null;
    }

    private Served served(long set, int main, Climb climb) {
        Integer pot = null;
        for (int v = list.size() - 1; v >= 0; v--) {
            Ratio own = isIn(set, v) ? held[main][v] : null;
            pot = own != null && own.compareTo(climb.at) >= 0 ? Integer.valueOf(v) : pot;
        }
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            places.add(place(set, main, i, climb));
        }
        return new Served(climb.at, main, pot, places, climb.pushed());
    }

    private Place place(long set, int main, int line, Climb climb) {
        if (climb.at.equals(inPot(line, main).next(climb.at))) {
            return new Place(main, null);
        }
        for (Way way : climb.ways) {
            if (climb.at.equals(next(way, line, climb.at))) {
                return new Place(way.balance(), boatFor(set, line, way.balance()));
            }
        }
        throw new IllegalStateException("no place for " + lines.get(line) + " at " + climb.at + " g");
    }

    private @Nullable Ratio next(Way way, int line, Ratio size) {
        Ratio most = way.most().get(line).orElse(null);
        if (most == null || size.compareTo(most) > 0) {
            return null;
        }
        Ratio next = fromBoat(line, way.balance()).next(size);
        return next == null || next.compareTo(most) > 0 ? null : next;
    }

    private SizeWindows inPot(int line, int balance) {
        SizeWindows windows = inPot[line][balance];
        if (windows == null) {
            windows = windows(lines.get(line), balanceAt(balance), WeighingMethod.TARE_EACH);
            inPot[line][balance] = windows;
        }
        return windows;
    }

    private SizeWindows fromBoat(int line, int balance) {
        SizeWindows windows = fromBoat[line][balance];
        if (windows == null) {
            windows = windows(lines.get(line), balanceAt(balance), WeighingMethod.FROM_BOAT);
            fromBoat[line][balance] = windows;
        }
        return windows;
    }

    private Balance balanceAt(int index) {
        if (list.at(index) instanceof Equipment.OfBalance item) {
            return item.balance();
        }
        throw new IllegalStateException(list.at(index) + " is no balance");
    }

    private static boolean isIn(long set, int index) {
        return (set >> index & 1) != 0;
    }

    /** The way up from window to window. */
    private final class Climb {

        private final int main;
        private final List<Way> ways;
        private Ratio at;
        private Ratio from;
        private @Nullable SizeWindows by;
        private boolean isFound;

        Climb(int main, List<Way> ways, Ratio start) {
            this.main = main;
            this.ways = ways;
            this.at = onGrid(start);
            this.from = at;
        }

        /** One jump; false if there is none to make: a size is found, or there is none. */
        boolean moves() {
            for (int i = 0; i < lines.size(); i++) {
                SizeWindows nearest = inPot(i, main);
                Ratio next = nearest.next(at);
                for (Way way : ways) {
                    Ratio other = next != null && next.equals(at) ? null : next(way, i, at);
                    if (other != null && (next == null || other.compareTo(next) < 0)) {
                        next = other;
                        nearest = fromBoat(i, way.balance());
                    }
                }
                if (next == null) {
                    return false;
                }
                if (next.compareTo(at) > 0) {
                    from = at;
                    at = onGrid(next);
                    by = at.equals(next) ? nearest : null;
                    return true;
                }
            }
            isFound = true;
            return false;
        }

        private Ratio onGrid(Ratio size) {
            return demand.step()
                    .map(every -> size.dividedBy(every.canonical())
                            .ceil()
                            .max(Ratio.ONE)
                            .times(every.canonical()))
                    .orElse(size);
        }

        Optional<Amount<Mass>> pushed() {
            return by == null ? Optional.empty() : by.pushed(from, at);
        }
    }
}
