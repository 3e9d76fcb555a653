package io.github.formulationmath.reckoning;

/** The powers of the basic quantities in a number. Tells the unit of a term that has no name of its own. */
record Dimension(int mass, int volume, int substance, int money, int temperature) {

    static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);

    static Dimension of(Kind kind) {
        return switch (kind) {
            case MASS -> new Dimension(1, 0, 0, 0, 0);
            case VOLUME -> new Dimension(0, 1, 0, 0, 0);
            case DENSITY -> new Dimension(1, -1, 0, 0, 0);
            case SHARE, SHARE_DIFFERENCE, NUMBER, ALKALI_NUMBER, IODINE_NUMBER -> NONE;
            case SUBSTANCE -> new Dimension(0, 0, 1, 0, 0);
            case SUBSTANCE_CONCENTRATION -> new Dimension(0, -1, 1, 0, 0);
            case MASS_SQUARED -> new Dimension(2, 0, 0, 0, 0);
            case MOLAR_MASS -> new Dimension(1, 0, -1, 0, 0);
            case MONEY -> new Dimension(0, 0, 0, 1, 0);
            case MONEY_PER_MASS -> new Dimension(-1, 0, 0, 1, 0);
            case TEMPERATURE -> new Dimension(0, 0, 0, 0, 1);
        };
    }

    Dimension times(Dimension other) {
        return plus(other, 1);
    }

    Dimension dividedBy(Dimension other) {
        return plus(other, -1);
    }

    /** Half of each power; odd powers have no name here and are cut. */
    Dimension root() {
        return new Dimension(mass / 2, volume / 2, substance / 2, money / 2, temperature / 2);
    }

    private Dimension plus(Dimension other, int sign) {
        return new Dimension(
                mass + sign * other.mass,
                volume + sign * other.volume,
                substance + sign * other.substance,
                money + sign * other.money,
                temperature + sign * other.temperature);
    }
}
