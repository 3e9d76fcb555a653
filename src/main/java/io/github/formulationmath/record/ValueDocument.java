package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** Numbers in a document: exact plain text, with unit and basis in fields of their own. */
final class ValueDocument {

    private static final String VALUE = "value";
    private static final String UNIT = "unit";
    private static final String W_W = "w/w";

    private ValueDocument() {}

    static void putFormat(Map<String, Object> map, String format, String version) {
        map.put("format", format);
        map.put("version", version);
    }

    static void requireFormat(Node.Fields fields, String format, String version) {
        require(fields.get("format"), format);
        Node stated = fields.get("version");
        if (!stated.text().equals(version)) {
            throw stated.wrong("version \"" + stated.text() + "\" is not known here, only \"" + version
                    + "\": read it with the release that wrote it, or a later one");
        }
    }

    static Map<String, Object> amount(Amount<?> amount) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(VALUE, number(amount.exactValue()));
        map.put(UNIT, amount.symbol());
        return map;
    }

    static String number(Ratio value) {
        String text = value.toString();
        if (text.length() > 900) {
            throw new IllegalArgumentException("a number has " + text.length()
                    + " characters: no more than 900 are written, for longer ones would not be read again");
        }
        return text;
    }

    static Ratio number(Node node) {
        return node.parsed(Ratio::parse);
    }

    static int count(Node node) {
        return node.parsed(Integer::parseInt);
    }

    static Amount<Mass> mass(Node node) {
        return node.object(f -> AmountFormat.standard().parseMass(text(f)));
    }

    static Amount<Volume> volume(Node node) {
        return node.object(f -> AmountFormat.standard().parseVolume(text(f)));
    }

    /** Number and unit are read apart first, so that neither can hide in the other. */
    private static String text(Node.Fields fields) {
        Ratio value = number(fields.get(VALUE));
        return value + " " + fields.get(UNIT).text();
    }

    static Map<String, Object> share(MassFraction share) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(VALUE, number(share.percent()));
        map.put(UNIT, "%");
        map.put("basis", W_W);
        share.asWritten().ifPresent(written -> map.put("written", written));
        return map;
    }

    static MassFraction share(Node node) {
        return node.object(f -> {
            Ratio percent = number(f.get(VALUE));
            require(f.get(UNIT), "%");
            require(f.get("basis"), W_W);
            MassFraction share = MassFraction.ofPercent(percent);
            Optional<Node> written = f.find("written");
            return written.isPresent() ? asWritten(written.get(), share) : share;
        });
    }

    private static MassFraction asWritten(Node written, MassFraction share) {
        MassFraction read = written.parsed(MassFraction::parse);
        if (!read.equals(share)) {
            throw written.wrong("\"" + written.text() + "\" is another share than the value beside it, " + share);
        }
        return read;
    }

    static Map<String, Object> density(Density density) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(VALUE, number(density.gramsPerMillilitre()));
        map.put(UNIT, "g/mL");
        density.temperature().ifPresent(t -> map.put("temperature", amount(t)));
        return map;
    }

    static Density density(Node node) {
        return node.object(f -> {
            Density density = Density.ofGramsPerMillilitre(number(f.get(VALUE)));
            require(f.get(UNIT), "g/mL");
            return f.find("temperature")
                    .map(t -> t.object(g -> AmountFormat.standard().parseTemperature(text(g))))
                    .map(density::at)
                    .orElse(density);
        });
    }

    static void require(Node node, String expected) {
        if (!node.text().equals(expected)) {
            throw node.wrong("\"" + expected + "\" is expected here");
        }
    }

    /** The constant whose name a text is, in small letters and with hyphens. */
    static <E extends Enum<E>> E constant(Node node, E[] constants) {
        for (E constant : constants) {
            if (word(constant).equals(node.text())) {
                return constant;
            }
        }
        throw node.wrong("one of "
                + String.join(
                        ", ",
                        java.util.Arrays.stream(constants)
                                .map(ValueDocument::word)
                                .toList()) + " is expected here");
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
