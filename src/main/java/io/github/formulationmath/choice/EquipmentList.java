package io.github.formulationmath.choice;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.weighing.Vessel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Candidates in a fixed order; a set of them is a word with a bit for each. */
final class EquipmentList {

    /** What one word can hold and still be searched. */
    static final int MOST = 60;

    private final List<Equipment> items;

    EquipmentList(List<Equipment> candidates) {
        this.items = List.copyOf(Objects.requireNonNull(candidates, "candidates"));
        if (items.stream().noneMatch(Equipment.OfBalance.class::isInstance)) {
            throw new IllegalArgumentException(
                    "candidates are " + Excerpt.of(items) + ": at least one balance is needed to choose from");
        }
        if (items.size() > MOST) {
            throw new IllegalArgumentException("candidates are " + items.size() + ", more than " + MOST
                    + ": leave out what is neither finer, larger nor cheaper than another");
        }
        requireDistinct();
        items.forEach(item -> items.get(0).price().compareTo(item.price()));
    }

    private void requireDistinct() {
        LinkedHashSet<String> names = new LinkedHashSet<>();
        for (Equipment item : items) {
            if (!names.add(item.name())) {
                throw new IllegalArgumentException("candidates has two things called \"" + Excerpt.of(item.name())
                        + "\": give each a name of its own; a second of the same kind serves nothing more");
            }
        }
    }

    int size() {
        return items.size();
    }

    Equipment at(int index) {
        return items.get(index);
    }

    List<Equipment> all() {
        return items;
    }

    long everything() {
        return (1L << items.size()) - 1;
    }

    long owned() {
        long set = 0;
        for (int i = 0; i < items.size(); i++) {
            set |= items.get(i).isOwned() ? 1L << i : 0;
        }
        return set;
    }

    List<Equipment> of(long set) {
        List<Equipment> chosen = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if ((set >> i & 1) != 0) {
                chosen.add(items.get(i));
            }
        }
        return List.copyOf(chosen);
    }

    List<Ratio> prices() {
        return items.stream().map(item -> item.price().number()).toList();
    }

    Money money(Ratio number) {
        return Money.of(number, items.get(0).price().currency());
    }

    /** The pot or boat that something is; a balance is none. */
    static Optional<Vessel> vessel(Equipment item) {
        if (item instanceof Equipment.OfPot pot) {
            return Optional.of(pot.vessel());
        }
        return item instanceof Equipment.OfBoat boat ? Optional.of(boat.vessel()) : Optional.empty();
    }

    boolean hasPots() {
        return items.stream().anyMatch(Equipment.OfPot.class::isInstance);
    }

    boolean hasBoats() {
        return items.stream().anyMatch(Equipment.OfBoat.class::isInstance);
    }

    /** The same with more to choose from, and the same bits for what was there before. */
    EquipmentList with(Equipment item) {
        List<Equipment> longer = new ArrayList<>(items);
        longer.add(item);
        return new EquipmentList(longer);
    }
}
