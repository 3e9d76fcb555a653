package io.github.formulationmath.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;

/**
 * Compiles and runs every Java block of the documentation and compares what it prints with the block of text that follows.
 *
 * <p>{@code -Dformulationmath.guide.update=true} writes the printed outputs into the pages instead; the review then sees
 * what has changed.
 */
@ResourceLock(Resources.SYSTEM_OUT)
class UserGuideTest {

    private static final boolean UPDATE = Boolean.getBoolean("formulationmath.guide.update");

    @TempDir
    static Path classes;

    @TestFactory
    Stream<DynamicTest> what_the_pages_show_is_what_the_code_prints() {
        List<PageSource> pages =
                GuidePages.withJava().stream().map(PageSource::of).toList();
        assertThat(pages).isNotEmpty();
        PageCompiler.compile(pages, classes);
        return pages.stream().map(page -> dynamicTest(page.page().toString(), () -> check(page)));
    }

    private static void check(PageSource page) {
        List<String> outputs = PageRun.outputs(page, classes);
        assertThat(outputs).hasSameSizeAs(page.blocks());
        if (UPDATE) {
            PageUpdate.write(page.page(), outputs);
            return;
        }
        for (int i = 0; i < outputs.size(); i++) {
            Fence block = page.blocks().get(i);
            String shown = page.page().shownAfter(block).map(Fence::text).orElse("");
            assertThat(outputs.get(i)).as(page.page().at(block)).isEqualTo(shown);
        }
    }

    /** One session of JShell a page, with the startup file that the page tells people to use. */
    @TestFactory
    Stream<DynamicTest> what_j_shell_answers_is_what_the_pages_show() {
        return GuidePages.all().stream()
                .filter(page -> !page.in("jshell").isEmpty())
                .map(page -> dynamicTest(page.toString(), () -> checkShell(page)));
    }

    private static void checkShell(GuidePage page) throws Exception {
        List<Fence> blocks = page.in("jshell");
        List<List<String>> answers = ShellSession.of(blocks);
        if (UPDATE) {
            PageUpdate.replace(page, blocks, answers);
            return;
        }
        for (int i = 0; i < blocks.size(); i++) {
            assertThat(answers.get(i))
                    .as(page.at(blocks.get(i)))
                    .isEqualTo(blocks.get(i).content());
        }
    }

    @TestFactory
    Stream<DynamicTest> every_teaching_page_shows_a_checked_output() {
        return GuidePages.teaching().stream()
                .map(page -> dynamicTest(
                        page.toString(),
                        () -> assertThat(page.fences())
                                .anyMatch(fence -> fence.language().equals("jshell")
                                        || (fence.language().equals("java")
                                                && page.shownAfter(fence).isPresent()))));
    }

    /** A block of text that follows no Java block would be shown unchecked. */
    @TestFactory
    Stream<DynamicTest> no_output_stands_unchecked() {
        return GuidePages.all().stream()
                .map(page -> dynamicTest(
                        page.toString(),
                        () -> assertThat(page.in("text"))
                                .allMatch(text -> page.in("java").stream()
                                        .anyMatch(block -> page.shownAfter(block)
                                                .filter(text::equals)
                                                .isPresent()))));
    }

    /** Blocks in other languages, and parts of files, are shown word for word. */
    @TestFactory
    Stream<DynamicTest> parts_of_files_are_the_files() {
        return GuidePages.all().stream()
                .flatMap(page -> page.fences().stream()
                        .filter(fence -> fence.file().isPresent())
                        .map(fence -> dynamicTest(
                                page.at(fence),
                                () -> assertThat(Files.readString(
                                                Path.of(fence.file().orElseThrow())))
                                        .contains(fence.text()))));
    }

    /** What a reader copies into a POM is the version that this is. */
    @Test
    void coordinates_name_this_version() {
        String version = firstVersion(GuidePage.read(Path.of("pom.xml")).lines());
        List<Fence> coordinates = GuidePages.all().stream()
                .flatMap(page -> page.in("xml").stream())
                .filter(fence -> fence.text().contains("<artifactId>formulation-math</artifactId>"))
                .toList();
        assertThat(coordinates)
                .isNotEmpty()
                .allMatch(fence -> firstVersion(fence.content().stream()
                                .dropWhile(line -> !line.contains("<artifactId>formulation-math</artifactId>"))
                                .toList())
                        .equals(version));
    }

    private static String firstVersion(List<String> lines) {
        return lines.stream()
                .filter(line -> line.contains("<version>"))
                .findFirst()
                .orElseThrow()
                .strip();
    }

    /** The startup file imports every package. */
    @Test
    void the_startup_file_imports_every_package() throws Exception {
        assertThat(Files.readString(GuidePages.DOCS.resolve("formulation-math.jsh")))
                .contains(PageCompiler.packages().stream()
                        .filter(name -> name.startsWith("io."))
                        .map(name -> "import " + name + ".*;")
                        .toList());
    }

    @Test
    void code_fits_the_page() {
        assertThat(GuidePages.all())
                .allSatisfy(page -> assertThat(page.in("java"))
                        .allSatisfy(fence ->
                                assertThat(fence.content()).as(page.at(fence)).allMatch(line -> line.length() <= 130)));
    }
}
