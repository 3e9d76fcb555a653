package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.LimitCase.Asked;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.GroupMember;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitOutcome;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.Scope;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.quantity.MassFraction;
import java.util.List;
import java.util.Set;

/** Asks the library whether limits of the house are kept. */
final class LimitJudge {

    private static final String ID = "HOUSE-1";
    private static final Set<LimitOutcome> AGAINST = Set.of(LimitOutcome.EXCEEDS, LimitOutcome.PROHIBITED);

    private LimitJudge() {}

    static boolean callsFine(LimitCase asked) {
        LimitChecker checker = LimitChecker.of(table(asked), product(asked), DecisionRule.worstCase());
        LimitReport report = checker.check(asked.recipe().formula());
        // What serves another purpose is not counted, so that the rest of it may be within; but all of it is not.
        return asked.asked() == Asked.PURPOSE_OTHER
                ? report.outcome() == LimitOutcome.NO_COUNTED_LIMIT_PASSED
                : isFine(report, asked.asked().mayApply(), ID);
    }

    static boolean callsFine(WeighedLimitCase asked) {
        LimitChecker checker = LimitChecker.of(table(asked.written()), Product.leaveOn(), DecisionRule.worstCase());
        Weighing weighing = asked.weighing();
        LimitReport report = checker.check(ExpectedProduct.of(weighing.plan(), weighing.method()));
        return isFine(report, false, ID) || report.outcome() == LimitOutcome.CONDITIONS_OPEN;
    }

    /** Whether a report says nothing against it. */
    static boolean isFine(LimitReport report, boolean applies, String limitId) {
        boolean within = report.verdicts().stream()
                .anyMatch(verdict -> verdict.limit().id().equals(limitId) && verdict.conformity() == Conformity.WITHIN);
        if (within || report.outcome() == LimitOutcome.NO_COUNTED_LIMIT_PASSED) {
            return true;
        }
        return applies && !(AGAINST.contains(report.outcome()) && isBindingAgainst(report));
    }

    private static boolean isBindingAgainst(LimitReport report) {
        return report.binding()
                .map(verdict ->
                        verdict.conformity() == Conformity.EXCEEDS || verdict.conformity() == Conformity.PROHIBITED)
                .orElse(false);
    }

    private static LimitTable table(LimitCase asked) {
        Substance substance = Substance.of(asked.name());
        Substance numbered = asked.cas().isEmpty() ? substance : substance.withCas(asked.cas());
        SubstanceGroup group = SubstanceGroup.of(asked.name(), List.of(GroupMember.of(numbered)));
        MassFraction share = MassFraction.parse(Texts.percent(asked.cap(), 6));
        UsageLimit limit = UsageLimit.of(ID, group, LimitKind.MAXIMUM, share).within(scope(asked.asked()));
        // Another limit, of something that no recipe holds, knows the other purpose.
        UsageLimit other = UsageLimit.of("HOUSE-2", SubstanceGroup.of("Nobody Uses This"), LimitKind.MAXIMUM, share)
                .within(Scope.any().withPurpose("colorant"));
        return LimitTable.of("House limits", List.of(other, limit));
    }

    private static Scope scope(Asked asked) {
        return switch (asked) {
            case NOTHING -> Scope.any();
            case LEAVE_ON -> Scope.leaveOn();
            case AREA_STATED, AREA_LEFT_OUT, AREA_MISSPELT -> Scope.any().withAreas("face");
            case KIND_MISSPELT -> Scope.any().withProducts("face_cream");
            case FORM_MISSPELT -> Scope.any().withForms("cream");
            case PURPOSE_LEFT_OUT, PURPOSE_MISSPELT, PURPOSE_OTHER ->
                Scope.any().withPurpose("preservative");
        };
    }

    private static Product product(LimitCase asked) {
        Product product = Product.leaveOn();
        return switch (asked.asked()) {
            case NOTHING, LEAVE_ON, AREA_LEFT_OUT, PURPOSE_LEFT_OUT -> product;
            case AREA_STATED -> product.on("face");
            case AREA_MISSPELT -> product.on("fcae");
            case KIND_MISSPELT -> product.ofKind("face_craem");
            case FORM_MISSPELT -> product.inForm("craem");
            case PURPOSE_MISSPELT -> product.using(asked.name(), "preservatives");
            case PURPOSE_OTHER -> product.using(asked.name(), "colorant");
        };
    }
}
