package io.github.formulationmath.annex;

import io.github.formulationmath.support.CasNumbers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Writes the tables of Annexes II and IV from the raw exports, by rule; see
 * docs/limits-in-the-jar.md. What it writes is compared with the raw exports by tests that share no code with it. What a
 * rule cannot know stands in the file of readings, which is written by hand.
 */
final class AnnexTranscription {

    static final Path FOLDER = Path.of("shared/limits");
    static final String DAY = "2024-02-25";
    static final String NAME = "eu-1223-2009-2024-02-";

    /** Annex II entries whose exception is for other substances than the one they name. */
    private static final Set<String> EXCEPTS_OTHERS =
            Set.of("46", "191", "221", "248", "297", "321", "391", "684", "1024", "1127");

    /** Annex II entries that let through what an entry of Annex III allows in products for nails only. */
    private static final Set<String> ONLY_NAILS = Set.of("1339");

    private static final Pattern LETS_THROUGH = Pattern.compile(
            "(?i)[\\s,;]*\\(?\\b(with the exception|with exception|except\\b"
                    + "|unless\\b|other than absolute|when used as|if (it|they) contain|if the maximum|for traces level).*$");
    private static final Pattern GROUP =
            Pattern.compile("(?i)\\b(its|their|and|various)\\b[^;]{0,60}\\b(salts?|derivatives?"
                    + "|compounds?|esters?|ethers?|isomers?|preparations?|alkaloids|homologues|complexes|aglucones|ingredients)\\b"
                    + "|^(salts|benzoates) of|\\bspp\\.|\\bspecies\\b|\\(leaves|\\(roots|\\(seeds|\\(fruit|\\(essential oil|\\(oil\\)"
                    + "|^(barium|gold|choline|strontium) salts|salts, e\\.g\\.|^antibiotics|^progestogens|^oestrogens|^barbiturates"
                    + "|^synthetic curar|^narcotics|^substances with|^glucocorticoids|^anti-androgens|products of human|^vaccines"
                    + "|^radioactive|^nitrosamines|^benzazepines|salicylanilides$|^sulphonamides|^sympathicomimetic"
                    + "|based (azo )?dyes|^nitroderivatives|^thiuram|^inorganic nitrites|isomers$|^hydrazides|heterosides"
                    + "|^tributyltin compounds|^antimony");
    private static final Pattern CAS = Pattern.compile("(?<![0-9-])[1-9][0-9]{1,6}-[0-9]{2}-[0-9](?![0-9-])");
    private static final Pattern BRACKET =
            Pattern.compile("(?<![-,])\\s\\((?!petroleum|coal)([^()]*)\\)(?=\\s*(?:$|[,;(]|and\\b|with\\b))");
    private static final Pattern TAIL = Pattern.compile(
            "(?i)(,\\s*|\\s+and\\s+|\\s+with\\s+)(its|their|salts|ethers|esters|derivatives|homologues|the free)\\b.*$");
    private static final Pattern PLANT =
            Pattern.compile("^([A-Z][a-z]+ [a-z]+) (L|Tul|Brot|Clarke|Juss|Lind|Steinh|Balf|Holmes|Kunth)\\b.*$");
    private static final Pattern PLAIN_PAIR =
            Pattern.compile("^([^ ]+( and | or )[^ ]+|(?i)(.{4})[^ ]*, \\3[^ ]*|(?i)(.{9}).*, \\4.*)$");
    private static final Set<String> NO_NAMES = Set.of(
            "OIL",
            "FRUIT",
            "ESSENTIAL OIL",
            "LEAVES",
            "EXCEPT",
            "AND",
            "ESTER",
            "SALTS",
            "INCI",
            "PUR",
            "PETROLEUM",
            "ALPHA",
            "[MBM]",
            "[NMA]");

    private AnnexTranscription() {}

    /** All that is written by rule, by the end of the name of its file. */
    static Map<String, List<String>> all() throws IOException {
        return Map.of(
                "prohibited.csv", prohibited(),
                "colorants.csv", colorants(),
                "omitted.csv", omitted(),
                "omitted-substances.csv", omittedNames());
    }

    static Path file(String name) {
        return FOLDER.resolve(NAME + name);
    }

    static void write(Map<String, List<String>> files) throws IOException {
        for (Map.Entry<String, List<String>> one : files.entrySet()) {
            Files.write(file(one.getKey()), one.getValue(), StandardCharsets.UTF_8);
        }
    }

    static List<CSVRecord> raw(String annex) throws IOException {
        try (CSVParser parser =
                CSVFormat.RFC4180.parse(Files.newBufferedReader(FOLDER.resolve("raw/annex" + annex + ".csv")))) {
            return parser.stream().skip(1).toList();
        }
    }

    static String text(String cell) {
        return Pattern.compile("\\s+", Pattern.UNICODE_CHARACTER_CLASS)
                .matcher(cell.replace("\u00ad", "").replace("\u200b", ""))
                .replaceAll(" ")
                .strip();
    }

    private static List<String> head(String what, String annex) {
        return List.of(
                "# " + what,
                "# source: Regulation (EC) No 1223/2009 on cosmetic products, Annex " + annex
                        + ", as shown by the European Commission's ingredient database (CosIng), annex table exported in February "
                        + "2024 (snapshot date " + DAY
                        + "); retrieved through the public repository inhouse-work/cosing, "
                        + "data/annex." + annex + ".csv; copy in raw/",
                "# notice: Contains data from the European Commission's cosmetic ingredient database, © European Union, "
                        + "transcribed and shortened; not an official text; state of 25 February 2024.",
                "# caution: a dated snapshot, never current law; later amendments are missing; it defers to the law in force, to "
                        + "the supplier's documents and to a qualified safety assessor",
                "# written by rule from the raw export; columns in README.md");
    }

    private static List<String> prohibited() throws IOException {
        List<String> lines =
                new ArrayList<>(head("Annex II of the EU cosmetics regulation: prohibited substances", "II"));
        lines.add("ref_no,printed,reach,applies,lets_through,cas_numbers,names,listed,amending_act,entry_updated");
        for (CSVRecord row : raw("II")) {
            String printed = text(row.get(1));
            Matcher through = LETS_THROUGH.matcher(printed);
            String lets = through.find() ? printed.substring(through.start()).replaceFirst("^[\\s,;]+", "") : "";
            String rest = lets.isEmpty() ? printed : printed.substring(0, through.start());
            boolean moved = printed.equals("Moved or deleted");
            Map<String, String> names = new LinkedHashMap<>();
            if (!moved) {
                names(rest, names);
                if (isName(row.get(7))) {
                    Matcher more = LETS_THROUGH.matcher(text(row.get(7)));
                    names(more.find() ? text(row.get(7)).substring(0, more.start()) : text(row.get(7)), names);
                }
            }
            Map<String, String> listed = new LinkedHashMap<>();
            for (String one : text(row.get(8)).split(",(?!(?<=[0-9'N],)[0-9N'])", -1)) {
                add(one, listed);
            }
            if (printed.startsWith("Colouring agent")) {
                Pattern.compile("CI \\d{5}(?::\\d)?")
                        .matcher(printed)
                        .results()
                        .forEach(found -> add(found.group(), names));
            }
            names.keySet().forEach(listed::remove);
            lines.add(line(
                    row.get(0),
                    printed,
                    GROUP.matcher(printed).find() ? "group" : "named",
                    applies(row.get(0), lets, moved),
                    lets,
                    String.join(";", numbers(row.get(2))),
                    String.join("|", names.values()),
                    String.join("|", listed.values()),
                    text(row.get(4)),
                    day(row.get(row.size() - 1))));
        }
        return lines;
    }

    private static String applies(String number, String lets, boolean moved) {
        if (moved) {
            return "moved";
        }
        String lower = lets.toLowerCase(Locale.ROOT);
        if (ONLY_NAILS.contains(number)) {
            return "nails";
        }
        if (lets.isEmpty() || EXCEPTS_OTHERS.contains(number)) {
            return "always";
        }
        return lower.contains("hair")
                ? "hair_dye"
                : lower.contains("fragrance") ? "fragrance" : lower.startsWith("if ") ? "content" : "exception";
    }

    private static boolean isName(String chemical) {
        return chemical.length() < 600
                && !Pattern.compile("^\\s*(NA$|A complex|A distillate|Diesel engine|Jet engine|CAS )")
                        .matcher(chemical)
                        .find()
                && !chemical.contains(". It ")
                && !chemical.contains("From 3 September");
    }

    /** Every name that the text prints, without what only says that there are more. */
    private static void names(String printed, Map<String, String> names) {
        String clean = printed.replaceAll(
                        "\\(\\*+\\)|\\(INNM?\\)|\\(ISO\\)|\\[INCI\\]|\\[INN\\]|\\s*-\\s*ISO\\b|\\((1|2)\\s*\\)$|\\(CAS[^)]*\\)",
                        " ")
                .replaceAll("\\[\\d+\\]", ";")
                .replaceAll("(?i)\\(INCI(?: name)?: ([^()]*)\\)", "; $1 ;")
                .replaceAll("(?i)/?\\s*sodium salt or sal?ts of \\w+", "")
                .replaceAll("(?i)Colouring agent |INCI name: ", "")
                .replaceAll("\\(e\\.g\\. ([^()]*)\\)", "; $1 ;")
                .replaceAll("(?i),?\\s*\\be\\.g\\.\\s*", "; ")
                .replaceAll("\\s+,", ",");
        Matcher examples = Pattern.compile("(?<=; )[^;]*, [^;]*(?= ;)").matcher(clean);
        clean = printed.contains("(e.g.")
                ? examples.replaceAll(
                        found -> Matcher.quoteReplacement(found.group().replace(", ", "; ")))
                : clean;
        if (clean.matches("(?i)(A mixture of|A \\d:\\d mixture|Reaction (mass|product)).*")) {
            add(clean, names);
            return;
        }
        Matcher bracket = BRACKET.matcher(clean);
        List<String> all = new ArrayList<>(List.of(bracket.replaceAll(" ").split(";", -1)));
        bracket.reset();
        while (bracket.find()) {
            if (!bracket.group(1)
                    .matches("(?i)(leaves|roots|seeds|fruit|oil|essential oil|principal|mixed|stabilized|isom|and "
                            + "|except|to |vitamins|technical|EINECS|free |coal|\\d+:\\d+$|C\\d+-\\d+$).*")) {
                all.addAll(List.of(bracket.group(1).split(";", -1)));
            }
        }
        all.forEach(piece -> one(piece, names));
    }

    private static void one(String piece, Map<String, String> names) {
        String name = TAIL.matcher(text(piece)).replaceAll("").replaceFirst("(?i) (species|spp\\.)$", "");
        Matcher plant = PLANT.matcher(name);
        String said = plant.matches() ? plant.group(1) : name;
        add(said, names);
        if (PLAIN_PAIR.matcher(said).matches()) {
            for (String part : said.split(" and | or |, ", -1)) {
                add(part, names);
            }
        }
    }

    private static void add(String name, Map<String, String> names) {
        String said = text(name).replaceAll("^[,;\\s\"]+|[,;\\s\"]+$", "");
        String key = said.toUpperCase(Locale.ROOT);
        if (said.startsWith("(") && said.indexOf(')') == said.length() - 1) {
            add(said.substring(1, said.length() - 1), names);
        } else if (said.length() > 2
                        && said.length() <= 400
                        && !NO_NAMES.contains(key)
                        && !said.contains("|")
                        && !said.startsWith("and ")
                        && !said.startsWith("-")
                || key.equals("D4")) {
            names.putIfAbsent(key, said);
        }
    }

    private static List<String> numbers(String cell) {
        return CAS.matcher(cell)
                .results()
                .map(found -> found.group())
                .filter(CasNumbers::hasCheckDigit)
                .distinct()
                .toList();
    }

    private static String day(String dayMonthYear) {
        String[] parts = dayMonthYear.strip().split("/", -1);
        return parts[2] + "-" + parts[1] + "-" + parts[0];
    }

    /** Its columns are shifted: the field of use stands under the maximum, the maximum under "other", and so on. */
    private static List<String> colorants() throws IOException {
        List<String> lines = new ArrayList<>(head("Annex IV of the EU cosmetics regulation: colorants allowed", "IV"));
        lines.add(
                "# the columns of the raw export are shifted by one from the product type on; here each stands where it belongs");
        lines.add("ref_no,printed,ci_numbers,colour,field,max_percent,field_as_printed,limit_as_printed,conditions,"
                + "cas_numbers,names,amending_act,entry_updated");
        for (CSVRecord row : raw("IV")) {
            String field = text(row.get(7));
            String limit = text(row.get(8));
            Map<String, String> names = new LinkedHashMap<>();
            add(row.get(1), names);
            for (String one :
                    text(row.get(15 - 1)).split(",(?!(?<=[0-9'N],)[0-9N'])|(?i)\\s?/\\s?(?=CI |acid|solvent)", -1)) {
                add(one, names);
            }
            for (String one : text(row.get(2)).split("\\s*/\\s*|, ", -1)) {
                add(one, names);
            }
            String everything = String.join("\n", row.toList());
            List<String> numbers = Pattern.compile("\\bCI (\\d{5}(?::\\d)?)")
                    .matcher(everything)
                    .results()
                    .map(found -> found.group(1))
                    .distinct()
                    .toList();
            Matcher food = Pattern.compile("\\b(E ?\\d{3}[a-z]?(?:-[a-z])?)(?:, (E ?\\d{3}[a-z]?))?\\)")
                    .matcher(text(row.get(9)));
            if (food.find()) {
                for (int group = 1; group <= 2; group++) {
                    if (food.group(group) != null) {
                        add(food.group(group).replaceFirst("E ?", "E "), names);
                        add(food.group(group).replaceFirst("E ?", "E"), names);
                    }
                }
            }
            names.keySet().removeIf(name -> name.matches("CI \\d{5}(:\\d)?"));
            lines.add(line(
                    row.get(0),
                    text(row.get(1)),
                    String.join(";", numbers),
                    text(row.get(5)),
                    field(field, limit),
                    percent(limit),
                    field,
                    limit,
                    text(row.get(9)),
                    String.join(";", numbers(row.get(3))),
                    String.join("|", names.values()),
                    text(row.get(10)),
                    day(row.get(row.size() - 1))));
        }
        return lines;
    }

    /** The entries left out with their reasons are written by hand, their texts by rule. */
    private static List<String> omitted() throws IOException {
        List<String> lines = comments("omitted.csv");
        lines.add("annex,ref_no,substance_group,reason,scope_as_printed,limit_as_printed,conditions,warning_text");
        Map<String, List<CSVRecord>> exports = new LinkedHashMap<>();
        for (CSVRecord row : rows("omitted.csv")) {
            CSVRecord raw = raw(row, exports);
            lines.add(line(
                    row.get(0),
                    row.get(1),
                    row.get(2),
                    row.get(3),
                    text(raw.get(5)),
                    text(raw.get(6)),
                    text(raw.get(7)),
                    text(raw.get(8))));
        }
        return lines;
    }

    /** Names that the file has stay; entries that are new there get the names that the export has for them. */
    private static List<String> omittedNames() throws IOException {
        List<String> lines = comments("omitted-substances.csv");
        lines.add("annex,ref_no,substance_group,name,cas_number");
        List<CSVRecord> known = rows("omitted-substances.csv");
        Map<String, List<CSVRecord>> exports = new LinkedHashMap<>();
        for (CSVRecord row : rows("omitted.csv")) {
            if (row.get(3).equals("moved or deleted")) {
                continue;
            }
            CSVRecord raw = raw(row, exports);
            Map<String, String> names = new LinkedHashMap<>();
            known.stream()
                    .filter(name ->
                            name.toList().subList(0, 3).equals(row.toList().subList(0, 3)))
                    .forEach(name -> addWhole(name.get(3), names));
            if (names.isEmpty()) {
                IntStream.of(1, 2, 12).forEach(column -> addWhole(raw.get(column), names));
                for (String one : text(raw.get(13)).split(",(?!(?<=[0-9'′N],)[0-9N'′])", -1)) {
                    addWhole(one, names);
                }
            }
            IntStream.of(1, 2, 12).forEach(column -> addParts(text(raw.get(column)), names));
            names.values().forEach(name -> lines.add(line(row.get(0), row.get(1), row.get(2), name, "")));
            numbers(raw.get(3)).forEach(number -> lines.add(line(row.get(0), row.get(1), row.get(2), "", number)));
        }
        return lines;
    }

    private static void addWhole(String one, Map<String, String> names) {
        String name = text(one);
        if (!name.isEmpty() && name.length() <= 400 && !name.equals("-")) {
            names.putIfAbsent(name.toUpperCase(Locale.ROOT), name);
        }
    }

    /** Each of several names that one cell has, without what only says that there are more. */
    private static void addParts(String cell, Map<String, String> names) {
        Matcher both = Pattern.compile("(?i)^(.*) oil and extract$").matcher(cell);
        if (both.matches()) {
            addWhole(both.group(1) + cell.substring(both.end(1), both.end(1) + 4), names);
        }
        String clean = cell.replaceAll("(?i)\\(see note \\d+\\)\\.?|\\(\\d+ ?\\)|\\*.*$", " ");
        for (String piece : clean.split(";|(?<= )/|/(?= )", -1)) {
            String name = TAIL.matcher(text(piece)).replaceAll("").replaceAll("(?i),? extracts?$", "");
            String said = name.replaceAll("[\\s.,]+$", "");
            if (cell.contains(said)) {
                addWhole(said, names);
            }
        }
    }

    private static List<String> comments(String name) throws IOException {
        return Files.readAllLines(file(name)).stream()
                .filter(text -> text.startsWith("#"))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static List<CSVRecord> rows(String name) throws IOException {
        try (CSVParser parser =
                CSVFormat.RFC4180.builder().setCommentMarker('#').get().parse(Files.newBufferedReader(file(name)))) {
            return parser.stream().skip(1).toList();
        }
    }

    private static CSVRecord raw(CSVRecord omitted, Map<String, List<CSVRecord>> exports) throws IOException {
        String annex = omitted.get(0);
        if (!exports.containsKey(annex)) {
            exports.put(annex, raw(annex));
        }
        return exports.getOrDefault(annex, List.of()).stream()
                .filter(row ->
                        row.get(0).equals(omitted.get(1)) && text(row.get(1)).equals(omitted.get(2)))
                .findFirst()
                .orElseThrow(() -> new IOException("no entry " + omitted.get(1) + " " + omitted.get(2)));
    }

    private static String field(String field, String limit) {
        String lower = field.toLowerCase(Locale.ROOT);
        return limit.contains("lip products")
                ? "lips"
                : lower.startsWith("rinse-off")
                        ? "rinse_off"
                        : lower.contains("mucous")
                                ? "not_mucous_membranes"
                                : lower.contains("eye products") ? "not_eyes" : "all";
    }

    private static String percent(String limit) {
        Matcher percent = Pattern.compile("^(\\d+)\\s?%").matcher(limit);
        return percent.find() ? percent.group(1) : limit.equals("5 ppm") ? "0.0005" : "";
    }

    private static String line(String... fields) {
        List<String> quoted = new ArrayList<>();
        for (String field : fields) {
            quoted.add(field.matches("(?s).*[\",\n].*") ? '"' + field.replace("\"", "\"\"") + '"' : field);
        }
        return String.join(",", quoted);
    }
}
