package io.github.formulationmath.oracle;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Finds the arithmetic in the HTML of a working and writes the MathML along the line. */
final class HtmlReader {

    private final PrintedWorking.Builder found = new PrintedWorking.Builder();

    PrintedWorking read(Document page) {
        for (Element section : all(page.getDocumentElement(), "section")) {
            switch (all(section, "h2").get(0).getTextContent()) {
                case "Given" ->
                    all(section, "td").stream()
                            .filter(cell -> !all(cell, "math").isEmpty())
                            .forEach(cell -> found.givens.add(linear(cell)));
                case "Working" -> all(section, "li").forEach(this::entry);
                default -> found.answer = String.join(" ", lines(section));
            }
        }
        return found.build();
    }

    private void entry(Element entry) {
        List<String> lines = lines(entry);
        if (lines.isEmpty()) {
            return;
        }
        List<Element> paragraphs = all(entry, "p");
        Element last = paragraphs.get(paragraphs.size() - 1);
        found.block(lines, last.getAttribute("class").isEmpty() ? last.getTextContent() : "");
    }

    private static List<String> lines(Element block) {
        List<String> lines = new ArrayList<>();
        for (Element paragraph : all(block, "p")) {
            if (paragraph.getAttribute("class").equals("line next")) {
                lines.set(lines.size() - 1, lines.get(lines.size() - 1) + " " + linear(paragraph));
            } else if (paragraph.getAttribute("class").equals("line")) {
                lines.add(linear(paragraph));
            }
        }
        return lines;
    }

    private static String linear(Node node) {
        StringBuilder out = new StringBuilder();
        write(node, out);
        return out.toString().replace('\u00A0', ' ').strip();
    }

    private static void write(Node node, StringBuilder out) {
        List<Node> children = children(node);
        switch (node.getNodeName()) {
            case "mo" -> out.append(operator((Element) node));
            case "msub" -> {
                write(children.get(0), out);
                out.append('_');
                write(children.get(1), out);
            }
            case "mfrac" -> fraction(children, out);
            case "msqrt" -> {
                out.append("√(");
                children.forEach(child -> write(child, out));
                out.append(')');
            }
            case "#text" -> out.append(node.getTextContent());
            default -> children.forEach(child -> write(child, out));
        }
    }

    private static void fraction(List<Node> children, StringBuilder out) {
        boolean number = children.get(0).getNodeName().equals("mn");
        out.append(number ? "" : "((");
        write(children.get(0), out);
        out.append(number ? "/" : ") / (");
        write(children.get(1), out);
        out.append(number ? "" : "))");
    }

    private static String operator(Element mo) {
        String sign = mo.getTextContent();
        return mo.getAttribute("form").equals("infix") ? " " + sign + " " : sign.equals(";") ? "; " : sign;
    }

    private static List<Node> children(Node node) {
        List<Node> children = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            children.add(child);
        }
        return children;
    }

    private static List<Element> all(Element root, String name) {
        NodeList nodes = root.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }
}
