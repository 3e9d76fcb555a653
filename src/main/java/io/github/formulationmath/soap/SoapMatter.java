package io.github.formulationmath.soap;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/** What is in a soap beside glycerol and fatty matter: the soap itself, fat left and water. Each end by itself, so that it is sure. */
record SoapMatter(SoapComposition of, Soap soap, MassRange masses, AlkaliBalance balance) {

    private Stream<SoapRole> roles() {
        return soap.formula().lines().stream()
                .map(line -> soap.role(line.index()).orElseThrow());
    }

    private <T> List<T> all(Class<T> kind) {
        return roles().filter(kind::isInstance).map(kind::cast).toList();
    }

    private Amount<Mass> notBelowZero(Ratio grams) {
        return Amount.grams(grams.max(Ratio.ZERO)).inUnitOf(masses.unit());
    }

    /** The moles that the fats could still take, by the most and by the least that a gram of any fat takes. */
    Interval<Amount<Mass>> fatLeft() {
        Ratio perMole = balance.reference().gramsPerMole();
        Ratio leastMoles = balance.excess().greatest().canonical().unaryMinus().dividedBy(perMole);
        Ratio mostMoles = balance.excess().least().canonical().unaryMinus().dividedBy(perMole);
        List<Fat> fats =
                all(SoapRole.Takes.class).stream().map(SoapRole.Takes::fat).toList();
        Ratio strongest = end(fats, Fat::greatestDemand, true);
        Ratio weakest = end(fats, fat -> fat.leastNumber().molesPerGram(), false);
        Ratio most = mostMoles.dividedBy(weakest).min(fat(true));
        return Interval.of(notBelowZero(leastMoles.dividedBy(strongest)), notBelowZero(most));
    }

    private static <T> Ratio end(List<T> items, Function<T, Ratio> number, boolean largest) {
        return items.stream()
                .map(number)
                .reduce((a, b) -> largest ? a.max(b) : a.min(b))
                .orElseThrow();
    }

    private Ratio fat(boolean most) {
        return masses.sum(of.weights(role -> SoapComposition.fatty(role, most)), most);
    }

    /** Fat that reacted and its hydroxide, less what is set free. Of two alkalis it may be the lighter or the heavier that it got. */
    Interval<Amount<Mass>> pure() {
        List<AlkaliGrade> grades =
                all(SoapRole.Gives.class).stream().map(SoapRole.Gives::grade).toList();
        Function<AlkaliGrade, Ratio> perMole = grade -> grade.alkali().gramsPerMole();
        Ratio least = fat(false)
                .minus(fatLeft().greatest().canonical())
                .plus(of.reacted().least().times(end(grades, perMole, false)))
                .minus(of.glycerol().greatest().canonical())
                .minus(of.waterFormed().greatest().canonical());
        Ratio most = fat(true)
                .minus(fatLeft().least().canonical())
                .plus(of.reacted().greatest().times(end(grades, perMole, true)))
                .minus(of.glycerol().least().canonical())
                .minus(of.waterFormed().least().canonical());
        return Interval.of(notBelowZero(least), notBelowZero(Objects.requireNonNull(most)));
    }

    Interval<Amount<Mass>> water() {
        Ratio least = masses.sum(of.weights(role -> water(role, false)), false)
                .plus(of.waterFormed().least().canonical());
        Ratio most = masses.sum(of.weights(role -> water(role, true)), true)
                .plus(of.waterFormed().greatest().canonical());
        return Interval.of(notBelowZero(least), notBelowZero(most));
    }

    /** Of a gram of a line, what is water already or turns to water when the acid in it is neutralised. */
    private static Ratio water(SoapRole role, boolean most) {
        if (role instanceof SoapRole.Takes takes) {
            return most ? takes.fat().inert().most().fraction() : Ratio.ZERO;
        }
        if (role instanceof SoapRole.TakesFirst takes) {
            Ratio demand = most ? takes.acid().greatestDemand() : takes.acid().leastDemand();
            return demand.times(SoapComposition.WATER);
        }
        if (role instanceof SoapRole.Gives gives) {
            return rest(gives.grade(), most);
        }
        return role == SoapRole.Neither.LYE_WATER ? Ratio.ONE : Ratio.ZERO;
    }

    private static Ratio rest(AlkaliGrade grade, boolean most) {
        Ratio other = most
                ? grade.hydroxide()
                        .least()
                        .fraction()
                        .plus(grade.carbonate().least().fraction())
                : grade.hydroxide()
                        .greatest()
                        .fraction()
                        .plus(grade.carbonate().greatest().fraction());
        return Ratio.ONE.minus(other).max(Ratio.ZERO);
    }
}
