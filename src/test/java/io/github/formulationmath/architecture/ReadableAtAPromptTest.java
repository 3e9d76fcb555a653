package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.examples.BatchSheetExample;
import io.github.formulationmath.exercise.Worksheet;
import io.github.formulationmath.sheet.BatchSheet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What a prompt prints of a value is not the name of its class. */
class ReadableAtAPromptTest {

    private static final String WRITES = "a writer: what it writes is its text";
    private static final String COMPUTES = "a machine that is asked; its answers have texts";

    private static final Map<String, String> WITHOUT_TEXT = Map.ofEntries(
            Map.entry("sheet.BatchSheet", WRITES),
            Map.entry("sheet.RecordSheet", WRITES),
            Map.entry("sheet.SoapSheet", WRITES),
            Map.entry("sheet.SeriesSheet", WRITES),
            Map.entry("reckoning.Wording", WRITES),
            Map.entry("plan.BulkPlanner", COMPUTES),
            Map.entry("json.Json", WRITES),
            Map.entry("analysis.BackTitration", COMPUTES),
            Map.entry("analysis.LyeAssay", COMPUTES),
            Map.entry("analysis.Titration", COMPUTES),
            Map.entry("soap.AlkaliGrade$Assayed", COMPUTES),
            Map.entry("soap.LyeBuilder", COMPUTES),
            Map.entry("simulation.MonteCarlo", COMPUTES));

    @Test
    void every_public_final_class_has_a_text_of_its_own_or_a_reason() {
        JavaClasses main = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(Ladder.ROOT);
        Set<String> silent = new TreeSet<>();
        main.stream()
                .filter(ReadableAtAPromptTest::hasInstances)
                .filter(type -> !hasText(type))
                .forEach(type -> silent.add(type.getName().substring(Ladder.ROOT.length() + 1)));
        assertThat(main).hasSizeGreaterThan(300);
        assertThat(silent).containsExactlyInAnyOrderElementsOf(WITHOUT_TEXT.keySet());
    }

    @Test
    void what_is_printed_at_a_prompt_is_the_text() {
        Document sheet = BatchSheet.of(BatchSheetExample.plan());
        assertThat(sheet).hasToString(sheet.print(Format.TEXT));
        Worksheet exercise =
                Worksheet.of(BatchSheetExample.plan().lines().get(0).target().working(), 1, 7);
        assertThat(exercise.blanks().get(0).toString()).matches("\\S+: one of \\[.+]");
    }

    private static boolean hasInstances(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.getModifiers().contains(JavaModifier.FINAL)
                && type.getMethods().stream()
                        .anyMatch(method -> !method.getModifiers().contains(JavaModifier.STATIC));
    }

    private static boolean hasText(JavaClass type) {
        return type.getAllMethods().stream()
                .anyMatch(method -> method.getName().equals("toString")
                        && method.getRawParameterTypes().isEmpty()
                        && !method.getOwner().getName().equals("java.lang.Object"));
    }
}
