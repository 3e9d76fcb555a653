package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.verification.Verification.Outcome;
import io.github.formulationmath.weighing.Balance;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Claims made at random, with one slip in them or none. The figures are worked out here in decimal arithmetic of 60 digits,
 * line by line and apart from the library, as the author of some calculator would have typed them.
 */
final class RandomClaims {

    private static final MathContext WIDE = new MathContext(60);
    private static final BigDecimal OUNCE = new BigDecimal("28.349523125");
    private static final BigDecimal TROY = new BigDecimal("31.1034768");
    private static final BigDecimal US_FLUID = new BigDecimal("29.5735295625");
    private static final BigDecimal IMPERIAL_FLUID = new BigDecimal("28.4130625");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** More than what 60 digits lose, less than any figure shows. */
    private static final BigDecimal CRUMB = new BigDecimal("1e-30");

    private final Random random;
    private final Optional<Slip> slip;
    private final boolean restFollows;

    private final List<BigDecimal> shares = new ArrayList<>();
    private final List<Integer> phaseOf = new ArrayList<>();
    private final List<BigDecimal> strengths = new ArrayList<>();
    private final List<BigDecimal> densities = new ArrayList<>();
    private boolean parts;
    private boolean sodium;
    private int alkali = -1;
    private int rest = -1;
    private Formula formula;
    private BatchSize size;
    private BigDecimal batch;
    private BigDecimal filled;
    private BigDecimal overage = BigDecimal.ZERO;
    private BigDecimal volume;
    private BigDecimal productDensity;
    private String volumeUnit = "mL";
    private boolean ounces;

    private RandomClaims(long seed, Optional<Slip> slip, boolean restFollows) {
        this.random = new Random(seed);
        this.slip = slip;
        this.restFollows = restFollows;
    }

    /** A claim in which the slip shows: at least one figure, with a digit that counts, is not the right number rounded. */
    static Claim with(Slip slip, long seed) {
        return with(slip, seed, false);
    }

    /** As {@link #with(Slip, long)}, and the q.s. line was then worked out as what the wrong lines leave of the batch. */
    static Claim withRest(Slip slip, long seed) {
        return with(slip, seed, true);
    }

    private static Claim with(Slip slip, long seed, boolean restFollows) {
        for (int attempt = 0; attempt < 200; attempt++) {
            RandomClaims claims = new RandomClaims(seed * 1000 + attempt, Optional.of(slip), restFollows);
            Optional<Claim> claim = claims.make();
            if (claim.isPresent()) {
                return claim.get();
            }
        }
        throw new IllegalStateException(slip + " shows in no claim from seed " + seed);
    }

    /** A claim in which every figure is right, to the nearest step. */
    static Claim correct(long seed) {
        return new RandomClaims(seed, Optional.empty(), false).make().orElseThrow();
    }

    private boolean is(Slip wanted) {
        return slip.filter(wanted::equals).isPresent();
    }

    private Optional<Claim> make() {
        composition();
        formula = formula();
        size();
        List<BigDecimal> right = new ArrayList<>();
        shares.forEach(share -> right.add(share.multiply(batch, WIDE)));
        List<BigDecimal> wrong = new ArrayList<>(right);
        slip.ifPresent(s -> spoil(s, wrong));
        if (restFollows && (rest < 0 || wrong.get(rest).compareTo(right.get(rest)) != 0)) {
            return Optional.empty();
        }
        return figures(right, wrong);
    }

    private void composition() {
        int count = 3 + random.nextInt(8);
        int phases = 2 + random.nextInt(2);
        parts = is(Slip.PARTS_AS_PERCENT) || !is(Slip.REST_NOT_ADJUSTED) && random.nextInt(8) == 0;
        for (int i = 0; i < count; i++) {
            shares.add(BigDecimal.valueOf(parts ? 1 + random.nextInt(12) : 1 + random.nextInt(60)));
            phaseOf.add(i * phases / count);
            boolean solution = random.nextInt(5) == 0;
            strengths.add(solution ? percent(5 + random.nextInt(65)) : BigDecimal.ONE);
            densities.add(random.nextInt(3) == 0 ? density() : null);
        }
        if (is(Slip.STRENGTH_IGNORED)) {
            strengths.set(random.nextInt(count), percent(5 + random.nextInt(65)));
        }
        if (is(Slip.MILLILITRES_AS_GRAMS) || is(Slip.DENSITY_INVERTED)) {
            densities.set(random.nextInt(count), density());
        }
        if (is(Slip.ALKALI_EXCHANGED) || random.nextInt(6) == 0) {
            alkali = random.nextInt(count);
            sodium = random.nextBoolean();
            strengths.set(alkali, BigDecimal.ONE);
        }
        if (!parts && (is(Slip.REST_NOT_ADJUSTED) || restFollows || random.nextBoolean())) {
            rest = random.nextInt(count);
        }
    }

    private static BigDecimal percent(int value) {
        return BigDecimal.valueOf(value, 2);
    }

    private BigDecimal density() {
        int value = 850 + random.nextInt(430);
        return BigDecimal.valueOf(value == 1000 ? 997 : value, 3);
    }

    /** The amounts written: parts, or percentages with one decimal that add up to 100. */
    private Formula formula() {
        BigDecimal sum = shares.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        List<BigDecimal> written = new ArrayList<>(shares);
        if (!parts) {
            BigDecimal left = HUNDRED;
            for (int i = 1; i < shares.size(); i++) {
                BigDecimal percent = shares.get(i).multiply(HUNDRED).divide(sum, 1, RoundingMode.HALF_UP);
                written.set(i, percent.max(new BigDecimal("0.1")));
                left = left.subtract(written.get(i));
            }
            written.set(0, left);
        }
        BigDecimal whole = parts ? sum : HUNDRED;
        for (int i = 0; i < shares.size(); i++) {
            shares.set(i, written.get(i).divide(whole, WIDE));
        }
        return parts ? inParts(written) : inPercent(written);
    }

    private Formula inParts(List<BigDecimal> written) {
        FormulaBuilder builder = Formula.inParts("claimed");
        for (int i = 0; i < written.size(); i++) {
            if (i == 0 || !phaseOf.get(i).equals(phaseOf.get(i - 1))) {
                builder.phase("phase " + phaseOf.get(i));
            }
            builder.line(ingredient(i), Ratio.of(written.get(i)));
        }
        return builder.build();
    }

    private Formula inPercent(List<BigDecimal> written) {
        FormulaBuilder builder = Formula.inPercent("claimed");
        for (int i = 0; i < written.size(); i++) {
            if (i == 0 || !phaseOf.get(i).equals(phaseOf.get(i - 1))) {
                builder.phase("phase " + phaseOf.get(i));
            }
            if (i == rest) {
                builder.quantitySufficient(ingredient(i));
            } else {
                builder.line(ingredient(i), MassFraction.ofPercent(Ratio.of(written.get(i))));
            }
        }
        return builder.build();
    }

    private Ingredient ingredient(int i) {
        String name = i == alkali ? sodium ? "Sodium Hydroxide" : "Potassium Hydroxide" : "Ingredient " + i;
        Ingredient ingredient = strengths.get(i).equals(BigDecimal.ONE)
                ? Ingredient.of(name)
                : Ingredient.blend(name)
                        .part(
                                "Substance " + i,
                                strengths.get(i).multiply(HUNDRED).toPlainString() + " %")
                        .rest("Aqua");
        return densities.get(i) == null
                ? ingredient
                : ingredient.withDensity(Density.ofGramsPerMillilitre(Ratio.of(densities.get(i))));
    }

    private void size() {
        boolean packs = is(Slip.OVERAGE_LEFT_OUT) || is(Slip.OVERAGE_TWICE);
        boolean fluid = is(Slip.FLUID_OUNCE_EXCHANGED);
        boolean byVolume = fluid
                || is(Slip.MILLILITRES_AS_GRAMS) && random.nextBoolean()
                || is(Slip.DENSITY_INVERTED) && random.nextBoolean();
        ounces = is(Slip.OUNCE_EXCHANGED);
        if (slip.isEmpty() || !packs && !byVolume && !ounces) {
            int kind = random.nextInt(4);
            packs = kind == 0;
            byVolume = kind == 1 && !is(Slip.DENSITY_INVERTED) && !is(Slip.MILLILITRES_AS_GRAMS);
            ounces = kind == 2 && !is(Slip.DENSITY_INVERTED);
        }
        if (packs) {
            packs();
        } else if (byVolume) {
            volume(fluid);
        } else {
            mass();
        }
    }

    private void packs() {
        int count = 2 + random.nextInt(40);
        int fill = 10 + random.nextInt(200);
        overage = BigDecimal.valueOf(10L + random.nextInt(140), 3);
        filled = BigDecimal.valueOf((long) count * fill);
        batch = filled.multiply(BigDecimal.ONE.add(overage));
        size = BatchSize.ofPacks(count, Amount.mass(fill + " g"), MassFraction.of(Ratio.of(overage)));
    }

    private void volume(boolean fluid) {
        boolean us = random.nextBoolean();
        volumeUnit = fluid || random.nextInt(4) == 0 ? us ? "US fl oz" : "imp fl oz" : "mL";
        int number = volumeUnit.equals("mL") ? 50 + random.nextInt(2000) : 2 + random.nextInt(60);
        productDensity = density();
        volume = BigDecimal.valueOf(number).multiply(unit());
        batch = volume.multiply(productDensity);
        size = BatchSize.ofVolume(
                Amount.volume(number + " " + volumeUnit), Density.ofGramsPerMillilitre(Ratio.of(productDensity)));
    }

    private BigDecimal unit() {
        return volumeUnit.equals("mL") ? BigDecimal.ONE : volumeUnit.startsWith("US") ? US_FLUID : IMPERIAL_FLUID;
    }

    private void mass() {
        int number = ounces ? 2 + random.nextInt(80) : 50 + random.nextInt(2950);
        batch = BigDecimal.valueOf(number).multiply(ounces ? OUNCE : BigDecimal.ONE);
        size = BatchSize.ofMass(Amount.mass(number + (ounces ? " oz" : " g")));
    }

    private void spoil(Slip s, List<BigDecimal> grams) {
        switch (s) {
            case WRONG_WHOLE -> wrongWhole(grams);
            case PARTS_AS_PERCENT -> {
                BigDecimal sum = BigDecimal.ZERO;
                for (var line : formula.lines()) {
                    sum = sum.add(partsOf(line.index()));
                }
                scale(grams, sum.divide(HUNDRED, WIDE));
            }
            case MILLILITRES_AS_GRAMS -> millilitresAsGrams(grams);
            case OUNCE_EXCHANGED -> {
                BigDecimal other = List.of(TROY, US_FLUID, IMPERIAL_FLUID).get(random.nextInt(3));
                scale(grams, other.divide(OUNCE, WIDE));
            }
            case FLUID_OUNCE_EXCHANGED ->
                scale(
                        grams,
                        volumeUnit.startsWith("US")
                                ? IMPERIAL_FLUID.divide(US_FLUID, WIDE)
                                : US_FLUID.divide(IMPERIAL_FLUID, WIDE));
            case OVERAGE_LEFT_OUT -> scale(grams, filled.divide(batch, WIDE));
            case OVERAGE_TWICE -> scale(grams, BigDecimal.ONE.add(overage));
            case REST_NOT_ADJUSTED -> grams.set(rest, restNotAdjusted(grams));
            case OTHER_PHASE -> otherPhase(grams);
            case DECIMAL_POINT_MOVED -> {
                int line = random.nextInt(grams.size());
                grams.set(line, grams.get(line).movePointRight(random.nextBoolean() ? 1 : -1));
            }
            case STRENGTH_IGNORED -> strengthIgnored(grams);
            case ALKALI_EXCHANGED -> {
                BigDecimal factor = random.nextBoolean()
                        ? new BigDecimal("56.11").divide(new BigDecimal("40.00"), WIDE)
                        : new BigDecimal("56.1").divide(new BigDecimal("40"), WIDE);
                BigDecimal used = sodium ? factor : BigDecimal.ONE.divide(factor, WIDE);
                grams.set(alkali, grams.get(alkali).multiply(used, WIDE));
            }
            case DENSITY_INVERTED -> {
                if (volume != null) {
                    scale(grams, volume.divide(productDensity, WIDE).divide(batch, WIDE));
                }
            }
            default -> {
                // The rounding slips come with the display.
            }
        }
    }

    /** The whole batch, the mass before the overage, or as if a line or a phase had come later. */
    private BigDecimal restNotAdjusted(List<BigDecimal> grams) {
        int way = random.nextInt(4);
        if (way == 0) {
            return filled != null && random.nextBoolean() ? shares.get(rest).multiply(filled, WIDE) : batch;
        }
        int other = (rest + 1 + random.nextInt(grams.size() - 1)) % grams.size();
        BigDecimal sum = grams.get(rest);
        for (int i = 0; i < grams.size(); i++) {
            boolean later = way == 1 ? phaseOf.get(i).equals(phaseOf.get(other)) && i != rest : i == other;
            sum = later ? sum.add(grams.get(i)) : sum;
        }
        return sum;
    }

    private void otherPhase(List<BigDecimal> grams) {
        int phases = phaseOf.get(phaseOf.size() - 1) + 1;
        int line = random.nextInt(grams.size());
        int other = (phaseOf.get(line) + 1 + random.nextInt(phases - 1)) % phases;
        BigDecimal whole = BigDecimal.ZERO;
        for (int i = 0; i < grams.size(); i++) {
            whole = phaseOf.get(i) == other ? whole.add(grams.get(i)) : whole;
        }
        grams.set(line, shares.get(line).multiply(whole, WIDE));
    }

    private BigDecimal partsOf(int i) {
        return new BigDecimal(((io.github.formulationmath.formula.LineAmount.Parts)
                        formula.lines().get(i).amount())
                .parts()
                .toString());
    }

    private static void scale(List<BigDecimal> grams, BigDecimal factor) {
        grams.replaceAll(mass -> mass.multiply(factor, WIDE));
    }

    private void wrongWhole(List<BigDecimal> grams) {
        int phases = phaseOf.get(phaseOf.size() - 1) + 1;
        int only = random.nextInt(phases + 1);
        List<BigDecimal> right = List.copyOf(grams);
        for (int i = 0; i < grams.size(); i++) {
            int phase = phaseOf.get(i);
            if (only == phases || only == phase) {
                BigDecimal whole = BigDecimal.ZERO;
                for (int j = 0; j < grams.size(); j++) {
                    whole = phaseOf.get(j) == phase ? whole.add(right.get(j)) : whole;
                }
                grams.set(i, shares.get(i).multiply(whole, WIDE));
            }
        }
    }

    private void millilitresAsGrams(List<BigDecimal> grams) {
        if (volume != null) {
            scale(grams, volume.divide(batch, WIDE));
            return;
        }
        for (int i = 0; i < grams.size(); i++) {
            if (densities.get(i) != null) {
                grams.set(i, grams.get(i).divide(densities.get(i), WIDE));
            }
        }
    }

    private void strengthIgnored(List<BigDecimal> grams) {
        boolean fill = random.nextBoolean() && rest >= 0 && strengths.get(rest).equals(BigDecimal.ONE);
        for (int i = 0; i < grams.size(); i++) {
            BigDecimal pure = grams.get(i).multiply(strengths.get(i), WIDE);
            if (fill && i != rest) {
                grams.set(rest, grams.get(rest).add(grams.get(i)).subtract(pure));
            }
            if (i != rest || !fill) {
                grams.set(i, pure);
            }
        }
    }

    private Optional<Claim> figures(List<BigDecimal> right, List<BigDecimal> wrong) {
        boolean inVolumes = is(Slip.DENSITY_INVERTED) && volume == null;
        int places = ounces ? 2 + random.nextInt(2) : random.nextInt(4);
        boolean coarse = !ounces && !inVolumes && places > 0 && random.nextInt(5) == 0;
        BigDecimal step = BigDecimal.valueOf(coarse ? 2 : 1, places);
        boolean ties = random.nextBoolean();
        Claim claim = Claim.about(formula, size);
        if (coarse) {
            claim = claim.on(Balance.of(step.toPlainString() + " g", "100000 g"));
        }
        int slipped = is(Slip.DIGITS_EXCHANGED) ? random.nextInt(right.size()) : -1;
        List<BigDecimal> numbers = new ArrayList<>();
        for (int i = 0; i < right.size(); i++) {
            boolean inMillilitres = inVolumes && densities.get(i) != null;
            BigDecimal number = inMillilitres
                    ? wrong.get(i).multiply(densities.get(i), WIDE)
                    : wrong.get(i).divide(unit(i, inVolumes), WIDE);
            BigDecimal shown = display(number, step, ties);
            numbers.add(i == slipped ? exchanged(shown.setScale(places, RoundingMode.UNNECESSARY)) : shown);
        }
        if (restFollows && (slipped == rest || !takeRest(wrong, numbers, step, ties))) {
            return Optional.empty();
        }
        boolean shows = false;
        List<BigDecimal> exactSteps = new ArrayList<>();
        List<BigDecimal> shownSteps = new ArrayList<>();
        for (int i = 0; i < right.size(); i++) {
            BigDecimal exact = right.get(i).divide(unit(i, inVolumes), WIDE);
            BigDecimal shown = numbers.get(i);
            // A figure of 0 shows nothing, and so no slip either.
            shows |= (slip.isEmpty() || shown.signum() > 0)
                    && shown.subtract(exact)
                                    .abs()
                                    .compareTo(step.divide(BigDecimal.valueOf(2), WIDE)
                                            .add(CRUMB))
                            > 0;
            exactSteps.add(exact.divide(step, 40, RoundingMode.HALF_EVEN));
            shownSteps.add(shown.divide(step, WIDE));
            boolean inMillilitres = inVolumes && densities.get(i) != null;
            String text = shown.setScale(places, RoundingMode.UNNECESSARY).toPlainString()
                    + (ounces ? " oz" : inMillilitres ? " mL" : " g");
            claim = claim.withFigure(formula.lines().get(i), Figure.parse(text));
        }
        boolean wrongAlone = slip.isPresent() && !isClosed(exactSteps, shownSteps);
        return shows == slip.isPresent() && wrongAlone == slip.isPresent() ? Optional.of(claim) : Optional.empty();
    }

    private BigDecimal unit(int i, boolean inVolumes) {
        return ounces ? OUNCE : inVolumes && densities.get(i) != null ? densities.get(i) : BigDecimal.ONE;
    }

    /** The batch less the other masses, or less the other figures; false if that is nothing. */
    private boolean takeRest(List<BigDecimal> wrong, List<BigDecimal> numbers, BigDecimal step, boolean ties) {
        boolean ofFigures = is(Slip.DIGITS_EXCHANGED) || random.nextBoolean();
        BigDecimal left = batch.divide(unit(rest, false), WIDE);
        for (int i = 0; i < numbers.size(); i++) {
            BigDecimal other = ofFigures ? numbers.get(i) : wrong.get(i).divide(unit(i, false), WIDE);
            left = i == rest ? left : left.subtract(other);
        }
        numbers.set(rest, display(left, step, ties));
        return numbers.get(rest).signum() > 0;
    }

    /** Whether the steps shown are a right set under some rule for ties and some order: 30 places tell every tie. */
    private boolean isClosed(List<BigDecimal> exact, List<BigDecimal> shown) {
        List<BigInteger> targets = exact.stream()
                .map(steps -> steps.movePointRight(30)
                        .setScale(0, RoundingMode.HALF_EVEN)
                        .toBigIntegerExact())
                .toList();
        List<BigInteger> figures = new ArrayList<>();
        for (BigDecimal steps : shown) {
            if (steps.stripTrailingZeros().scale() > 0) {
                return false;
            }
            figures.add(steps.toBigIntegerExact());
        }
        return new RoundedByHand(targets, BigInteger.TEN.pow(30)).isLegitimate(figures, rest);
    }

    /** A correct claim but for one figure, in which a digit was mistyped. */
    static Claim mistyped(long seed) {
        Random random = new Random(seed);
        while (true) {
            Claim correct = correct(random.nextLong());
            List<Figure> figures = List.copyOf(correct.figures().values());
            int line = random.nextInt(figures.size());
            Claim claim = Claim.about(correct.formula(), correct.size());
            claim = correct.balance().map(claim::on).orElse(claim);
            for (int i = 0; i < figures.size(); i++) {
                String text = figures.get(i).written();
                claim = claim.withFigure(
                        correct.formula().lines().get(i), Figure.parse(i == line ? typo(text, random) : text));
            }
            if (Verification.of(claim).outcome() == Outcome.DOES_NOT_HOLD) {
                return claim;
            }
        }
    }

    private static String typo(String text, Random random) {
        int at = random.nextInt(text.indexOf(' '));
        char old = text.charAt(at);
        char digit = old == '.' ? '.' : (char) ('0' + (old - '0' + 1 + random.nextInt(9)) % 10);
        return text.substring(0, at) + digit + text.substring(at + 1);
    }

    /** Two neighbouring digits in the wrong order, the point where it was, no zero in front; or the same number. */
    private BigDecimal exchanged(BigDecimal number) {
        char[] digits = number.unscaledValue().toString().toCharArray();
        if (digits.length > 1) {
            int at = random.nextInt(digits.length - 1);
            if (at > 0 || digits[1] != '0') {
                char first = digits[at];
                digits[at] = digits[at + 1];
                digits[at + 1] = first;
            }
        }
        return new BigDecimal(new BigInteger(new String(digits)), number.scale());
    }

    private BigDecimal display(BigDecimal number, BigDecimal step, boolean ties) {
        if (is(Slip.TRUNCATED)) {
            return onGrid(number, step, RoundingMode.DOWN);
        }
        if (is(Slip.ROUNDED_TWICE)) {
            BigDecimal finer = step.movePointLeft(1);
            return onGrid(onGrid(number, finer, RoundingMode.HALF_UP), step, RoundingMode.HALF_UP);
        }
        return onGrid(number, step, ties ? RoundingMode.HALF_UP : RoundingMode.HALF_EVEN);
    }

    private static BigDecimal onGrid(BigDecimal number, BigDecimal step, RoundingMode mode) {
        return number.divide(step, 40, RoundingMode.HALF_EVEN).setScale(0, mode).multiply(step);
    }
}
