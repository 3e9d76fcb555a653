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

    private static final List<String> BASES = List.of("active", "as_supplied", "as_reference");

    private final Map<String, List<GroupMember>> members = new LinkedHashMap<>();
    private final Map<String, List<String>> synonyms = new HashMap<>();
    private final Map<String, SubstanceGroup> groups = new LinkedHashMap<>();

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
        return row.choice("role", List.of("member", "mentioned", "not_allowed", "part"), word -> word);
    }

    private GroupMember member(CsvRow row) {
        Substance plain = row.read("inci_name", Substance::of);
        List<String> others = synonyms.getOrDefault(plain.keys().get(0), List.of());
        Substance named = others.isEmpty() ? plain : plain.withSynonyms(others.toArray(new String[0]));
        Substance substance = row.text("cas_number").isEmpty() ? named : row.read("cas_number", named::withCas);
        GroupMember member = GroupMember.of(substance).inForm(row.text("form")).countedAs(row.required("counts_as"));
        if (!row.text("molecular_formula").isEmpty()) {
            member = member.withFormula(
                    row.read("molecular_formula", MolecularFormula::parse),
                    Ratio.parse(row.decimal("reference_units")));
        }
        return switch (role(row)) {
            case "mentioned" -> member.mentionedOnly();
            case "not_allowed" -> member.asNotAllowed();
            default -> member;
        };
    }

    private UsageLimit limit(CsvRow row) {
        String percent = row.decimal("percent");
        MassFraction share = row.read("percent", text -> MassFraction.ofPercent(percent));
        SubstanceGroup group = group(row);
        LimitKind kind = row.choice("kind", List.of(LimitKind.values()), LimitKind::code);
        return row.read(
                "limit_id",
                id -> new UsageLimit(
                        id,
                        group,
                        kind,
                        share,
                        basis(row),
                        row.choice("sum_rule", List.of(SumRule.values()), SumRule::code),
                        scope(row),
                        row.required("whole"),
                        row.choice("outside_scope", List.of(OutsideScope.values()), OutsideScope::code),
                        row.text("annex") + " " + row.text("ref_no") + " " + row.text("substance_group"),
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

    private static LimitBasis basis(CsvRow row) {
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
                : LimitBasis.as(
                        row.text("reference_substance"), row.read("reference_formula", MolecularFormula::parse));
    }

    private static Scope scope(CsvRow row) {
        Set<String> areas = row.read("scope_area", Scope::parse);
        Set<String> products = row.read("scope_product", Scope::parse);
        Set<String> forms = row.read("scope_form", Scope::parse);
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
        Map<List<String>, String> reasons = new LinkedHashMap<>();
        Map<List<String>, EntryText> texts = new LinkedHashMap<>();
        Map<List<String>, List<String>> called = new LinkedHashMap<>();
        Map<List<String>, List<String>> numbered = new LinkedHashMap<>();
        for (CsvRow row : entries.rows()) {
            texts.put(key(row), printed(row));
            if (reasons.put(key(row), row.required("reason")) != null) {
                throw row.wrong(
                        "ref_no",
                        "is \"" + Excerpt.of(row.text("ref_no"))
                                + "\" with this name a second time: write each entry once");
            }
        }
        for (CsvRow row : names.rows()) {
            if (!reasons.containsKey(key(row))) {
                throw row.wrong(
                        "ref_no",
                        "is \"" + Excerpt.of(row.text("ref_no")) + "\", no entry left out: write the "
                                + "three fields as in the file of entries");
            }
            add(called, row, "name");
            if (!row.text("cas_number").isEmpty()) {
                row.read("cas_number", Substance.of("any")::withCas);
                add(numbered, row, "cas_number");
            }
        }
        return reasons.entrySet().stream()
                .map(entry -> new OmittedEntry(
                        entry.getKey().get(0),
                        entry.getKey().get(1),
                        entry.getKey().get(2),
                        entry.getValue(),
                        called.getOrDefault(entry.getKey(), List.of()),
                        numbered.getOrDefault(entry.getKey(), List.of()),
                        texts.getOrDefault(entry.getKey(), EntryText.NONE)))
                .toList();
    }

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

    private static void add(Map<List<String>, List<String>> lists, CsvRow row, String column) {
        if (!row.text(column).isEmpty()) {
            lists.computeIfAbsent(key(row), key -> new ArrayList<>()).add(row.text(column));
        }
    }

    private static List<String> key(CsvRow row) {
        return List.of(row.required("annex"), row.required("ref_no"), row.required("substance_group"));
    }
}
