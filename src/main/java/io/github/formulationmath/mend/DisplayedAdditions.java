package io.github.formulationmath.mend;

import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.number.StepProgram;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.LineCheck;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/**
 * Additions in whole steps of a display, each of the balance of its line ({@link MadeLine#balance()}) and weighed in one go,
 * checked exactly against what the correction has to reach.
 *
 * <p>Example: 2.76… g on a display of 0.1 g become 2.8 g; 2.7 g would leave the line outside.
 *
 * <p>Immutable and thread-safe.
 *
 * @param made what is in the pot
 * @param rules what the additions have to reach
 * @param additions what the display must read for each addition above 0, tared before it, on the balance of its line ({@link
 *     MadeLine#balance()}) and in its unit
 * @param quality how good the additions are
 */
public record DisplayedAdditions(MadeBatch made, CorrectionRules rules, List<LineAddition> additions, Quality quality)
        implements Explained {

    private static final Symbol STEPS = Symbol.of("n", "addition-steps", Kind.NUMBER);
    private static final Symbol STEP = Symbol.of("d", "readability", Kind.MASS);
    private static final Symbol SHOWN = Symbol.of("x", "displayed-addition", Kind.MASS);

    /** How good the additions are. */
    public enum Quality {
        /** Within all tolerances and caps, and no smaller ones in whole steps are. */
        SMALLEST,
        /** Within all tolerances and caps; smaller ones may be, they were not searched for or could not be ruled out. */
        WITHIN,
        /** Not within, and no additions in whole steps are. */
        NONE_WITHIN,
        /** Not within; others may be: they were not searched for, or the search was broken off. */
        NOT_WITHIN
    }

    /**
     * Copies the additions.
     *
     * @param made what is in the pot
     * @param rules what the additions have to reach
     * @param additions what the display must read for each addition
     * @param quality how good the additions are
     */
    public DisplayedAdditions {
        Objects.requireNonNull(made, "made");
        Objects.requireNonNull(rules, "rules");
        additions = List.copyOf(additions);
        Objects.requireNonNull(quality, "quality");
    }

    private static DisplayedAdditions of(MadeBatch made, CorrectionRules rules, List<Ratio> grams, Quality quality) {
        List<LineAddition> additions = made.lines().stream()
                .filter(line -> !grams.get(line.index()).isZero())
                .map(line -> LineAddition.of(
                        line,
                        line.balance()
                                .readability()
                                .times(grams.get(line.index())
                                        .dividedBy(line.balance().readability().canonical()))))
                .toList();
        return new DisplayedAdditions(made, rules, additions, quality);
    }

    /** Lines from boats in which something stays, of which every choice is tried; it doubles with each. */
    private static final int MOST_CHOSEN = 5;

    /** The smallest additions in steps, if there are any and they are found; else the nearest to exact ones. */
    static DisplayedAdditions smallest(MadeBatch made, CorrectionRules rules, List<Ratio> grams) {
        NetAdditions net = NetAdditions.of(made);
        List<Integer> leaving = net.leaving();
        List<Set<Integer>> choices = leaving.size() <= MOST_CHOSEN
                ? subsets(leaving)
                : List.of(
                        leaving.stream().filter(j -> !grams.get(j).isZero()).collect(Collectors.toSet()),
                        Set.copyOf(leaving));
        boolean all = leaving.size() <= MOST_CHOSEN;
        boolean certain = true;
        Ratio upTo = net.mostShown(rules.roomFor(made).minus(made.mass().canonical()));
        Optional<List<Ratio>> best = Optional.empty();
        for (Set<Integer> added : choices) {
            StepProgram.Answer answer = new StepProgram(rows(made, rules, net, added), net.steps()).solve(upTo);
            certain &= answer.isCertain();
            if (answer.values().isPresent()
                    && (best.isEmpty() || sum(answer.values().get()).compareTo(upTo) < 0)) {
                best = answer.values();
                upTo = sum(best.get());
            }
            if (!certain) {
                // What was broken off once is broken off again: no choice can be ruled out any more.
                break;
            }
        }
        if (best.isPresent()) {
            return of(made, rules, best.get(), all && certain ? Quality.SMALLEST : Quality.WITHIN);
        }
        DisplayedAdditions nearest = nearest(made, rules, grams);
        return all && certain ? new DisplayedAdditions(made, rules, nearest.additions, Quality.NONE_WITHIN) : nearest;
    }

    private static List<Set<Integer>> subsets(List<Integer> all) {
        List<Set<Integer>> subsets = new ArrayList<>();
        for (int word = 0; word < 1 << all.size(); word++) {
            Set<Integer> chosen = new TreeSet<>();
            for (int bit = 0; bit < all.size(); bit++) {
                if ((word >> bit & 1) == 1) {
                    chosen.add(all.get(bit));
                }
            }
            subsets.add(chosen);
        }
        return subsets;
    }

    /** What additions have to keep: in the pot by what gets there, of a stock or a balance by what is shown. */
    private static List<LinearProgram.Row> rows(
            MadeBatch made, CorrectionRules rules, NetAdditions net, Set<Integer> added) {
        int count = made.lines().size();
        List<LinearProgram.Row> rows = new ArrayList<>(net.choosing(added));
        for (PotConstraint each : PotConstraint.of(made, rules)) {
            PotConstraint.Row row = each.row(count);
            rows.add(PotConstraint.isOfShown(each) ? row.dense(count) : net.shown(row, added));
        }
        PotConstraint.carried(made).map(each -> each.row(count).dense(count)).forEach(rows::add);
        return rows;
    }

    /**
     * Each addition rounded to the nearest step of the balance of its line, half to even; where that would be more than there is of it, or than there
     * is room for, to the step below, those first that were rounded up most.
     */
    static DisplayedAdditions nearest(MadeBatch made, CorrectionRules rules, List<Ratio> exact) {
        NetAdditions net = NetAdditions.of(made);
        List<Ratio> wanted = new ArrayList<>();
        List<Ratio> shown = new ArrayList<>();
        for (int j = 0; j < exact.size(); j++) {
            wanted.add(net.shown(j, exact.get(j)));
            shown.add(Rounding.toMultipleOf(net.steps().get(j)).apply(wanted.get(j)));
        }
        for (PotConstraint condition : PotConstraint.ofBench(made, rules)) {
            lower(condition.row(exact.size()), shown, wanted, net.steps());
        }
        List<Ratio> put = net.net(shown);
        Ratio allShown = sum(shown);
        Ratio allPut = sum(put);
        boolean within = Stream.concat(PotConstraint.of(made, rules).stream(), PotConstraint.carried(made))
                .allMatch(each -> {
                    PotConstraint.Row row = each.row(exact.size());
                    Ratio slack = PotConstraint.isOfShown(each) ? row.slack(shown, allShown) : row.slack(put, allPut);
                    return slack.signum() >= 0;
                });
        return of(made, rules, shown, within ? Quality.WITHIN : Quality.NOT_WITHIN);
    }

    private static Ratio sum(List<Ratio> grams) {
        return grams.stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    private static void lower(PotConstraint.Row row, List<Ratio> shown, List<Ratio> exact, List<Ratio> steps) {
        Ratio slack = row.slack(shown, row.common().isZero() ? Ratio.ZERO : sum(shown));
        if (slack.signum() >= 0) {
            return;
        }
        List<Integer> roundedUp = row.lines(exact.size())
                .boxed()
                .filter(j -> shown.get(j).compareTo(exact.get(j)) > 0)
                .sorted(Comparator.comparing((Integer j) -> exact.get(j).minus(shown.get(j))))
                .toList();
        for (int j : roundedUp) {
            if (slack.signum() >= 0) {
                return;
            }
            shown.set(j, shown.get(j).minus(steps.get(j)));
            slack = slack.minus(row.coefficient(j).times(steps.get(j)));
        }
    }

    private static List<Ratio> steps(MadeBatch made) {
        return made.lines().stream()
                .map(line -> line.balance().readability().canonical())
                .toList();
    }

    /**
     * Whether every line is within its tolerance and every cap kept after them: by what is most likely in the pot, each
     * reading corrected for what stays in its boat and for the air, as {@link #after()} has it.
     *
     * @return true if so
     */
    public boolean isWithin() {
        return quality == Quality.SMALLEST || quality == Quality.WITHIN;
    }

    /**
     * The mass of all additions.
     *
     * @return the total in the unit of the balance of the bench, with its working
     */
    public Amount<Mass> total() {
        return Amount.grams(sum(additions.stream()
                        .map(addition -> addition.mass().canonical())
                        .toList()))
                .withWorking(shown -> Phrase.of("question.displayed-addition"), this, DisplayedAdditions::total)
                .inUnitOf(made.plan().bench().balance().readability());
    }

    /** Where the {@link #total()} comes from. */
    @Override
    public Origin origin() {
        return total().origin();
    }

    /**
     * The pot after the additions.
     *
     * @return what will be in the pot
     */
    public MadeBatch after() {
        return made.plus(additions);
    }

    /**
     * The line that is furthest off after the additions, for its tolerance.
     *
     * @return its check; empty if all lines are within
     */
    public Optional<LineCheck> furthestOutside() {
        return after().check(rules.tolerances()).stream()
                .filter(check -> !check.allowed().contains(check.line().share()))
                .reduce((worst, check) -> isFurtherOff(check, worst) ? check : worst);
    }

    private static boolean isFurtherOff(LineCheck check, LineCheck than) {
        return check.deviation().abs().compareTo(than.deviation().abs()) > 0;
    }

    private <V> V total(Reckoning<V> r) {
        boolean alike = steps(made).stream().distinct().count() == 1;
        List<V> shown = new ArrayList<>();
        for (LineAddition addition : additions) {
            MadeLine line = made.line(addition.line());
            Ratio steps = addition.mass()
                    .canonical()
                    .dividedBy(line.balance().readability().canonical());
            V count = r.given(STEPS, line.line(), steps, Source.user());
            shown.add(r.named(SHOWN, line.line(), r.product(count, step(r, line, alike))));
        }
        return r.named(
                Correction.TOTAL,
                shown.isEmpty() ? r.product(r.literal(0), step(r, made.lines().get(0), alike)) : r.sum(shown));
    }

    /** One d for all, or one for each line where they differ. */
    private static <V> V step(Reckoning<V> r, MadeLine line, boolean alike) {
        Ratio grams = line.balance().readability().canonical();
        return alike ? r.given(STEP, grams, Source.user()) : r.given(STEP, line.line(), grams, Source.user());
    }

    @Override
    public String toString() {
        return quality + " " + additions;
    }
}
