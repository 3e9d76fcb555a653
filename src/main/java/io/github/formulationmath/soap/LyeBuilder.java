package io.github.formulationmath.soap;

import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** What a lye is reckoned from, being collected. Started by {@link LyeCalculation#named}. */
public final class LyeBuilder {

    private final String name;
    private final List<LyeCalculation.Portion<Fat>> fats = new ArrayList<>();
    private final List<LyeCalculation.Portion<Acid>> acids = new ArrayList<>();
    private final List<LyeCalculation.Portion<Ingredient>> others = new ArrayList<>();
    private final List<AlkaliGrade> grades = new ArrayList<>();
    private @Nullable AlkaliMixture mixture;
    private @Nullable Unsaponified goal;
    private @Nullable Reckoned reckoned;
    private @Nullable LyeWater water;
    private String waterName = "Aqua";

    LyeBuilder(String name) {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the soap");
        }
        this.name = name;
    }

    /**
     * Adds a fat.
     *
     * @param fat what it is
     * @param mass such as {@code "700 g"}, above 0
     * @return this
     * @throws IllegalArgumentException if the text is no mass above 0
     */
    public LyeBuilder fat(Fat fat, String mass) {
        fats.add(new LyeCalculation.Portion<>(Objects.requireNonNull(fat, "fat"), positive(fat.name(), mass)));
        return this;
    }

    /**
     * Adds a free acid, which takes its alkali in full before any fat does.
     *
     * @param acid what it is
     * @param mass such as {@code "10 g"}, above 0
     * @return this
     * @throws IllegalArgumentException if the text is no mass above 0
     */
    public LyeBuilder acid(Acid acid, String mass) {
        acids.add(new LyeCalculation.Portion<>(Objects.requireNonNull(acid, "acid"), positive(acid.name(), mass)));
        return this;
    }

    /**
     * Adds something that takes no alkali and gives none.
     *
     * @param ingredientName what it is
     * @param mass such as {@code "20 g"}, above 0
     * @return this
     * @throws IllegalArgumentException if the text is no mass above 0, or the name is that of something known to bring alkali
     */
    public LyeBuilder neither(String ingredientName, String mass) {
        SoapRole.Neither.require(Objects.requireNonNull(ingredientName, "ingredientName"));
        others.add(new LyeCalculation.Portion<>(Ingredient.of(ingredientName), positive(ingredientName, mass)));
        return this;
    }

    private static Amount<Mass> positive(String name, String mass) {
        Amount<Mass> read = Amount.mass(mass);
        return read.signum() > 0 ? read : Amount.requirePositive("mass of " + Excerpt.of(name), read);
    }

    /**
     * The alkali.
     *
     * @param grade what is weighed
     * @return this
     */
    public LyeBuilder alkali(AlkaliGrade grade) {
        grades.clear();
        grades.add(Objects.requireNonNull(grade, "grade"));
        mixture = null;
        return this;
    }

    /**
     * Two alkalis.
     *
     * @param division how the alkali is divided between them, with its basis
     * @param sodium what is weighed of sodium hydroxide
     * @param potassium what is weighed of potassium hydroxide
     * @return this
     * @throws IllegalArgumentException if a grade is of the other alkali
     */
    public LyeBuilder alkalis(AlkaliMixture division, AlkaliGrade sodium, AlkaliGrade potassium) {
        mixture = Objects.requireNonNull(division, "division");
        grades.clear();
        grades.add(of(Alkali.SODIUM_HYDROXIDE, "sodium", sodium));
        grades.add(of(Alkali.POTASSIUM_HYDROXIDE, "potassium", potassium));
        return this;
    }

    private static AlkaliGrade of(Alkali wanted, String name, AlkaliGrade grade) {
        if (Objects.requireNonNull(grade, name).alkali() != wanted) {
            throw new IllegalArgumentException(
                    "grade is of " + grade.alkali() + " where " + wanted + " is meant: were the two exchanged?");
        }
        return grade;
    }

    /**
     * How much fat is to stay unsaponified, and which ends of the ranges it is reckoned with. Neither has a default.
     *
     * @param unsaponified the goal in its convention
     * @param with which ends of the ranges
     * @return this
     */
    public LyeBuilder leaving(Unsaponified unsaponified, Reckoned with) {
        goal = Objects.requireNonNull(unsaponified, "unsaponified");
        reckoned = Objects.requireNonNull(with, "with");
        return this;
    }

    /**
     * The water of the lye.
     *
     * @param ingredientName what it is called in the formula, such as Aqua
     * @param figure how much, in its convention
     * @return this
     */
    public LyeBuilder water(String ingredientName, LyeWater figure) {
        waterName = Objects.requireNonNull(ingredientName, "ingredientName");
        water = Objects.requireNonNull(figure, "figure");
        return this;
    }

    /**
     * Reckons the lye.
     *
     * @return the alkali and the water, with the formula that they make
     * @throws IllegalArgumentException if there is no fat, no alkali, no goal or no water figure, or the water makes a lye
     *     stronger than 50 %, or one that is stronger than the stock lye it is made from
     */
    public LyeCalculation build() {
        if (fats.isEmpty()) {
            throw new IllegalArgumentException("there is no fat: add one with fat(…)");
        }
        if (grades.isEmpty()) {
            throw new IllegalArgumentException("there is no alkali: say what is weighed with alkali(…) or alkalis(…)");
        }
        return new LyeCalculation(
                name,
                List.copyOf(fats),
                List.copyOf(acids),
                List.copyOf(others),
                List.copyOf(grades),
                mixture,
                required(goal, "how much fat stays unsaponified", "leaving"),
                required(reckoned, "which ends of the ranges are meant", "leaving"),
                required(water, "how much water the lye is made with", "water"),
                waterName);
    }

    private static <T> T required(@Nullable T value, String what, String method) {
        if (value == null) {
            throw new IllegalArgumentException(
                    "it is not said " + what + ": there is no default, say it with " + method + "(…)");
        }
        return value;
    }
}
