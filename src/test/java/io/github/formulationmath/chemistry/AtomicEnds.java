package io.github.formulationmath.chemistry;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Masses by formula with every atomic mass at an end of its printed uncertainty (Atomic weights of the elements 2007, Pure
 * Appl. Chem. 81 (2009) 2131-2156, table 1), in decimals and without anything of ours.
 */
public final class AtomicEnds {

    private static final MathContext DIGITS = new MathContext(40);
    private static final Pattern PART = Pattern.compile("([A-Z][a-z]?)(\\d*)");
    private static final Map<String, BigDecimal[]> ATOMS = atoms();

    private AtomicEnds() {}

    /** Mass and uncertainty by symbol, as the table prints them. */
    private static Map<String, BigDecimal[]> atoms() {
        Map<String, BigDecimal[]> atoms = new HashMap<>();
        try {
            for (String line : Files.readAllLines(Path.of("shared/chemistry/atomic-masses.csv"))) {
                String[] parts = line.split(",", 6);
                if (!line.startsWith("#") && !parts[0].equals("symbol")) {
                    BigDecimal mass = new BigDecimal(parts[3]);
                    BigDecimal last = new BigDecimal(BigInteger.ONE, mass.scale());
                    atoms.put(parts[0], new BigDecimal[] {mass, last.multiply(new BigDecimal(parts[4]))});
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return atoms;
    }

    /** Mass and uncertainty by symbol. */
    static Map<String, BigDecimal[]> masses() {
        return Map.copyOf(ATOMS);
    }

    private static Map<String, Integer> counts(String formula) {
        Map<String, Integer> counts = new TreeMap<>();
        for (String piece : formula.split("·")) {
            Matcher times = Pattern.compile("^(\\d+)").matcher(piece);
            int factor = times.find() ? Integer.parseInt(times.group(1)) : 1;
            Matcher part = PART.matcher(piece);
            while (part.find()) {
                int count = part.group(2).isEmpty() ? 1 : Integer.parseInt(part.group(2));
                counts.merge(part.group(1), factor * count, Integer::sum);
            }
        }
        return counts;
    }

    /** So many units of a reference in a whole, with every atomic mass at one end or the other, as a pattern of bits says. */
    public static BigDecimal factor(String formula, String reference, String units, long ends) {
        Map<String, Integer> above = counts(reference);
        Map<String, Integer> below = counts(formula);
        List<String> elements = new ArrayList<>(below.keySet());
        above.keySet().stream().filter(element -> !below.containsKey(element)).forEach(elements::add);
        BigDecimal part = BigDecimal.ZERO;
        BigDecimal whole = BigDecimal.ZERO;
        for (int i = 0; i < elements.size(); i++) {
            BigDecimal[] atom = ATOMS.get(elements.get(i));
            BigDecimal mass = (ends >> i & 1) == 0 ? atom[0].subtract(atom[1]) : atom[0].add(atom[1]);
            part = part.add(mass.multiply(BigDecimal.valueOf(above.getOrDefault(elements.get(i), 0))));
            whole = whole.add(mass.multiply(BigDecimal.valueOf(below.getOrDefault(elements.get(i), 0))));
        }
        return part.multiply(new BigDecimal(units)).divide(whole, DIGITS);
    }
}
