package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

    private static final List<String> ROLES = List.of("member", "mentioned", "not_allowed", "part");
    private static final List<LimitKind> KINDS = List.of(LimitKind.values());
    private static final List<SumRule> SUM_RULES = List.of(SumRule.values());
    private static final List<OutsideScope> OUTSIDE = List.of(OutsideScope.values());
    private static final List<String> BASES = List.of("active", "as_supplied", "as_reference");

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

    private static CsvFormat format(String header) {
        return CsvFormat.of(List.of(header.split(",", -1))).withCommentHead();
    }

    static LimitTable read(String name, CsvFormat.Table limits, CsvFormat.Table substances) {
        return new LimitTableReader().table(name, limits, substances);
    }

    /** The same with other names under which the source prints its substances. */
    static LimitTable read(String name, CsvFormat.Table limits, CsvFormat.Table substances, CsvFormat.Table synonyms) {
        LimitTableReader reader = new LimitTableReader();
        for (CsvRow row : synonyms.rows()) {
            reader.synonyms
                    .computeIfAbsent(SubstanceName.normalise(row.required("inci_name")), key -> new ArrayList<>())
                    .add(row.required("synonym"));
        }
        return reader.table(name, limits, substances);
    }

    private LimitTable table(String name, CsvFormat.Table limits, CsvFormat.Table substances) {
        for (CsvRow row : substances.rows()) {
            GroupMember member = member(row);
            if (!role(row).equals("part")) {
                members.computeIfAbsent(row.required("group_id"), id -> new ArrayList<>())
                        .add(member);
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

    /** What only names a part of another material says nothing of that part by itself. */
    private static String role(CsvRow row) {
        return row.choice("role", ROLES, word -> word);
    }

    private GroupMember member(CsvRow row) {
        Substance plain = row.read("inci_name", Substance::of);
        List<String> others = synonyms.getOrDefault(plain.keys().get(0), List.of());
        Substance named = others.isEmpty() ? plain : plain.withSynonyms(others.toArray(new String[0]));
        Substance substance = row.text("cas_number").isEmpty() ? named : row.read("cas_number", named::withCas);
        GroupMember member = GroupMember.of(substance).inForm(row.text("form")).countedAs(row.required("counts_as"));
        if (!row.text("molecular_formula").isEmpty()) {
            member = member.withFormula(
                    formula(row, "molecular_formula"),
                    units.computeIfAbsent(row.decimal("reference_units"), Ratio::parse));
        }
        return switch (role(row)) {
            case "mentioned" -> member.mentionedOnly();
            case "not_allowed" -> member.asNotAllowed();
            default -> member;
        };
    }

    private MolecularFormula formula(CsvRow row, String column) {
        MolecularFormula known = formulas.get(row.text(column));
        if (known == null) {
            known = row.read(column, MolecularFormula::parse);
            formulas.put(row.text(column), known);
        }
        return known;
    }

    private MassFraction share(CsvRow row) {
        String percent = row.decimal("percent");
        MassFraction known = shares.get(percent);
        if (known == null) {
            known = row.read("percent", MassFraction::ofPercent);
            shares.put(percent, known);
        }
        return known;
    }

    private UsageLimit limit(CsvRow row) {
        MassFraction share = share(row);
        SubstanceGroup group = group(row);
        LimitKind kind = row.choice("kind", KINDS, LimitKind::code);
        return row.read(
                "limit_id",
                id -> new UsageLimit(
                        id,
                        group,
                        kind,
                        share,
                        basis(row),
                        row.choice("sum_rule", SUM_RULES, SumRule::code),
                        scope(row),
                        row.required("whole"),
                        row.choice("outside_scope", OUTSIDE, OutsideScope::code),
                        String.join(" ", row.text("annex"), row.text("ref_no"), row.text("substance_group")),
                        row.text("declared_as"),
                        citation(row),
                        text(row)));
    }

    private SubstanceGroup group(CsvRow row) {
        String id = row.required("group_id");
        List<GroupMember> found = members.get(id);
        if (found == null) {
            throw row.wrong(
                    "group_id",
                    "is \"" + Excerpt.of(id) + "\", which the substances file does not have: add its substances there");
        }
        return groups.computeIfAbsent(id, key -> SubstanceGroup.of(row.required("substance_group"), found));
    }

    private LimitBasis basis(CsvRow row) {
        String word = row.choice("basis", BASES, text -> text);
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

    private Set<String> words(CsvRow row, String column) {
        Set<String> known = words.get(row.text(column));
        if (known == null) {
            known = row.read(column, Scope::parse);
            words.put(row.text(column), known);
        }
        return known;
    }

    private Scope readScope(CsvRow row) {
        Set<String> areas = words(row, "scope_area");
        Set<String> products = words(row, "scope_product");
        Set<String> forms = words(row, "scope_form");
        Scope scope = row.read("scope_use", use -> new Scope(use, areas, products, forms, Set.of(), Scope.ANY));
        Scope used =
                row.read("scope_user", list -> scope.withUsers(Scope.parse(list).toArray(new String[0])));
        return row.read("purpose", used::withPurpose);
    }

    private static Citation citation(CsvRow row) {
        return Citation.of(
                row.required("citation"),
                row.text("amending_act"),
                row.date("entry_updated"),
                row.date("snapshot_date"));
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
                row.read("cas_number", ANY::withCas);
                told.numbers().add(row.text("cas_number"));
            }
        }
        List<OmittedEntry> omitted = new ArrayList<>(all.size());
        all.forEach((key, told) -> omitted.add(new OmittedEntry(
                key.get(0), key.get(1), key.get(2), told.reason(), told.names(), told.numbers(), told.text())));
        return List.copyOf(omitted);
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
