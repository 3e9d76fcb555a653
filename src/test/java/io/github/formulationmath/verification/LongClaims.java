package io.github.formulationmath.verification;

/** Claims of many lines in parts, ten lines to a phase: line n has 10 + n mod 90 parts, and so many grams. */
final class LongClaims {

    private LongClaims() {}

    private static int parts(int line) {
        return 10 + line % 90;
    }

    /** All figures right. */
    static String table(int lines) {
        return table(lines, -1);
    }

    private static String table(int lines, int wrong) {
        StringBuilder rows = new StringBuilder();
        long sum = 0;
        for (int i = 0; i < lines; i++) {
            sum += parts(i);
            rows.append("line,p")
                    .append(i / 10)
                    .append(",l")
                    .append(i)
                    .append(',')
                    .append(parts(i))
                    .append(',');
            rows.append(parts(i) * (i == wrong ? 10 : 1)).append(".0 g\n");
        }
        return "record,group,name,value,figure\nformula,,long,parts,\nsize,,mass," + sum + " g,\n" + rows;
    }

    /** The point moved in the figure of the third line. */
    static Claim oneWrong(int lines) {
        return Claims.read(table(lines, 2));
    }

    /** Line n has 1/(n + 2) parts; each figure is the same, and wrong. */
    static Claim manyDenominators(int lines) {
        StringBuilder rows =
                new StringBuilder("record,group,name,value,figure\nformula,,long,parts,\nsize,,mass,1 kg,\n");
        for (int i = 0; i < lines; i++) {
            rows.append("line,p")
                    .append(i / 10)
                    .append(",l")
                    .append(i)
                    .append(",1/")
                    .append(i + 2)
                    .append(",1.0 g\n");
        }
        return Claims.read(rows.toString());
    }
}
