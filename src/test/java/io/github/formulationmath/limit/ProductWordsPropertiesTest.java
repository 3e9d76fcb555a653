package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.LimitCases.check;
import static io.github.formulationmath.limit.LimitCases.formula;
import static io.github.formulationmath.limit.LimitCases.shares;
import static io.github.formulationmath.limit.LimitCases.toldOf;
import static io.github.formulationmath.limit.LimitCases.verdicts;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.limit.LimitCases.Said;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A word that the table does not know settles nothing. */
class ProductWordsPropertiesTest {

    private static final String UNKNOWN = "moonbalm";

    @Property(tries = 60)
    void one_more_unknown_word_makes_nothing_milder_and_loses_no_substance(
            @ForAll long seed, @ForAll @IntRange(max = 2) int side) {
        Random random = new Random(seed);
        Said said = Said.random(random);
        Formula formula = formula(shares(random));
        LimitReport before = check(said.product(), formula);
        LimitReport after = check(said.and(side, UNKNOWN).product(), formula);
        assertThat(after.closestWords().keySet()).contains(UNKNOWN);
        assertThat(after.outcome())
                .isGreaterThanOrEqualTo(before.outcome())
                .isNotEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(verdicts(after)).containsAllEntriesOf(verdicts(before));
        assertThat(toldOf(after)).containsAll(toldOf(before));
    }

    @Property(tries = 60)
    void an_unknown_word_instead_of_known_ones_leaves_every_limit_that_applied_in_force(
            @ForAll long seed, @ForAll @IntRange(max = 2) int side) {
        Random random = new Random(seed);
        Said said = Said.random(random);
        if (side == 2
                && !said.kinds().stream()
                        .allMatch(kind -> LimitCases.EU.words().impliedBy(kind).isEmpty())) {
            // What is a spray by its kind and a powder by its form is a spray once the form is gone.
            return;
        }
        Formula formula = formula(shares(random));
        Map<String, Conformity> before = verdicts(check(said.product(), formula));
        before.values().removeIf(conformity -> conformity == Conformity.PROHIBITED);
        LimitReport after = check(said.only(side, UNKNOWN).product(), formula);
        assertThat(verdicts(after)).containsAllEntriesOf(before);
        if (before.containsValue(Conformity.EXCEEDS)) {
            assertThat(verdicts(after)).containsValue(Conformity.EXCEEDS);
        }
    }

    @Property(tries = 60)
    void every_substance_of_the_formula_is_told_of(@ForAll long seed) {
        Random random = new Random(seed);
        Map<String, Integer> shares = shares(random);
        Product product = Said.random(random).product();
        for (String name : shares.keySet()) {
            String[] purposes = LimitCases.EU.words().purposes().toArray(new String[0]);
            int which = random.nextInt(purposes.length + 1);
            product = which < purposes.length ? product.using(name, purposes[which]) : product;
        }
        Formula formula = formula(shares);
        LimitReport report = check(product, formula);
        formula.lines()
                .forEach(line -> assertThat(toldOf(report))
                        .containsAll(line.ingredient().parts().keySet()));
    }
}
