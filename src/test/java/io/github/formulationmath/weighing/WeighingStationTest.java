package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What stands on the balance while a line is weighed: the pot, or a boat beside it. */
class WeighingStationTest {

    private static final Balance KITCHEN = Balance.of("0.1 g", "2 kg");
    private static final Vessel BOAT = Vessel.of("boat", "4.5 g");

    @Test
    void by_difference_the_boat_is_read_before_and_after() {
        WeighingStation station = WeighingStation.byDifference(KITCHEN, BOAT);
        assertThat(station.method()).isEqualTo(WeighingMethod.BY_DIFFERENCE);
        assertThat(station.vessel()).isEqualTo(BOAT);
        assertThat(station).hasToString("balance d = 0.1 g, capacity 2 kg, by difference of boat (4.5 g)");
    }

    @Test
    void a_boat_is_apart_from_the_pot() {
        assertThat(WeighingStation.fromBoat(KITCHEN, BOAT).isBoat()).isTrue();
        assertThat(WeighingStation.byDifference(KITCHEN, BOAT).isBoat()).isTrue();
        assertThat(WeighingStation.inVessel(KITCHEN, BOAT).isBoat()).isFalse();
    }

    @Test
    void a_boat_is_used_to_pour_from_it_and_to_weigh_by_difference() {
        assertThat(WeighingMethod.values())
                .filteredOn(WeighingMethod::usesBoat)
                .containsExactly(WeighingMethod.FROM_BOAT, WeighingMethod.BY_DIFFERENCE);
    }

    @Test
    void beside_the_vessel_it_carries_the_rest_of_the_capacity() {
        assertThat(WeighingStation.fromBoat(KITCHEN, BOAT).room()).hasToString("1995.5 g");
        WeighingStation overloaded = WeighingStation.inVessel(KITCHEN, Vessel.of("cauldron", "2.1 kg"));
        assertThatThrownBy(overloaded::room)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("by 100 g")
                .hasMessageContaining("lighter vessel");
    }

    @Test
    void nothing_is_added_up_from_one_tare_where_lines_may_be_weighed_elsewhere() {
        assertThatThrownBy(() -> new WeighingStation(KITCHEN, BOAT, WeighingMethod.CUMULATIVE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("method is CUMULATIVE")
                .hasMessageContaining("tared before each addition");
    }
}
