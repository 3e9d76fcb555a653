package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.ValueContract;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Equality and text of a station. */
class StationContractTest {
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    @Nested
    class StationContract implements ValueContract<WeighingStation> {
        @Override
        public List<WeighingStation> different() {
            Vessel beaker = Vessel.of("beaker", "200 g");
            return List.of(
                    WeighingStation.inVessel(TENTH, beaker),
                    WeighingStation.fromBoat(TENTH, beaker),
                    WeighingStation.inVessel(TENTH, Vessel.of("jar", "100 g")),
                    WeighingStation.inVessel(Balance.of("1 g", "5 kg"), beaker));
        }

        @Override
        public List<WeighingStation> same() {
            return different();
        }

        @Test
        void a_station_says_how_it_weighs() {
            assertThat(different().get(0).toString()).contains(", in beaker");
            assertThat(different().get(1).toString()).contains(", from beaker");
        }
    }
}
