package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;

import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.reference.ReferenceTable;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Cases that somebody read from the printed text of the annexes: how a line of them is read, and what a report says to it. */
final class ReadCase {

    private ReadCase() {}

    static List<Map<String, String>> in(String file) {
        return ReferenceTable.fields("src/test/resources/io/github/formulationmath/limit/" + file);
    }

    static Product product(Map<String, String> row) {
        Product product = field(row, "use").equals("leave_on") ? Product.leaveOn() : Product.rinseOff();
        product = product.on(field(row, "areas")).ofKind(field(row, "kinds")).inForm(field(row, "forms"));
        String age = field(row, "age");
        String user = field(row, "user").isEmpty() ? "general" : field(row, "user");
        return age.isEmpty() ? product.forUsers(user) : product.forUsers(user, word(Integer.parseInt(age)));
    }

    private static String word(int age) {
        return switch (age) {
            case 0 -> "under_3";
            case 12 -> "from_10";
            default -> "from_" + age;
        };
    }

    /** The product as it is, told the purpose of the ingredient if the row states one. */
    static Product using(Product product, Map<String, String> row) {
        return field(row, "purpose").isEmpty()
                ? product
                : product.using(field(row, "ingredient"), field(row, "purpose"));
    }

    static FormulaBuilder line(FormulaBuilder formula, Map<String, String> row) {
        String name = field(row, "ingredient");
        String cas = row.getOrDefault("cas", "");
        Substance substance =
                cas.isEmpty() ? Substance.of(name) : Substance.of(name).withCas(cas);
        return formula.line(Ingredient.of(name, substance), field(row, "percent") + " %");
    }

    /** What a report finds of one entry. */
    static String ofEntry(LimitReport report, String entry) {
        Predicate<UsageLimit> isMeant = limit -> limit.entry().startsWith(entry + " ");
        List<Verdict> own = report.verdicts().stream()
                .filter(verdict -> isMeant.test(verdict.limit()))
                .filter(verdict -> verdict.limit().kind().restrictsContents())
                .toList();
        boolean read =
                toRead(report).anyMatch(finding -> finding.limits().stream().anyMatch(isMeant));
        return worst(own, read);
    }

    /** The worst that a report finds of a substance. */
    static String ofSubstance(LimitReport report, String name) {
        List<Verdict> all = report.verdictsFor(name);
        List<Verdict> own = all.stream()
                .filter(verdict -> verdict.limit().kind().restrictsContents())
                .toList();
        boolean read = own.isEmpty()
                && Stream.concat(
                                toRead(report),
                                Stream.concat(report.mentioned().stream(), report.notTranscribed().stream()))
                        .anyMatch(finding -> finding.substance().equals(Substance.of(name)));
        String found = worst(own, read);
        if (!found.equals("silent")) {
            return found;
        }
        if (all.isEmpty()) {
            return report.withoutLimit().contains(Substance.of(name)) ? "none" : "silent";
        }
        return has(all, verdict -> verdict.conformity() == Conformity.EXCEEDS) ? "declare" : "below";
    }

    private static Stream<LimitReport.Uncounted> toRead(LimitReport report) {
        return report.outOfScope().stream().filter(finding -> !finding.otherPurpose() && finding.mustBeRead());
    }

    private static String worst(List<Verdict> own, boolean read) {
        if (has(own, verdict -> verdict.conformity() == Conformity.PROHIBITED)) {
            return "prohibited";
        }
        List<Verdict> applying = own.stream()
                .filter(verdict -> verdict.applicability() == Applicability.APPLIES)
                .toList();
        if (has(own, verdict -> verdict.conformity() == Conformity.EXCEEDS)) {
            return "exceeds";
        }
        if (has(
                own,
                verdict -> verdict.conformity() == Conformity.NOT_ASSESSABLE
                        || verdict.conformity() == Conformity.NOT_SHOWN_WITHIN)) {
            return "unsure";
        }
        return applying.isEmpty() ? read || !own.isEmpty() ? "open" : "silent" : "within";
    }

    private static boolean has(List<Verdict> verdicts, Predicate<Verdict> what) {
        return verdicts.stream().anyMatch(what);
    }
}
