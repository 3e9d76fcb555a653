package io.github.formulationmath.mend;

import static io.github.formulationmath.pot.Lotion.g;

import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.Optional;

/** Obstacles are equal if they say the same. */
final class ObstacleTest implements ValueContract<Object> {

    @Override
    public List<Object> different() {
        return List.of(
                new Obstacle(Obstacle.Kind.CAP, "x", Optional.empty()),
                new Obstacle(Obstacle.Kind.CAP, "y", Optional.empty()),
                new Obstacle(Obstacle.Kind.STOCK_OUT, "x", Optional.empty()),
                new Obstacle(Obstacle.Kind.STOCK_OUT, "x", Optional.of(g("1"))));
    }

    @Override
    public List<Object> same() {
        return different();
    }
}
