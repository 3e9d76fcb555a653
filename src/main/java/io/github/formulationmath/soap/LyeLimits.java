package io.github.formulationmath.soap;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.reckoning.Wording;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What a table of limits says of the hydroxides of a soap, told and not judged. */
record LyeLimits(AlkaliBalance balance, LimitTable table, Wording wording) {

    Document after(Document document) {
        Set<UsageLimit> rows = new LinkedHashSet<>();
        balance.alkalis().forEach(alkali -> rows.addAll(table.limitsFor(Substance.of(alkali.inciName()))));
        Document all = document.heading(wording.say("soap.limits.heading"));
        if (rows.isEmpty()) {
            return all.paragraph(wording.say("soap.limits.none", table.name()));
        }
        for (UsageLimit row : rows) {
            all = all.paragraph(wording.say(
                    "soap.limits.row",
                    row.citation().toString(),
                    row.text().scope(),
                    NumberText.percent(row.share().fraction())));
        }
        List<String> conditions =
                rows.stream().map(row -> row.text().conditions()).distinct().toList();
        for (String condition : conditions) {
            if (!condition.isEmpty()) {
                all = all.paragraph(wording.say("soap.limits.conditions", condition));
            }
        }
        return all.paragraph(wording.say("soap.limits.what")).caution(wording.text(table.caution()));
    }
}
