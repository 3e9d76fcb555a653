package io.github.formulationmath.soap;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.mend.Condition;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.size.Criterion.KeptSum;
import javax.measure.quantity.Mass;

/**
 * That the shortfall of alkali is at least, or at most, some d for every lot: {@code Σ (1 − d)·S·m + Σ acids − Σ w·A ≥ 0}, or the
 * opposite sum, with every figure at the end that makes it least. All is reckoned as potassium hydroxide, in grams for a gram.
 *
 * @param soap the soap, all lines declared
 * @param end the share d of what the fats could take
 * @param isLeast whether at least so much is to be left, or at most
 * @param withLateFat whether fat that is added late counts
 * @param hidden how far the sum has to be above 0 for what a balance may hide, in grams of potassium hydroxide
 */
record ShortfallEnd(Soap soap, MassFraction end, boolean isLeast, boolean withLateFat, Ratio hidden)
        implements Condition, KeptSum {

    // The letters of a lye calculation are those of sizes and additions too, in whose workings these stand.
    private static final Symbol VALUE = Symbol.of("σ", "saponification-value", Kind.ALKALI_NUMBER);
    private static final Symbol ACID_SHARE = Symbol.of("α", "acid-assay", Kind.SHARE);
    private static final Symbol PROTONS = Symbol.of("ν", "protons", Kind.NUMBER);
    private static final Symbol SHORTFALL = Symbol.of("φ", "alkali-shortfall", Kind.SHARE);
    private static final Symbol PURITY = Symbol.of("ω", "hydroxide-share", Kind.SHARE);
    private static final Symbol INERT = Symbol.of("η", "inert-share", Kind.SHARE);

    ShortfallEnd {
        if (!soap.undeclared().isEmpty()) {
            throw new IllegalArgumentException("not declared are " + Excerpt.of(soap.undeclared())
                    + ": say of each line whether it takes alkali, gives it or does neither");
        }
    }

    ShortfallEnd(Soap soap, MassFraction end, boolean isLeast) {
        this(soap, end, isLeast, true, Ratio.ZERO);
    }

    @Override
    public Amount<Mass> reserve() {
        Amount<Mass> grams = Amount.grams(hidden);
        return soap.formula().lines().get(0).amount() instanceof LineAmount.Weight first
                ? grams.inUnitOf(first.mass())
                : grams;
    }

    /** What is asked for. */
    @Override
    public String toString() {
        return name();
    }

    private String percent() {
        return end.percent().toString();
    }

    @Override
    public String name() {
        return (isLeast ? "at least " : "at most ") + end + " of what the fats could take is left"
                + (withLateFat ? "" : ", without late fat");
    }

    @Override
    public Phrase asked() {
        return Phrase.of(isLeast ? "criterion.shortfall-at-least" : "criterion.shortfall-at-most", percent());
    }

    @Override
    public Phrase obstacle() {
        return Phrase.of(isLeast ? "obstacle.shortfall-at-least" : "obstacle.shortfall-at-most", percent());
    }

    @Override
    public <V> V coefficient(Reckoning<V> r, FormulaLine line) {
        if (!soap.formula().lines().contains(line)) {
            throw new IllegalArgumentException(Excerpt.of(line.name()) + " is no line of the soap "
                    + Excerpt.of(soap.formula().name()) + ": ask about the formula that was declared");
        }
        SoapRole role = soap.role(line.index()).orElseThrow();
        if (role instanceof SoapRole.Takes takes && takes.late() && !withLateFat) {
            return r.literal(0);
        }
        if (role instanceof SoapRole.Takes takes) {
            return signed(r, fat(r, line, takes.fat()), isLeast);
        }
        if (role instanceof SoapRole.TakesFirst takes) {
            return signed(r, acid(r, line, takes.acid()), isLeast);
        }
        if (role instanceof SoapRole.Gives gives) {
            return signed(r, alkali(r, line, gives.grade()), !isLeast);
        }
        return r.literal(0);
    }

    private static <V> V signed(Reckoning<V> r, V size, boolean isPlus) {
        return isPlus ? size : r.product(r.literal(-1), size);
    }

    private <V> V fat(Reckoning<V> r, FormulaLine line, Fat fat) {
        Source source = fat.saponification().source();
        V left = r.difference(r.literal(1), r.given(SHORTFALL, end.fraction(), Source.user()));
        Ratio value =
                (isLeast ? fat.leastNumber() : fat.saponification().range().greatest()).gramsPerGram();
        V all = r.product(r.given(VALUE, line, value, source), left);
        Ratio inert = fat.inert().most().fraction();
        return isLeast && !inert.isZero()
                ? r.product(all, r.difference(r.literal(1), r.given(INERT, line, inert, Source.user())))
                : all;
    }

    private <V> V acid(Reckoning<V> r, FormulaLine line, Acid acid) {
        MassFraction assay = isLeast ? acid.assay().least() : acid.assay().greatest();
        V pure = r.product(
                r.given(PROTONS, line, Ratio.of(acid.protons()), Source.user()),
                r.given(ACID_SHARE, line, assay.fraction(), Source.user()));
        return r.product(pure, r.quotient(r.known(Alkali.POTASSIUM_HYDROXIDE.known()), r.known(acid.molarMass())));
    }

    private <V> V alkali(Reckoning<V> r, FormulaLine line, AlkaliGrade grade) {
        MassFraction share =
                isLeast ? grade.hydroxide().greatest() : grade.hydroxide().least();
        return r.product(
                r.given(PURITY, line, share.fraction(), grade.source()),
                r.quotient(
                        r.known(Alkali.POTASSIUM_HYDROXIDE.known()),
                        r.known(grade.alkali().known())));
    }
}
