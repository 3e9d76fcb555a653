package io.github.formulationmath.soap;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** A judgement on hydroxide in words. What is printed of an interval never lies inside it. */
record AlkaliReport(AlkaliBalance balance, Wording wording) {

    private static final Rounding NEAREST = Rounding.toDecimalPlaces(3);

    /** Not above what it stands for, at three decimal places. */
    static String down(Ratio number) {
        return NEAREST.with(RoundingMode.FLOOR).apply(number).toString();
    }

    /** Not below what it stands for. */
    static String up(Ratio number) {
        return NEAREST.with(RoundingMode.CEILING).apply(number).toString();
    }

    /** Both ends with their unit, rounded outward. */
    static String between(Interval<? extends Amount<?>> range) {
        return down(range.least().exactValue()) + " to " + up(range.greatest().exactValue()) + " "
                + range.least().symbol();
    }

    static String percentUp(Ratio share) {
        return up(share.times(100));
    }

    /** A share that is not below another. */
    static MassFraction atLeast(MassFraction share) {
        return MassFraction.ofPercent(NEAREST.with(RoundingMode.CEILING).apply(share.percent()));
    }

    Document document() {
        return withCaution(judgement());
    }

    Document document(LimitTable limits) {
        return withCaution(new LyeLimits(balance, limits, wording).after(judgement()));
    }

    private Document judgement() {
        Document document =
                judged(Document.titled(balance.name(), wording.say("language")), balance, "soap.report.verdict");
        document = withFigures(document);
        if (balance.verdict() != HydroxideVerdict.NO_HYDROXIDE_LEFT) {
            document = withCorner(document);
        }
        document = withCook(withWidths(document));
        for (var phrase : balance.notCovered()) {
            document = document.paragraph(wording.text(phrase));
        }
        return document;
    }

    private Document withCaution(Document document) {
        return document.caution(wording.say("caution.soap"));
    }

    private Document judged(Document document, AlkaliBalance judged, String heading) {
        Document all = document.heading(wording.say(heading));
        if (!judged.undeclared().isEmpty()) {
            return all.paragraph(wording.say("soap.undeclared", names(judged.undeclared())));
        }
        all = all.paragraph(wording.say("soap.verdict." + judged.verdict().name()));
        if (!judged.isWithinCoverage()) {
            return all;
        }
        List<FormulaLine> inputs = judged.coverageInputs();
        return all.paragraph(
                inputs.isEmpty()
                        ? wording.say("soap.within-coverage")
                        : wording.say("soap.within-coverage-of", names(inputs)));
    }

    private static String names(List<FormulaLine> lines) {
        return lines.stream().map(FormulaLine::name).collect(Collectors.joining(", "));
    }

    private Document withFigures(Document document) {
        String alkali = balance.reference().toString();
        Document all = document;
        if (balance.hasShortfall()) {
            all = all.fact(wording.say("soap.report.shortfall"), range(balance.shortfall()));
        }
        return all.fact(wording.say("soap.report.excess", alkali), range(balance.excess()))
                .fact(wording.say("soap.report.carbonate", alkali), range(balance.carbonate()))
                .fact(wording.say("soap.report.total", alkali), range(balance.totalFreeAlkali()));
    }

    private <A extends Amount<?>> String range(Interval<A> interval) {
        A least = interval.least();
        return wording.say(
                "soap.report.range",
                down(least.exactValue()),
                up(interval.greatest().exactValue()),
                least.symbol());
    }

    private Document withCorner(Document document) {
        Document all = document.heading(wording.say("soap.report.corner"));
        for (var phrase : balance.corner()) {
            all = all.paragraph(wording.text(phrase));
        }
        return all;
    }

    private Document withWidths(Document document) {
        List<InputWidth> widths = balance.widths();
        if (widths.isEmpty()) {
            return document;
        }
        List<Column> columns = List.of(
                Column.name(wording.say("soap.report.input")),
                Column.number(
                        wording.say("soap.report.width", balance.reference().toString())));
        List<List<String>> rows = widths.stream()
                .map(width -> List.of(
                        wording.say("soap.width." + width.kind().name(), width.line()),
                        wording.number(up(width.width().exactValue()))))
                .toList();
        return document.heading(wording.say("soap.report.widths")).table(columns, rows);
    }

    private Document withCook(Document document) {
        return balance.cookAlone()
                .map(cook -> judged(document, cook, "soap.report.cook").paragraph(wording.say("soap.report.late")))
                .orElse(document);
    }
}
