package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeBuilder;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.verification.LyeCause;
import io.github.formulationmath.verification.LyeClaim;
import io.github.formulationmath.verification.LyeSlip;
import io.github.formulationmath.verification.LyeVerification;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Lyes of which every number is drawn here and reckoned here in decimals: right figures agree, and a figure with a slip in it is called
 * wrong and the slip named, by itself or, where two were made, with the other.
 */
class LyeSlipsFoundTest {

    private static final MathContext DIGITS = new MathContext(40);
    private static final BigDecimal NAOH = new BigDecimal("39.99710928");
    private static final BigDecimal KOH = new BigDecimal("56.10564");
    private static final BigDecimal CARBONATE = new BigDecimal("105.98844");
    private static final BigDecimal POTASH = new BigDecimal("138.2055");
    private static final BigDecimal CITRIC = new BigDecimal("192.12352");
    private static final BigDecimal HYDRATE = new BigDecimal("210.1388");

    /** A lye in whole numbers: grams, tenths of mg KOH/g at both ends, tenths of per cent. */
    private static final class Drawn {
        int[] grams;
        int[] low;
        int[] high;
        boolean sodium;
        int purity;
        int carbonate;
        int goal;
        boolean over;
        int acid;
        boolean hydrate;
        int concentration;

        static Drawn of(Dice dice) {
            Drawn d = new Drawn();
            int fats = dice.between(2, 5);
            d.grams = new int[fats];
            d.low = new int[fats];
            d.high = new int[fats];
            for (int i = 0; i < fats; i++) {
                d.grams[i] = dice.between(80, 900);
                d.low[i] = dice.between(1700, 2550);
                d.high[i] = d.low[i] + 2 * dice.between(5, 60);
            }
            d.sodium = dice.oneIn(2);
            d.purity = dice.between(850, 985);
            d.carbonate = 2 * dice.between(3, 10);
            d.goal = dice.between(20, 120);
            d.over = dice.oneIn(2);
            d.acid = dice.between(5, 30);
            d.hydrate = dice.oneIn(2);
            d.concentration = dice.between(250, 450);
            return d;
        }

        LyeCalculation lye() {
            LyeBuilder builder = LyeCalculation.named("drawn");
            for (int i = 0; i < grams.length; i++) {
                SaponificationValue value = SaponificationValue.ofStandard(
                        tenths(low[i]) + " mg KOH/g", tenths(high[i]) + " mg KOH/g", SoapLine.DRAWN);
                builder.fat(Fat.triglycerides("fat " + i, value, InertMatter.countedInTheValue()), grams[i] + " g");
            }
            Alkali alkali = sodium ? Alkali.SODIUM_HYDROXIDE : Alkali.POTASSIUM_HYDROXIDE;
            String assay = tenths(purity) + " %";
            return builder.acid(
                            Acid.of("Citric Acid", hydrate ? "C6H8O7·H2O" : "C6H8O7", 3, "100 %", "100 %"), acid + " g")
                    .alkali(AlkaliGrade.assay(alkali, assay, assay, AlkaliGrade.Stated.HYDROXIDE)
                            .carbonate(
                                    tenths(carbonate) + " %",
                                    tenths(carbonate) + " %",
                                    Evidence.MAXIMUM_ERROR,
                                    SoapLine.DRAWN))
                    .leaving(
                            over
                                    ? Unsaponified.fatOverEquivalence(tenths(goal) + " %")
                                    : Unsaponified.alkaliShortfall(tenths(goal) + " %"),
                            Reckoned.WITH_THE_MIDDLES)
                    .water("Aqua", LyeWater.concentration(tenths(concentration) + " %", LyeWater.Of.PURE_HYDROXIDE))
                    .build();
        }

        private static String tenths(int tenths) {
            return BigDecimal.valueOf(tenths, 1).toPlainString();
        }

        String name() {
            return sodium ? "Sodium Hydroxide" : "Potassium Hydroxide";
        }
    }

    /** The same lye on paper, with a place for every slip. */
    private static final class Paper {
        final Drawn drawn;
        BigDecimal[] values;
        BigDecimal[] grams;
        BigDecimal molarMass;
        BigDecimal purity;
        BigDecimal kept;
        BigDecimal acidFactor = BigDecimal.ONE;
        BigDecimal acidMoles;
        BigDecimal scale = BigDecimal.ONE;
        BigDecimal concentration;

        Paper(Drawn drawn) {
            this.drawn = drawn;
            int n = drawn.grams.length;
            values = new BigDecimal[n];
            grams = new BigDecimal[n];
            for (int i = 0; i < n; i++) {
                values[i] = BigDecimal.valueOf(drawn.low[i] + drawn.high[i]).divide(new BigDecimal(20000), DIGITS);
                grams[i] = BigDecimal.valueOf(drawn.grams[i]);
            }
            molarMass = drawn.sodium ? NAOH : KOH;
            purity = BigDecimal.valueOf(drawn.purity, 3);
            kept = kept(drawn.over);
            acidMoles = acid(drawn.hydrate ? HYDRATE : CITRIC);
            concentration = BigDecimal.valueOf(drawn.concentration, 3);
        }

        BigDecimal goal() {
            return BigDecimal.valueOf(drawn.goal, 3);
        }

        BigDecimal kept(boolean over) {
            return over ? BigDecimal.ONE.divide(BigDecimal.ONE.add(goal()), DIGITS) : BigDecimal.ONE.subtract(goal());
        }

        BigDecimal acid(BigDecimal mass) {
            return BigDecimal.valueOf(drawn.acid)
                    .multiply(BigDecimal.valueOf(3))
                    .divide(mass, DIGITS);
        }

        BigDecimal moles() {
            BigDecimal fats = BigDecimal.ZERO;
            for (int i = 0; i < values.length; i++) {
                fats = fats.add(grams[i].multiply(values[i]));
            }
            return fats.divide(KOH, DIGITS).multiply(kept).add(acidMoles.multiply(acidFactor));
        }

        String alkali() {
            BigDecimal grams =
                    moles().multiply(molarMass).divide(purity, DIGITS).multiply(scale);
            return grams.setScale(4, RoundingMode.HALF_EVEN).toPlainString() + " g";
        }

        String water() {
            BigDecimal grams = moles().multiply(molarMass)
                    .multiply(BigDecimal.ONE.subtract(concentration))
                    .divide(concentration, DIGITS)
                    .multiply(scale);
            return grams.setScale(4, RoundingMode.HALF_EVEN).toPlainString() + " g";
        }
    }

    private static BigDecimal ratio() {
        return KOH.divide(NAOH, DIGITS);
    }

    /** Makes a slip on paper; false if this lye has no place for it, or it changes nothing. */
    private static boolean make(LyeSlip slip, Paper p, Dice dice) {
        Drawn d = p.drawn;
        switch (slip) {
            case VALUE_OF_OTHER_ALKALI -> times(p, d.sodium ? ratio() : BigDecimal.ONE.divide(ratio(), DIGITS));
            case VALUE_TURNED_TWICE -> times(p, d.sodium ? BigDecimal.ONE.divide(ratio(), DIGITS) : ratio());
            case ALKALI_EXCHANGED -> p.molarMass = d.sodium ? KOH : NAOH;
            case PURITY_FORGOTTEN -> p.purity = BigDecimal.ONE;
            case PURITY_TWICE -> p.purity = p.purity.multiply(p.purity);
            case PURITY_MULTIPLIED -> p.purity = BigDecimal.ONE.divide(p.purity, DIGITS);
            case CARBONATE_COUNTED -> {
                BigDecimal k = d.sodium
                        ? NAOH.multiply(BigDecimal.valueOf(2)).divide(CARBONATE, DIGITS)
                        : KOH.multiply(BigDecimal.valueOf(2)).divide(POTASH, DIGITS);
                p.purity = p.purity
                        .add(k.multiply(BigDecimal.valueOf(d.carbonate, 3)))
                        .min(BigDecimal.ONE);
            }
            case OTHER_CONVENTION -> p.kept = p.kept(!d.over);
            case SHORTFALL_FORGOTTEN -> p.kept = BigDecimal.ONE;
            case SHORTFALL_ADDED -> p.kept = BigDecimal.ONE.add(p.goal());
            case SHORTFALL_TWICE -> p.kept = p.kept.multiply(p.kept);
            case ACID_DISCOUNTED -> p.acidFactor = p.kept;
            case ACID_TAKEN_OFF -> p.acidFactor = BigDecimal.ONE.negate();
            case ACID_FORGOTTEN -> p.acidMoles = BigDecimal.ZERO;
            case HYDRATE_CONFUSED -> p.acidMoles = p.acid(d.hydrate ? CITRIC : HYDRATE);
            case ONE_PROTON -> p.acidMoles = p.acidMoles.divide(BigDecimal.valueOf(3), DIGITS);
            case OTHER_END_OF_RANGES -> {
                int[] end = dice.oneIn(2) ? d.low : d.high;
                for (int i = 0; i < end.length; i++) {
                    p.values[i] = BigDecimal.valueOf(end[i], 4);
                }
            }
            case FAT_LEFT_OUT -> p.grams[dice.between(0, p.grams.length - 1)] = BigDecimal.ZERO;
            case FATS_EXCHANGED -> {
                int i = dice.between(0, p.values.length - 2);
                BigDecimal first = p.values[i];
                p.values[i] = p.values[i + 1];
                p.values[i + 1] = first;
            }
            // Pounds for ounces, ounces for grams, pounds for kilograms, and the other way round.
            case UNIT_EXCHANGED ->
                p.scale = new BigDecimal(dice.of("16", "0.0625", "28.349523125", "0.45359237", "0.001"));
            case WATER_REVERSED -> p.concentration = BigDecimal.ONE.subtract(p.concentration);
            case OTHER_BASIS_OF_DIVISION, WATER_BY_OTHER_CONVENTION, WATER_OF_OTHER_ALKALI_MASS -> {
                return false;
            }
        }
        return true;
    }

    private static void times(Paper p, BigDecimal factor) {
        for (int i = 0; i < p.values.length; i++) {
            p.values[i] = p.values[i].multiply(factor, DIGITS);
        }
    }

    private static LyeVerification held(Drawn drawn, Paper paper) {
        return LyeVerification.of(LyeClaim.about(drawn.lye())
                .withFigure(drawn.name(), paper.alkali())
                .withFigure("Aqua", paper.water()));
    }

    @Test
    void right_figures_agree() {
        for (int seed = 0; seed < Cases.of(200); seed++) {
            Drawn drawn = Drawn.of(new Dice(seed));
            LyeVerification held = held(drawn, new Paper(drawn));
            assertThat(held.agrees()).as("seed %s", seed).isTrue();
            assertThat(held.causes()).isEmpty();
        }
    }

    @Test
    void every_slip_is_called_wrong_and_named() {
        Map<LyeSlip, Integer> seen = new EnumMap<>(LyeSlip.class);
        for (int seed = 0; seed < Cases.of(20); seed++) {
            for (LyeSlip slip : LyeSlip.values()) {
                Dice dice = new Dice(seed * 100L + slip.ordinal());
                Drawn drawn = Drawn.of(dice);
                Paper right = new Paper(drawn);
                Paper wrong = new Paper(drawn);
                if (!make(slip, wrong, dice)
                        || wrong.alkali().equals(right.alkali())
                                && wrong.water().equals(right.water())) {
                    continue;
                }
                LyeVerification held = held(drawn, wrong);
                assertThat(held.agrees()).as("%s, seed %s", slip, seed).isFalse();
                assertThat(held.causes())
                        .extracting(LyeCause::slips)
                        .as("%s, seed %s: %s", slip, seed, held)
                        .contains(List.of(slip));
                seen.merge(slip, 1, Integer::sum);
            }
        }
        assertThat(seen).hasSize(LyeSlip.values().length - 3);
    }

    /** Of two slips at once, either both are named together, or one of another name that gives the same figures. */
    @Test
    void two_slips_at_once_are_explained() {
        List<LyeSlip> slips = new ArrayList<>(List.of(LyeSlip.values()));
        int named = 0;
        int tried = 0;
        for (int seed = 0; seed < Cases.of(60); seed++) {
            Dice dice = new Dice(seed);
            Drawn drawn = Drawn.of(dice);
            List<LyeSlip> two =
                    dice.shuffled(slips).subList(0, 2).stream().sorted().toList();
            Paper wrong = new Paper(drawn);
            if (!make(two.get(0), wrong, dice) || !make(two.get(1), wrong, dice) || sameRule(two)) {
                continue;
            }
            tried++;
            LyeVerification held = held(drawn, wrong);
            assertThat(held.agrees() || !held.causes().isEmpty())
                    .as("%s, seed %s", two, seed)
                    .isTrue();
            named += held.causes().stream().anyMatch(cause -> cause.slips().equals(two)) ? 1 : 0;
        }
        assertThat(tried).isGreaterThan(20);
        assertThat(named).isGreaterThan(tried * 3 / 4);
    }

    /** Two slips about one number are one slip, the latter. */
    private static boolean sameRule(List<LyeSlip> two) {
        return two.stream().map(LyeSlipsFoundTest::about).distinct().count() < 2;
    }

    private static String about(LyeSlip slip) {
        return switch (slip) {
            case PURITY_FORGOTTEN, PURITY_TWICE, PURITY_MULTIPLIED, CARBONATE_COUNTED -> "purity";
            case OTHER_CONVENTION, SHORTFALL_FORGOTTEN, SHORTFALL_ADDED, SHORTFALL_TWICE -> "goal";
            case ACID_DISCOUNTED, ACID_FORGOTTEN, ACID_TAKEN_OFF, HYDRATE_CONFUSED, ONE_PROTON -> "acid";
            case VALUE_OF_OTHER_ALKALI, VALUE_TURNED_TWICE, OTHER_END_OF_RANGES, FAT_LEFT_OUT, FATS_EXCHANGED -> "fats";
            default -> slip.name();
        };
    }

    /** A division by another basis, of a lye of two alkalis: 60 % by mole, pure mass or mass as weighed. */
    @Test
    void a_division_by_another_basis_is_named() {
        List<AlkaliMixture> divisions = List.of(
                AlkaliMixture.byMole("60 %"), AlkaliMixture.byPureMass("60 %"), AlkaliMixture.asWeighed("60 %"));
        for (AlkaliMixture meant : divisions) {
            for (AlkaliMixture made : divisions) {
                LyeCalculation theirs = divided(made);
                LyeVerification held = LyeVerification.of(LyeClaim.about(divided(meant))
                        .withFigure("Sodium Hydroxide", shown(theirs, 0))
                        .withFigure("Potassium Hydroxide", shown(theirs, 1)));
                assertThat(held.agrees()).isEqualTo(meant.equals(made));
                if (!meant.equals(made)) {
                    assertThat(held.causes())
                            .extracting(LyeCause::slips)
                            .contains(List.of(LyeSlip.OTHER_BASIS_OF_DIVISION));
                }
            }
        }
    }

    private static String shown(LyeCalculation lye, int alkali) {
        double grams = lye.alkalis().get(alkali).mass().canonical().doubleValue();
        return BigDecimal.valueOf(grams).setScale(3, RoundingMode.HALF_EVEN).toPlainString() + " g";
    }

    private static LyeCalculation divided(AlkaliMixture division) {
        return LyeCalculation.named("two")
                .fat(
                        Fat.triglycerides(
                                "fat",
                                SaponificationValue.ofStandard("190 mg KOH/g", "196 mg KOH/g", SoapLine.DRAWN),
                                InertMatter.countedInTheValue()),
                        "1000 g")
                .alkalis(division, grade(Alkali.SODIUM_HYDROXIDE, "98 %"), grade(Alkali.POTASSIUM_HYDROXIDE, "90 %"))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.ofFats("30 %"))
                .build();
    }

    private static AlkaliGrade grade(Alkali alkali, String assay) {
        return AlkaliGrade.assay(alkali, assay, assay, AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, SoapLine.DRAWN);
    }
}
