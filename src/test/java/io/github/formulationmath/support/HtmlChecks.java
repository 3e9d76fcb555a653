package io.github.formulationmath.support;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import nu.validator.validation.SimpleDocumentValidator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * What an HTML page must keep to: the HTML standard with ARIA and MathML, as the Nu Html Checker of the W3C reads it, and
 * the rules of WCAG 2.2 that a program can decide on such pages (1.3.1 headings and table headers, 2.4.2 title, 2.4.6
 * headings, 3.1.1 language), and that nothing is fetched or run.
 */
public final class HtmlChecks {

    /** The checker does not know the boxes in the margins of a page, CSS Paged Media Module Level 3, section 5. */
    private static final Pattern MARGIN_BOX =
            Pattern.compile("(?m)^@page \\{ @(?:top-left|bottom-right) \\{ [^}<]*} }$");

    private HtmlChecks() {}

    /**
     * Asserts that a page is valid, can be read by everybody, and needs nothing but itself.
     *
     * @param html the whole page
     */
    public static void assertAccessible(String html) {
        List<String> findings = new ArrayList<>(validate(html));
        findings.addAll(inspect(parse(html)));
        if (!findings.isEmpty()) {
            throw new AssertionError(String.join("\n", findings) + "\n\n" + html);
        }
    }

    /** The messages of the Nu Html Checker, errors and warnings alike. */
    static List<String> validate(String html) {
        List<String> findings = new ArrayList<>();
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException e) {
                findings.add("warning, line " + e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void error(SAXParseException e) {
                findings.add("line " + e.getLineNumber() + ": " + e.getMessage());
            }

            @Override
            public void fatalError(SAXParseException e) {
                error(e);
            }
        };
        try {
            SimpleDocumentValidator validator = new SimpleDocumentValidator(true, false, false);
            validator.setUpMainSchema("http://s.validator.nu/html5-all.rnc", handler);
            validator.setUpValidatorAndParsers(handler, false, false);
            validator.checkHtmlInputSource(
                    new InputSource(new StringReader(MARGIN_BOX.matcher(html).replaceAll(""))));
        } catch (Exception e) {
            throw new AssertionError("the checker failed", e);
        }
        return findings;
    }

    /** The page as XML: everything this library writes is well-formed. */
    public static Document parse(String html) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            String xml = html.replace("<!DOCTYPE html>", "");
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError("the page is not well-formed: " + e.getMessage() + "\n" + html, e);
        }
    }

    static List<String> inspect(Document page) {
        List<String> findings = new ArrayList<>();
        Element root = page.getDocumentElement();
        require(findings, !root.getAttribute("lang").isEmpty(), "the page has no language");
        require(findings, !text(page, "title").isEmpty(), "the page has no title");
        require(findings, count(page, "main") == 1, "the page has no main part, or two");
        require(findings, count(page, "h1") == 1, "the page has no first heading, or two");
        for (String fetched : List.of("script", "img", "link", "iframe", "object", "embed", "audio", "video", "form")) {
            require(findings, count(page, fetched) == 0, "the page has a " + fetched);
        }
        headings(findings, page);
        tables(findings, page);
        attributes(findings, page);
        return findings;
    }

    private static void headings(List<String> findings, Document page) {
        int level = 0;
        for (Element element : all(page, "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int next = element.getTagName().charAt(1) - '0';
                require(findings, next <= level + 1, "a heading of level " + next + " below one of level " + level);
                require(findings, !element.getTextContent().isBlank(), "an empty heading");
                level = next;
            }
        }
    }

    private static void tables(List<String> findings, Document page) {
        for (Element header : all(page, "th")) {
            require(findings, header.getAttribute("scope").matches("col|row"), "a table header without scope");
            require(findings, !header.getTextContent().isBlank(), "an empty table header");
        }
        require(findings, count(page, "table") == 0 || count(page, "th") > 0, "a table without headers");
    }

    private static void attributes(List<String> findings, Document page) {
        for (Element element : all(page, "*")) {
            for (String name : List.of("src", "href", "style", "onclick", "onload", "color", "bgcolor")) {
                require(findings, !element.hasAttribute(name) || isInside(element.getAttribute(name)), "a " + name);
            }
        }
        String style = text(page, "style");
        require(findings, !style.contains("url(") && !style.contains("@import"), "the style fetches something");
        require(findings, !style.matches("(?s).*[^-]color\\s*:.*"), "the style sets a colour");
    }

    private static boolean isInside(String address) {
        return address.startsWith("#");
    }

    private static List<Element> all(Document page, String name) {
        NodeList nodes = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static int count(Document page, String name) {
        return page.getElementsByTagName(name).getLength();
    }

    private static String text(Document page, String name) {
        NodeList nodes = page.getElementsByTagName(name);
        return nodes.getLength() == 0 ? "" : nodes.item(0).getTextContent();
    }

    private static void require(List<String> findings, boolean kept, String otherwise) {
        if (!kept) {
            findings.add(otherwise);
        }
    }
}
