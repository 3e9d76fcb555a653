package io.github.formulationmath.support;

import io.github.formulationmath.formula.Formula;

/**
 * Formulas that several test classes weigh, check and print. A formula that a third class needs moves here; one that only
 * its own class understands stays there.
 */
public final class Formulas {

    private Formulas() {}

    /** One line that is everything. */
    public static Formula only(String name, String ingredient) {
        return Formula.inPercent(name).line(ingredient, "100 %").build();
    }

    /** Two lines, 80 to 20. */
    public static Formula oilAndWax(String name) {
        return Formula.inPercent(name).line("Oil", "80 %").line("Wax", "20 %").build();
    }

    /** Its smallest line is 0.5 %: on a display of 0.1 g one division of it takes 20 g. */
    public static Formula balm(String name) {
        return Formula.inPercent(name)
                .line("Oil", "79.5 %")
                .line("Wax", "20 %")
                .line("Tocopherol", "0.5 %")
                .build();
    }

    /** Two phases, water to make up 100 %: Aqua takes 80 %. */
    public static Formula lotion(String name) {
        return Formula.inPercent(name)
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .phase("oil")
                .line("Avena Sativa Kernel Oil", "12 %")
                .line("Glyceryl Stearate SE", "5 %")
                .build();
    }

    /** A preservative just under its cap, in water. */
    public static Formula preservedWater(String name) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Phenoxyethanol", "0.9 %")
                .build();
    }

    /** A preservative so close to its cap of 1 % that the balance decides. */
    public static Formula closeToTheCap(String name) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Glycerin", "5 %")
                .line("Phenoxyethanol", "0.98 %")
                .build();
    }

    /** Six lines from 70 % to 0.5 %: the error of rounding against the size of the batch is a saw-tooth with islands. */
    public static Formula sawTooth(String name) {
        return Formula.inPercent(name)
                .line("Aqua", "70 %")
                .line("Oil", "20 %")
                .line("Emulsifier", "5 %")
                .line("Glycerin", "3 %")
                .line("Thickener", "1.5 %")
                .line("Preservative", "0.5 %")
                .build();
    }

    /** The same material in both phases, water to make up 100 %. */
    public static Formula glycerinTwice(String name) {
        return Formula.inPercent(name)
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .phase("cool")
                .line("Glycerin", "1 %")
                .line("Panthenol", "2 %")
                .build();
    }

    /** The balm with its oil to make up 100 %. */
    public static Formula balmToMakeUp(String name) {
        return Formula.inPercent(name)
                .quantitySufficient("Oil")
                .line("Wax", "20 %")
                .line("Tocopherol", "0.5 %")
                .build();
    }

    /** Six lines in the order in which they are weighed, water to make up 100 %: Aqua takes 75 %. */
    public static Formula cream(String name) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Glycerin", "5 %")
                .line("Oil", "12 %")
                .line("Emulsifier", "5 %")
                .line("Wax", "2 %")
                .line("Preservative", "1 %")
                .build();
    }

    /** Its smallest line is 0.3 %. */
    public static Formula thickenedLotion(String name) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .line("Avena Sativa Kernel Oil", "12 %")
                .line("Xanthan Gum", "0.3 %")
                .build();
    }

    /** Its smallest line is 0.5 %, its oil makes up 100 %. */
    public static Formula sunflowerBalm(String name) {
        return Formula.inPercent(name)
                .line("Cera Alba", "20 %")
                .quantitySufficient("Helianthus Annuus Seed Oil")
                .line("Tocopherol", "0.5 %")
                .build();
    }

    /** A scent that has to be declared, and a preservative well below its cap. */
    public static Formula perfumedWater(String name, String linalool) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Linalool", linalool)
                .line("Phenoxyethanol", "0.5 %")
                .build();
    }
}
