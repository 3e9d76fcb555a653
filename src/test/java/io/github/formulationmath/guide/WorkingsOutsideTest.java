package io.github.formulationmath.guide;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.json.Json;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.support.RandomWorkings;
import io.github.formulationmath.support.Tool;
import io.github.formulationmath.support.Workings;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/**
 * Workings as JSON, computed again by a program in another language that shares nothing with the library: {@code
 * shared/workings/check_working.py}. It accepts what is right, and refuses whatever is changed by one digit.
 */
@ResourceLock(Resources.SYSTEM_OUT)
class WorkingsOutsideTest {

    private static final Path CHECKER = Path.of("shared/workings/check_working.py");
    private static final Path SCHEMA = Path.of("shared/workings/working-1.schema.json");
    private static final String ARITHMETIC_ONLY = "--arithmetic-only";
    private static final int CHANGES = 500;
    private static final long SEED = 16_007;

    @TempDir
    static Path scratch;

    private static List<Path> guide = List.of();

    @BeforeAll
    static void run_the_guide() throws Exception {
        guide = GuideWorkings.into(Path.of("target", "workings"), scratch, Tool.areRequired());
        assertThat(guide).hasSizeGreaterThan(500);
        Files.writeString(Path.of("target", "workings", "sheet.tex"), sheet().print(Format.LATEX));
    }

    /** A sheet of twelve lines, for {@code src/build/tex.sh}. */
    private static Document sheet() {
        FormulaBuilder formula = Formula.inPercent("Day cream of the course in weighing");
        formula.phase("Water phase").quantitySufficient("Aqua").line("Glycerin", "5 %");
        formula.line("Xanthan Gum", "0.3 %").line("Sodium Gluconate", "0.1 %").phase("Oil phase");
        formula.line("Caprylic/Capric Triglyceride", "8 %").line("Butyrospermum Parkii Butter", "6 %");
        formula.line("Cetearyl Alcohol", "3 %").line("Glyceryl Stearate SE", "5 %");
        formula.line("Simmondsia Chinensis Seed Oil", "4 %").phase("Cool down").line("Tocopherol", "0.5 %");
        formula.line("Phenoxyethanol (and) Ethylhexylglycerin", "0.9 %").line("Parfum", "0.4 %");
        Batch batch = Batch.of(formula.build(), BatchSize.ofMass("250 g"));
        return BatchSheet.of(WeighingPlan.of(batch, Balance.of("0.01 g", "500 g")));
    }

    @Test
    void every_working_of_the_guide_is_accepted() {
        Tool.Run run = check(List.of(), guide);
        assertThat(run.output().lines().filter(line -> !line.contains(": accepted: ")))
                .isEmpty();
        assertThat(run.output().lines()).hasSameSizeAs(guide).noneMatch(line -> line.contains("unchecked"));
        assertThat(run.status()).isZero();
    }

    @Test
    void what_is_changed_by_one_digit_is_refused() throws IOException {
        refused(List.of(), OneDigit.Of.ARITHMETIC);
        refused(List.of(), OneDigit.Of.SEALED);
    }

    /** Whoever changes a working and seals it anew is found out by the arithmetic. */
    @Test
    void what_was_computed_needs_no_seal_to_be_refused() throws IOException {
        refused(List.of(ARITHMETIC_ONLY), OneDigit.Of.ARITHMETIC);
    }

    private static void refused(List<String> options, List<OneDigit.Of> what) throws IOException {
        OneDigit digits = new OneDigit(guide);
        assertThat(what).allMatch(each -> digits.sites(each) > 50);
        Random random = new Random(SEED);
        Map<Path, String> changed = new LinkedHashMap<>();
        Path folder = Files.createTempDirectory(scratch, "changed");
        for (int i = 0; i < CHANGES; i++) {
            Path file = folder.resolve(i + ".json");
            changed.put(file, digits.write(what.get(i % what.size()), random, file));
        }
        List<Path> files = List.copyOf(changed.keySet());
        List<String> said = check(options, files).output().lines().toList();
        assertThat(said).hasSize(CHANGES);
        assertThat(said.stream().filter(line -> !line.contains(": refused: ")))
                .as(changed.toString())
                .isEmpty();
    }

    @Test
    void operations_of_every_kind_and_hostile_names_are_accepted() throws IOException {
        List<Working> workings = new ArrayList<>(List.of(
                Workings.lineMass(), Workings.everything(), Workings.total(100), Workings.hostile(), longSum()));
        for (long seed = 0; seed < 300; seed++) {
            workings.add(RandomWorkings.of(seed));
        }
        Tool.Run run = check(List.of(), written(workings));
        assertThat(run.output().lines()).hasSameSizeAs(workings).allMatch(line -> line.contains(": accepted: "));
    }

    /** Long enough to overflow the stack of anything that calls itself. */
    private static Working longSum() {
        return Working.of(Phrase.of("question.readings-total"), r -> {
            Term sum = r.literal(0);
            for (int i = 1; i <= 5_000; i++) {
                sum = r.sum(sum, r.literal(i));
            }
            return r.rounded(sum, Rounding.none());
        });
    }

    /** A statistical function that is known is bracketed; another is told to be unchecked. */
    @Test
    void statistical_functions_are_bracketed_or_named() throws IOException {
        List<Working> normal = Stream.of("0", "1", "-1.96", "3", "-3.001", "6", "-12", "1/3", "-38", "41")
                .map(z -> function("Φ", Ratio.parse(z), x -> NORMAL.cumulativeProbability(x)))
                .toList();
        assertThat(check(List.of(), written(normal)).output().lines())
                .hasSameSizeAs(normal)
                .allMatch(line -> line.contains(": accepted: ") && !line.contains("unchecked"));
        List<Working> wrong = Stream.of("0", "1", "-1.96", "3", "-3.001", "6", "-12", "1/3")
                .map(z -> function("Φ", Ratio.parse(z), x -> NORMAL.cumulativeProbability(x) * (1 + 1e-9)))
                .toList();
        assertThat(check(List.of(), written(wrong)).output().lines())
                .hasSameSizeAs(wrong)
                .allMatch(line -> line.contains(": refused: line 2: the value lies outside its bracket"));
        assertThat(check(List.of(), written(List.of(function("Ψ", Ratio.ONE, Math::sin))))
                        .output())
                .contains(": accepted: ")
                .contains("1 unchecked Ψ");
    }

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static Working function(String symbol, Ratio at, java.util.function.DoubleUnaryOperator f) {
        Operation.StatisticalFunction function = new Operation.StatisticalFunction() {
            @Override
            public String symbol() {
                return symbol;
            }

            @Override
            public double applyAsDouble(double... arguments) {
                return f.applyAsDouble(arguments[0]);
            }
        };
        return Working.of(
                Phrase.of("question.readings-total"),
                (Reckoning<Term> r) -> r.function(function, List.of(r.literal(at))));
    }

    @Test
    void every_working_follows_the_published_schema() throws IOException {
        Schema schema;
        try (InputStream text = Files.newInputStream(SCHEMA)) {
            schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text);
        }
        List<Path> all = new ArrayList<>(guide);
        all.addAll(written(List.of(Workings.everything(), Workings.hostile(), function("Ψ", Ratio.ONE, Math::sin))));
        for (Path file : all) {
            String json = Files.readString(file);
            assertThat(schema.validate(json, InputFormat.JSON))
                    .as(file.toString())
                    .isEmpty();
        }
        String first = Files.readString(guide.get(0));
        assertThat(schema.validate(first.replace("\"line\":\"1\"", "\"row\":\"1\""), InputFormat.JSON))
                .isNotEmpty();
    }

    /**
     * What a pound or an ounce is in grams belongs to the units, not to what somebody gave; where changing units is itself the
     * exercise it stands in the relation.
     */
    @Test
    void no_conversion_factor_stands_among_what_was_given() throws IOException {
        List<BigDecimal> factors = Stream.of(
                        "453.59237", "28.349523125", "31.1034768", "0.06479891", "29.5735295625", "28.4130625")
                .map(BigDecimal::new)
                .toList();
        int givens = 0;
        for (Path file : guide) {
            for (JsonNode line : new ObjectMapper().readTree(file.toFile()).get("lines")) {
                String value = line.path("value").asText();
                boolean factor = !value.contains("/")
                        && !value.isEmpty()
                        && factors.stream().anyMatch(each -> each.compareTo(new BigDecimal(value)) == 0);
                boolean given = line.get("is").asText().equals("given");
                assertThat(given && factor).as(file + " " + line).isFalse();
                givens += given ? 1 : 0;
            }
        }
        assertThat(givens).isGreaterThan(1000);
    }

    @Test
    void the_checker_can_be_read_in_one_sitting_and_needs_nothing_but_python() throws IOException {
        List<String> lines = Files.readAllLines(CHECKER);
        assertThat(lines).hasSizeLessThanOrEqualTo(200).allMatch(line -> line.length() <= 130);
        assertThat(lines.stream()
                        .filter(line -> line.startsWith("import ") || line.startsWith("from "))
                        .map(line -> line.split(" ")[1]))
                .containsExactlyInAnyOrder("hashlib", "json", "re", "sys", "collections", "decimal", "fractions");
    }

    private static List<Path> written(List<Working> workings) throws IOException {
        Path folder = Files.createTempDirectory(scratch, "written");
        List<Path> files = new ArrayList<>();
        for (Working working : workings) {
            files.add(Files.writeString(folder.resolve(files.size() + ".json"), Json.ofWorking(working)));
        }
        return files;
    }

    private static Tool.Run check(List<String> options, List<Path> files) {
        List<String> arguments = new ArrayList<>(List.of(CHECKER.toString()));
        arguments.addAll(options);
        files.forEach(file -> arguments.add(file.toString()));
        return Tool.of("python3").run(arguments);
    }
}
