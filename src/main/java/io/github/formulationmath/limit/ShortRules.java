package io.github.formulationmath.limit;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tables of one's own in their short form: substance, limit, scope, source; one rule to a row. */
final class ShortRules {

    static final CsvFormat FORMAT =
            CsvFormat.of(List.of("substance", "limit", "scope", "source")).withCommentHead();

    private static final Pattern LIMIT =
            Pattern.compile("(max|min|declare above|warn above) +(.*%)( +as supplied)?", Pattern.CASE_INSENSITIVE);
    private static final String LIMITS =
            "write for example max 0.9 %, min 0.3 %, max 5 % as supplied, or declare above 0.001 %";
    private static final String SCOPES =
            "write any, or facts parted by semicolons: leave_on or rinse_off, area=face, product=shampoo, form=not:spray,"
                    + " user=professional, purpose=preservative";

    private ShortRules() {}

    static LimitTable table(String name, CsvFormat.Table rules) {
        List<UsageLimit> limits = new ArrayList<>();
        Map<String, Integer> ids = new HashMap<>();
        for (CsvRow row : rules.rows()) {
            UsageLimit limit = limit(row);
            int times = ids.merge(limit.id(), 1, Integer::sum);
            limits.add(times == 1 ? limit : limit.withId(limit.id() + "-" + times));
        }
        return LimitTable.of(name, rules.comments(), limits);
    }

    private static UsageLimit limit(CsvRow row) {
        row.required("limit");
        row.required("scope");
        row.required("source");
        String substance = row.required("substance");
        Matcher found = row.read("limit", ShortRules::parted);
        LimitKind kind = kind(found.group(1));
        MassFraction share = row.read("limit", text -> MassFraction.parse(found.group(2)));
        Scope scope = row.read("scope", ShortRules::scope);
        UsageLimit limit =
                row.read("substance", name -> UsageLimit.own(substance, kind, share, scope, row.text("source")));
        return found.group(3) == null ? limit : limit.on(LimitBasis.asSupplied());
    }

    private static Matcher parted(String text) {
        Matcher found = LIMIT.matcher(text.strip());
        if (!found.matches()) {
            throw new IllegalArgumentException("limit is \"" + Excerpt.of(text) + "\": " + LIMITS);
        }
        return found;
    }

    private static LimitKind kind(String word) {
        String code = word.toLowerCase(Locale.ROOT).replace(' ', '_');
        for (LimitKind kind : LimitKind.values()) {
            if (kind.code().equals(code)) {
                return kind;
            }
        }
        throw new IllegalStateException(word);
    }

    /** Reads {@code leave_on; area=face; form=not:spray}. */
    static Scope scope(String text) {
        Scope scope = Scope.any();
        if (text.strip().equals(Scope.ANY)) {
            return scope;
        }
        Map<String, List<String>> facts = new HashMap<>();
        for (String fact : CsvRow.listed(text, ';')) {
            String[] sides = fact.split("=", 2);
            facts.computeIfAbsent(sides.length == 2 ? sides[0].strip() : "use", key -> new ArrayList<>())
                    .add(sides[sides.length - 1].strip());
        }
        for (Map.Entry<String, List<String>> fact : facts.entrySet()) {
            String[] words = fact.getValue().toArray(new String[0]);
            scope = switch (fact.getKey()) {
                case "use" ->
                    new Scope(
                            use(text, words),
                            scope.areas(),
                            scope.products(),
                            scope.forms(),
                            scope.users(),
                            scope.purpose());
                case "area" -> scope.withAreas(words);
                case "product" -> scope.withProducts(words);
                case "form" -> scope.withForms(words);
                case "user" -> scope.withUsers(words);
                case "purpose" -> scope.withPurpose(only(text, words));
                default -> throw wrong(text);
            };
        }
        return scope;
    }

    private static String use(String text, String... words) {
        String word = only(text, words);
        if (!word.equals(Scope.LEAVE_ON) && !word.equals(Scope.RINSE_OFF)) {
            throw wrong(text);
        }
        return word;
    }

    private static String only(String text, String... words) {
        if (words.length > 1 || words[0].isEmpty()) {
            throw wrong(text);
        }
        return words[0];
    }

    private static IllegalArgumentException wrong(String text) {
        return new IllegalArgumentException("scope is \"" + Excerpt.of(text) + "\": " + SCOPES);
    }
}
