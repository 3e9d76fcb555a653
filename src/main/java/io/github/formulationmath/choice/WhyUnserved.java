package io.github.formulationmath.choice;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/** Why a demand is not met, and what would meet it; every opening is tried with everything among the candidates. */
record WhyUnserved(Demand demand, EquipmentList list, long set, boolean isServedByAll) {

    /** The steps a display comes in, as powers of ten go on: 1, 2, 5. */
    private static final List<String> STEPS = List.of(
            "10", "5", "2", "1", "0.5", "0.2", "0.1", "0.05", "0.02", "0.01", "0.005", "0.002", "0.001", "0.0005",
            "0.0002", "0.0001", "0.00001");

    /** Sizes beyond what was wanted that are tried. */
    private static final List<Integer> LARGER = List.of(2, 5, 20, 100);

    Unserved told() {
        if (isServedByAll) {
            return new Unserved(demand, Phrase.of("unserved.by-this-set"), List.of(buying()));
        }
        List<Phrase> openings = new ArrayList<>();
        largerSize().ifPresent(openings::add);
        finerBalance().ifPresent(openings::add);
        vessel(new Equipment.OfPot(Vessel.of("a pot", Amount.grams(Ratio.ZERO)), free()), "opening.lighter-pot")
                .ifPresent(openings::add);
        vessel(new Equipment.OfBoat(Vessel.of("a boat", Amount.grams(Ratio.ZERO)), free()), "opening.lighter-boat")
                .ifPresent(openings::add);
        return new Unserved(demand, reason(), openings);
    }

    /** What has to be bought beside the set so that it serves the demand, and costs least. */
    private Phrase buying() {
        List<Equipment> candidates = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            boolean isThere = (set >> i & 1) != 0;
            candidates.add(isThere ? owned(list.at(i)) : list.at(i));
        }
        EquipmentAnswer more = EquipmentChoice.of(candidates, List.of(demand)).cheapest();
        String names = more.toBuy().stream().map(Equipment::name).collect(Collectors.joining(" + "));
        return Phrase.of("opening.buying", names, more.price().toString());
    }

    private Equipment owned(Equipment item) {
        if (item instanceof Equipment.OfBalance balance) {
            return new Equipment.OfBalance(balance.balance(), free());
        }
        return item instanceof Equipment.OfPot pot
                ? new Equipment.OfPot(pot.vessel(), free())
                : new Equipment.OfBoat(((Equipment.OfBoat) item).vessel(), free());
    }

    private Phrase reason() {
        String least = demand.sizes().least().toldExactly();
        String greatest = demand.sizes().greatest().toldExactly();
        return worstLine()
                .map(line -> Phrase.of("unserved.line", line, least, greatest))
                .orElseGet(() -> Phrase.of("unserved.no-common-size", least, greatest));
    }

    /** A line that, were it by itself, could not be weighed at any size of the range. */
    private Optional<String> worstLine() {
        Fitting fit = new Fitting(demand, list);
        for (int i = 0; i < fit.lines().size(); i++) {
            if (!fit.servesLine(i)) {
                return Optional.of(fit.lines().get(i).name());
            }
        }
        return Optional.empty();
    }

    private Optional<Phrase> largerSize() {
        for (int times : LARGER) {
            Amount<Mass> up = demand.sizes().greatest().times(times);
            Fitting fit = new Fitting(demand.upTo(up), list);
            Optional<Fitting.Served> served = fit.on(list.everything());
            if (served.isPresent()) {
                Amount<Mass> size = Amount.grams(served.get().grams()).inUnitOf(up);
                return Optional.of(Phrase.of(
                        "opening.larger-size",
                        BalanceUnit.least(size, more -> fit.servesAlike(served.get(), more.canonical()))));
            }
        }
        return Optional.empty();
    }

    private Optional<Phrase> finerBalance() {
        if (list.size() >= EquipmentList.MOST) {
            return Optional.empty();
        }
        Amount<Mass> capacity = capacity();
        // A balance is proposed in the unit in which one weighs there: steps of ounces for a batch in pounds.
        Amount<Mass> small = demand.sizes().greatest().inSmallerUnit();
        Amount<Mass> one = small.dividedBy(small.exactValue());
        for (String step : STEPS) {
            Amount<Mass> readability = one.times(Ratio.parse(step));
            Balance balance =
                    Balance.of(readability, capacity.plus(one.times(10))).named("another balance");
            if (served(demand, list.with(new Equipment.OfBalance(balance, free())))
                    .isPresent()) {
                return Optional.of(Phrase.of(
                        "opening.other-balance",
                        readability.toString(),
                        balance.capacity().toldExactly()));
            }
        }
        return Optional.empty();
    }

    /** What the greatest batch wanted weighs in the heaviest vessel there is. */
    private Amount<Mass> capacity() {
        Amount<Mass> heaviest = Amount.grams(Ratio.ZERO);
        for (Equipment item : list.all()) {
            Amount<Mass> own = EquipmentList.vessel(item).map(Vessel::mass).orElse(heaviest);
            heaviest = own.compareTo(heaviest) > 0 ? own : heaviest;
        }
        return demand.sizes().greatest().plus(heaviest);
    }

    private Optional<Phrase> vessel(Equipment item, String key) {
        boolean isOfUse = item instanceof Equipment.OfPot ? list.hasPots() : list.hasBoats();
        return isOfUse
                        && list.size() < EquipmentList.MOST
                        && served(demand, list.with(item)).isPresent()
                ? Optional.of(Phrase.of(key))
                : Optional.empty();
    }

    private Money free() {
        return list.money(Ratio.ZERO);
    }

    private static Optional<Fitting.Served> served(Demand demand, EquipmentList list) {
        return new Fitting(demand, list).on(list.everything());
    }
}
