package io.github.formulationmath.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Follows every relative link and picture of the documentation, with its anchor; every page can be reached. */
class LinksTest {

    private static final Pattern LINK = Pattern.compile("\\]\\(([^()\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("#{1,6} +(.*?) *#*");

    @TestFactory
    Stream<DynamicTest> relative_links_lead_somewhere() {
        return GuidePages.all().stream()
                .map(page -> dynamicTest(
                        page.toString(), () -> assertThat(broken(page)).isEmpty()));
    }

    /** From the index, by links alone. */
    @Test
    void every_page_can_be_reached_from_the_index() {
        Map<Path, GuidePage> pages = new HashMap<>();
        GuidePages.all().forEach(page -> pages.put(page.path().normalize(), page));
        List<Path> reached = new ArrayList<>(List.of(GuidePages.DOCS.resolve("index.md")));
        for (int i = 0; i < reached.size(); i++) {
            targets(pages.get(reached.get(i))).stream()
                    .map(target -> target.split("#", 2)[0])
                    .filter(target -> target.endsWith(".md"))
                    .map(resolverOf(reached.get(i))::resolve)
                    .map(Path::normalize)
                    .filter(path -> pages.containsKey(path) && !reached.contains(path))
                    .forEach(reached::add);
        }
        assertThat(reached)
                .as("pages to be reached by links from docs/index.md")
                .containsAll(pages.keySet());
    }

    private static List<String> broken(GuidePage page) {
        List<String> broken = new ArrayList<>();
        for (String target : targets(page)) {
            String[] parts = target.split("#", 2);
            Path file = parts[0].isEmpty()
                    ? page.path()
                    : resolverOf(page.path()).resolve(parts[0]).normalize();
            if (!Files.exists(file)) {
                broken.add(target + ": no such file");
            } else if (parts.length == 2 && !anchors(GuidePage.read(file)).contains(parts[1])) {
                broken.add(target + ": no such heading");
            }
        }
        return broken;
    }

    private static Path resolverOf(Path page) {
        Path parent = page.getParent();
        return parent == null ? Path.of("") : parent;
    }

    private static List<String> targets(GuidePage page) {
        return page.prose().stream()
                .flatMap(line -> LINK.matcher(line).results().map(found -> found.group(1)))
                .filter(target -> !target.contains("://") && !target.startsWith("mailto:"))
                .toList();
    }

    /** The anchors that the usual Markdown readers give to headings: lower case, punctuation dropped, hyphens for blanks. */
    private static List<String> anchors(GuidePage page) {
        return page.prose().stream()
                .map(HEADING::matcher)
                .filter(Matcher::matches)
                .map(found -> found.group(1)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} _-]", "")
                        .replace(' ', '-'))
                .toList();
    }
}
