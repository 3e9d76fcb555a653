package io.github.formulationmath.verification;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.soap.LyeCalculation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What somebody else says is to be weighed of alkali and of water for given fats.
 *
 * <p>Example: {@code LyeClaim.about(lye).withFigure("Sodium Hydroxide", "191.9 g")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class LyeClaim {

    private final LyeCalculation lye;
    private final Map<String, Figure> figures;

    private LyeClaim(LyeCalculation lye, Map<String, Figure> figures) {
        this.lye = lye;
        this.figures = figures;
    }

    /**
     * A claim without figures yet.
     *
     * @param lye the same soap as it is reckoned here
     * @return the claim
     */
    public static LyeClaim about(LyeCalculation lye) {
        return new LyeClaim(Objects.requireNonNull(lye, "lye"), Map.of());
    }

    /**
     * The same claim with one figure more, or another one.
     *
     * @param name the name of an alkali, or that of the water
     * @param figure a mass as it was shown, such as {@code "136.8 g"}
     * @return the claim
     * @throws IllegalArgumentException if the lye has nothing of that name, or the figure is no mass
     */
    public LyeClaim withFigure(String name, String figure) {
        List<String> names = names();
        if (!names.contains(Objects.requireNonNull(name, "name"))) {
            throw new IllegalArgumentException("name is \"" + Excerpt.of(name)
                    + "\", which is nothing that this lye is weighed of: choose one of " + String.join(", ", names));
        }
        Figure shown = Figure.parse(Objects.requireNonNull(figure, "figure"));
        if (shown.isVolume()) {
            throw new IllegalArgumentException("figure is " + Excerpt.of(figure) + " for " + Excerpt.of(name)
                    + ": a volume of lye weighs what its density says; give the mass, as in \"136.8 g\"");
        }
        Map<String, Figure> all = new LinkedHashMap<>(figures);
        all.put(name, shown);
        return new LyeClaim(lye, all);
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        lye.alkalis().forEach(each -> names.add(each.what().alkali().inciName()));
        names.add(lye.waterName());
        return names;
    }

    /**
     * The soap as it is reckoned here.
     *
     * @return the calculation
     */
    public LyeCalculation lye() {
        return lye;
    }

    /**
     * The figures, by what they are of.
     *
     * @return an unmodifiable map
     */
    public Map<String, Figure> figures() {
        return Collections.unmodifiableMap(figures);
    }

    @Override
    public String toString() {
        return lye.name() + ": " + figures;
    }
}
