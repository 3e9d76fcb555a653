package io.github.formulationmath.json;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/** Numbers in a document: exact plain text, with unit and basis in fields of their own. */
final class ValueDocument {

    private static final String VALUE = "value";
    private static final String UNIT = "unit";
    private static final String W_W = "w/w";
    private static final String VERSION = "1";
    private static final int MOST_DIGITS = 900;

    private ValueDocument() {}

    /** The head of a document that stands alone. */
    static Written document(String format) {
        return Written.of("format", format).with("version", VERSION);
    }

    static void requireFormat(Node.Fields fields, String format) {
        require(fields.get("format"), format);
        Node stated = fields.get("version");
        if (!stated.text().equals(VERSION)) {
            throw stated.wrong("version \"" + stated.text() + "\" is not known here, only \"" + VERSION
                    + "\": read it with the release that wrote it, or a later one");
        }
    }

    static Written amount(Amount<?> amount) {
        return Written.of(VALUE, number(amount.exactValue())).with(UNIT, amount.symbol());
    }

    static String number(Ratio value) {
        String text = value.toString();
        if (text.length() > MOST_DIGITS) {
            throw new IllegalArgumentException("a number has " + text.length() + " characters: no more than "
                    + MOST_DIGITS + " are written, for longer ones would not be read again");
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

    static Written share(MassFraction share) {
        return Written.of(VALUE, number(share.percent()))
                .with(UNIT, "%")
                .with("basis", W_W)
                .with("written", share.asWritten(), text -> text);
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

    static Written density(Density density) {
        return Written.of(VALUE, number(density.gramsPerMillilitre()))
                .with(UNIT, "g/mL")
                .with("temperature", density.temperature(), ValueDocument::amount);
    }

    static Density density(Node node) {
        return node.object(f -> {
            Density density = Density.ofGramsPerMillilitre(number(f.get(VALUE)));
            require(f.get(UNIT), "g/mL");
            return f.with(
                    density,
                    "temperature",
                    t -> t.object(g -> AmountFormat.standard().parseTemperature(text(g))),
                    Density::at);
        });
    }

    static void require(Node node, String expected) {
        if (!node.text().equals(expected)) {
            throw node.wrong("\"" + expected + "\" is expected here");
        }
    }

    /** The constant whose name a text is, in small letters and with hyphens. */
    static <E extends Enum<E>> E constant(Node node, E[] constants) {
        return Arrays.stream(constants)
                .filter(constant -> word(constant).equals(node.text()))
                .findFirst()
                .orElseThrow(() -> node.wrong("one of "
                        + Arrays.stream(constants).map(ValueDocument::word).collect(Collectors.joining(", "))
                        + " is expected here"));
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
