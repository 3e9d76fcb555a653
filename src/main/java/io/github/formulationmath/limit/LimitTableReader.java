package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.limit.ProductWords.Vocabulary;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads the two files of a table of limits: the limits, and the substances they count. */
final class LimitTableReader {

    static final CsvFormat LIMITS = format(
            "limit_id,annex,ref_no,sub_entry,group_id,substance_group,kind,percent,basis,"
                    + "basis_as_printed,reference_substance,reference_formula,purpose,scope_use,scope_area,scope_product,"
                    + "scope_form,scope_user,outside_scope,whole,sum_rule,declared_as,scope_as_printed,limit_as_printed,"
                    + "conditions,warning_text,amending_act,entry_updated,snapshot_date,citation,needs_human_reading,note");

    static final CsvFormat SUBSTANCES =
            format("group_id,inci_name,cas_number,form,molecular_formula,reference_units,counts_as,role,note");

    static final CsvFormat OMITTED =
            format("annex,ref_no,substance_group,reason,scope_as_printed,limit_as_printed,conditions,warning_text");
    static final CsvFormat OMITTED_NAMES = format("annex,ref_no,substance_group,name,cas_number");

    static final CsvFormat SYNONYMS = format("inci_name,synonym,printed_in");

    private static final Map<String, String> ROLES = words("member", "mentioned", "not_allowed", "part");
    private static final Map<String, String> BASES = words("active", "as_supplied", "as_reference");
    private static final Map<String, LimitKind> KINDS = new LinkedHashMap<>();
    private static final Map<String, SumRule> SUM_RULES = new LinkedHashMap<>();
    private static final Map<String, OutsideScope> OUTSIDE = new LinkedHashMap<>();

    static {
        for (LimitKind kind : LimitKind.values()) {
            KINDS.put(kind.code(), kind);
        }
        for (SumRule rule : SumRule.values()) {
            SUM_RULES.put(rule.code(), rule);
        }
        for (OutsideScope outside : OutsideScope.values()) {
            OUTSIDE.put(outside.code(), outside);
        }
    }

    private static final Substance ANY = Substance.of("any");

    private final Map<String, List<GroupMember>> members = new LinkedHashMap<>();
    private final Map<String, List<String>> synonyms = new HashMap<>();
    private final Map<String, SubstanceGroup> groups = new LinkedHashMap<>();

    /** What was read before from the same text: most rows say the same as another. */
    private final Map<String, MolecularFormula> formulas = new HashMap<>();

    private final Map<String, Ratio> units = new HashMap<>();
    private final Map<String, MassFraction> shares = new HashMap<>();
    private final Map<List<String>, Scope> scopes = new HashMap<>();
    private final Map<String, Set<String>> words = new HashMap<>();
    private final Map<String, LocalDate> dates = new HashMap<>();

    private static Map<String, String> words(String... all) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String word : all) {
            words.put(word, word);
        }
        return words;
    }

    private static CsvFormat format(String header) {
        return CsvFormat.ofHeader(header).withCommentHead();
    }

    static LimitTable read(String name, CsvFormat.Table limits, CsvFormat.Table substances) {
        return new LimitTableReader().table(name, limits, substances);
    }

    /** The same with other names under which the source prints its substances. */
    static LimitTable read(String name, CsvFormat.Table limits, CsvFormat.Table substances, CsvFormat.Table synonyms) {
        LimitTableReader reader = new LimitTableReader();
        for (CsvRow row : synonyms.rows()) {
            list(reader.synonyms, SubstanceName.normalise(row.required("inci_name")))
                    .add(row.required("synonym"));
        }
        return reader.table(name, limits, substances);
    }

    private LimitTable table(String name, CsvFormat.Table limits, CsvFormat.Table substances) {
        for (CsvRow row : substances.rows()) {
            GroupMember member = member(row);
            if (!role(row).equals("part")) {
                list(members, row.required("group_id")).add(member);
            }
        }
        List<UsageLimit> all = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (CsvRow row : limits.rows()) {
            if (!ids.add(row.required("limit_id"))) {
                throw row.wrong(
                        "limit_id",
                        "is \"" + Excerpt.of(row.text("limit_id")) + "\" a second time: give each "
                                + "limit an id of its own");
            }
            all.add(limit(row));
        }
        return LimitTable.of(name, limits.comments(), all);
    }

    /** The list under a key; tables are long and read when a program starts, so that what they need is written out plainly. */
    private static <T> List<T> list(Map<String, List<T>> lists, String key) {
        List<T> known = lists.get(key);
        if (known == null) {
            known = new ArrayList<>();
            lists.put(key, known);
        }
        return known;
    }

    /** What only names a part of another material says nothing of that part by itself. */
    private static String role(CsvRow row) {
        return row.choice("role", ROLES);
    }

    private GroupMember member(CsvRow row) {
        GroupMember member =
                GroupMember.of(substance(row)).inForm(row.text("form")).countedAs(row.required("counts_as"));
        if (!row.text("molecular_formula").isEmpty()) {
            member = member.withFormula(formula(row, "molecular_formula"), units(row));
        }
        return switch (role(row)) {
            case "mentioned" -> member.mentionedOnly();
            case "not_allowed" -> member.asNotAllowed();
            default -> member;
        };
    }

    private Substance substance(CsvRow row) {
        String column = "inci_name";
        try {
            Substance plain = Substance.of(row.text(column));
            List<String> others = synonyms.getOrDefault(SubstanceName.normalise(plain.name()), List.of());
            Substance named = others.isEmpty() ? plain : plain.withSynonyms(others.toArray(new String[0]));
            column = "cas_number";
            return row.text(column).isEmpty() ? named : named.withCas(row.text(column));
        } catch (IllegalArgumentException e) {
            throw row.wrong(column, e);
        }
    }

    private Ratio units(CsvRow row) {
        String text = row.decimal("reference_units");
        Ratio known = units.get(text);
        if (known == null) {
            known = Ratio.parse(text);
            units.put(text, known);
        }
        return known;
    }

    private MolecularFormula formula(CsvRow row, String column) {
        MolecularFormula known = formulas.get(row.text(column));
        if (known == null) {
            try {
                known = MolecularFormula.parse(row.text(column));
            } catch (IllegalArgumentException e) {
                throw row.wrong(column, e);
            }
            formulas.put(row.text(column), known);
        }
        return known;
    }

    private MassFraction share(CsvRow row) {
        String percent = row.decimal("percent");
        MassFraction known = shares.get(percent);
        if (known == null) {
            try {
                known = MassFraction.ofPercent(percent);
            } catch (IllegalArgumentException e) {
                throw row.wrong("percent", e);
            }
            shares.put(percent, known);
        }
        return known;
    }

    private UsageLimit limit(CsvRow row) {
        MassFraction share = share(row);
        SubstanceGroup group = group(row);
        LimitKind kind = row.choice("kind", KINDS);
        try {
            return new UsageLimit(
                    row.text("limit_id"),
                    group,
                    kind,
                    share,
                    basis(row),
                    row.choice("sum_rule", SUM_RULES),
                    scope(row),
                    row.required("whole"),
                    row.choice("outside_scope", OUTSIDE),
                    String.join(" ", row.text("annex"), row.text("ref_no"), row.text("substance_group")),
                    row.text("declared_as"),
                    citation(row),
                    text(row));
        } catch (IllegalArgumentException e) {
            throw row.wrong("limit_id", e);
        }
    }

    private SubstanceGroup group(CsvRow row) {
        String id = row.required("group_id");
        List<GroupMember> found = members.get(id);
        if (found == null) {
            throw row.wrong(
                    "group_id",
                    "is \"" + Excerpt.of(id) + "\", which the substances file does not have: add its substances there");
        }
        SubstanceGroup known = groups.get(id);
        if (known == null) {
            known = SubstanceGroup.of(row.required("substance_group"), found);
            groups.put(id, known);
        }
        return known;
    }

    private LimitBasis basis(CsvRow row) {
        String word = row.choice("basis", BASES);
        boolean named = !row.text("reference_substance").isEmpty();
        if (named != word.equals("as_reference")) {
            throw row.wrong(
                    "reference_substance",
                    named ? "is given, but the basis is " + word + ": leave it empty" : "is empty: name the reference");
        }
        if (!named) {
            return word.equals("active") ? LimitBasis.active() : LimitBasis.asSupplied();
        }
        return row.text("reference_formula").isEmpty()
                ? LimitBasis.as(row.text("reference_substance"))
                : LimitBasis.as(row.text("reference_substance"), formula(row, "reference_formula"));
    }

    private Scope scope(CsvRow row) {
        List<String> texts = List.of(
                row.text("scope_use"),
                row.text("scope_area"),
                row.text("scope_product"),
                row.text("scope_form"),
                row.text("scope_user"),
                row.text("purpose"));
        Scope known = scopes.get(texts);
        if (known == null) {
            known = readScope(row);
            scopes.put(texts, known);
        }
        return known;
    }

    private Set<String> words(CsvRow row, String column, Vocabulary vocabulary) {
        String asked = column.concat(row.text(column));
        Set<String> known = words.get(asked);
        if (known == null) {
            try {
                known = vocabulary.requireMeant(Scope.parse(row.text(column)));
            } catch (IllegalArgumentException e) {
                throw row.wrong(column, e);
            }
            words.put(asked, known);
        }
        return known;
    }

    /** Column by column, so that what is wrong is said of the one where it stands. */
    private Scope readScope(CsvRow row) {
        Set<String> areas = words(row, "scope_area", Vocabulary.AREAS);
        Set<String> products = words(row, "scope_product", Vocabulary.KINDS);
        Set<String> forms = words(row, "scope_form", Vocabulary.FORMS);
        String column = "scope_use";
        try {
            Scope scope = new Scope(row.text(column), areas, products, forms, Set.of(), Scope.ANY);
            column = "scope_user";
            String[] users = Scope.parse(row.text(column)).toArray(new String[0]);
            scope = users.length == 0 ? scope : scope.withUsers(users);
            column = "purpose";
            return row.text(column).equals(Scope.ANY) ? scope : scope.withPurpose(row.text(column));
        } catch (IllegalArgumentException e) {
            throw row.wrong(column, e);
        }
    }

    private Citation citation(CsvRow row) {
        return Citation.of(
                row.required("citation"),
                row.text("amending_act"),
                date(row, "entry_updated"),
                date(row, "snapshot_date"));
    }

    private @Nullable LocalDate date(CsvRow row, String column) {
        LocalDate known = dates.get(row.text(column));
        if (known == null) {
            known = row.date(column);
            if (known != null) {
                dates.put(row.text(column), known);
            }
        }
        return known;
    }

    private static EntryText text(CsvRow row) {
        return new EntryText(
                row.text("scope_as_printed"),
                row.text("limit_as_printed"),
                row.text("conditions"),
                row.text("warning_text"),
                row.text("basis_as_printed"),
                row.text("needs_human_reading"),
                row.text("note"));
    }

    /** The entries that a table does not transcribe, each once, with the names and numbers of what they speak of. */
    static List<OmittedEntry> omitted(CsvFormat.Table entries, CsvFormat.Table names) {
        Map<List<String>, Told> all = new LinkedHashMap<>();
        for (CsvRow row : entries.rows()) {
            Told told = new Told(row.required("reason"), printed(row), new ArrayList<>(), new ArrayList<>());
            if (all.put(key(row), told) != null) {
                throw row.wrong(
                        "ref_no",
                        "is \"" + Excerpt.of(row.text("ref_no"))
                                + "\" with this name a second time: write each entry once");
            }
        }
        for (CsvRow row : names.rows()) {
            Told told = all.get(key(row));
            if (told == null) {
                throw row.wrong(
                        "ref_no",
                        "is \"" + Excerpt.of(row.text("ref_no")) + "\", no entry left out: write the "
                                + "three fields as in the file of entries");
            }
            if (!row.text("name").isEmpty()) {
                told.names().add(row.text("name"));
            }
            if (!row.text("cas_number").isEmpty()) {
                requireCas(row);
                told.numbers().add(row.text("cas_number"));
            }
        }
        List<OmittedEntry> omitted = new ArrayList<>(all.size());
        for (Map.Entry<List<String>, Told> one : all.entrySet()) {
            List<String> key = one.getKey();
            Told told = one.getValue();
            omitted.add(new OmittedEntry(
                    key.get(0), key.get(1), key.get(2), told.reason(), told.names(), told.numbers(), told.text()));
        }
        return List.copyOf(omitted);
    }

    private static void requireCas(CsvRow row) {
        try {
            ANY.withCas(row.text("cas_number"));
        } catch (IllegalArgumentException e) {
            throw row.wrong("cas_number", e);
        }
    }

    /** What is read of one entry. */
    private record Told(String reason, EntryText text, List<String> names, List<String> numbers) {}

    private static EntryText printed(CsvRow row) {
        return new EntryText(
                row.text("scope_as_printed"),
                row.text("limit_as_printed"),
                row.text("conditions"),
                row.text("warning_text"),
                "",
                "",
                "");
    }

    private static List<String> key(CsvRow row) {
        return List.of(row.required("annex"), row.required("ref_no"), row.required("substance_group"));
    }
}
