package io.github.formulationmath.solution;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The density formula again, in decimals, with the coefficients typed from Council Directive 76/766/EEC, Annex; it shares nothing with the library. */
final class LawOfAlcohol {

    private static final List<BigDecimal> A = decimals(
            "998.2012300",
            "-192.9769495",
            "389.1238958",
            "-1668.103923",
            "13522.15441",
            "-88292.78388",
            "306287.4042",
            "-613838.1234",
            "747017.2998",
            "-547846.1354",
            "223446.0334",
            "-39032.85426");
    private static final List<BigDecimal> B = decimals(
            "-2.0618513e-1", "-5.2682542e-3", "3.6130013e-5", "-3.8957702e-7", "7.1693540e-9", "-9.9739231e-11");
    private static final List<List<BigDecimal>> C = List.of(
            decimals(
                    "1.693443461530087e-1",
                    "-1.046914743455169e1",
                    "7.196353469546523e1",
                    "-7.047478054272792e2",
                    "3.924090430035045e3",
                    "-1.210164659068747e4",
                    "2.248646550400788e4",
                    "-2.605562982188164e4",
                    "1.852373922069467e4",
                    "-7.420201433430137e3",
                    "1.285617841998974e3"),
            decimals(
                    "-1.193013005057010e-2",
                    "2.517399633803461e-1",
                    "-2.170575700536993",
                    "1.353034988843029e1",
                    "-5.029988758547014e1",
                    "1.096355666577570e2",
                    "-1.422753946421155e2",
                    "1.080435942856230e2",
                    "-4.414153236817392e1",
                    "7.442971530188783"),
            decimals(
                    "-6.802995733503803e-4",
                    "1.876837790289664e-2",
                    "-2.002561813734156e-1",
                    "1.022992966719220",
                    "-2.895696483903638",
                    "4.810060584300675",
                    "-4.672147440794683",
                    "2.458043105903461",
                    "-5.411227621436812e-1"),
            decimals("4.075376675622027e-6", "-8.763058573471110e-6", "6.515031360099368e-6", "-1.515784836987210e-6"),
            decimals("-2.788074354782409e-8", "1.345612883493354e-8"));

    private LawOfAlcohol() {}

    private static List<BigDecimal> decimals(String... texts) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (String text : texts) {
            numbers.add(new BigDecimal(text));
        }
        return List.copyOf(numbers);
    }

    /** In kg/m³, exactly; powers by themselves instead of a nested scheme. */
    static BigDecimal density(BigDecimal p, BigDecimal celsius) {
        BigDecimal t = celsius.subtract(BigDecimal.valueOf(20));
        BigDecimal sum = BigDecimal.ZERO;
        for (int k = 0; k < A.size(); k++) {
            sum = sum.add(A.get(k).multiply(p.pow(k)));
        }
        for (int k = 0; k < B.size(); k++) {
            sum = sum.add(B.get(k).multiply(t.pow(k + 1)));
        }
        for (int i = 0; i < C.size(); i++) {
            for (int k = 0; k < C.get(i).size(); k++) {
                sum = sum.add(C.get(i).get(k).multiply(p.pow(k + 1)).multiply(t.pow(i + 1)));
            }
        }
        return sum;
    }

    /**
     * The coefficients of p^0, p^1 … of ρ(p, t) for t − 20 = n/d, times d^6, so that they are decimals for every fraction.
     */
    static List<BigDecimal> polynomialTimesPower(int n, int d) {
        List<BigDecimal> all = new ArrayList<>();
        for (int k = 0; k < A.size(); k++) {
            BigDecimal sum = A.get(k).multiply(BigDecimal.valueOf(d).pow(6));
            if (k == 0) {
                for (int i = 1; i <= B.size(); i++) {
                    sum = sum.add(B.get(i - 1).multiply(power(n, d, i)));
                }
            } else {
                for (int i = 1; i <= C.size(); i++) {
                    if (k <= C.get(i - 1).size()) {
                        sum = sum.add(C.get(i - 1).get(k - 1).multiply(power(n, d, i)));
                    }
                }
            }
            all.add(sum);
        }
        return all;
    }

    private static BigDecimal power(int n, int d, int i) {
        return BigDecimal.valueOf(n).pow(i).multiply(BigDecimal.valueOf(d).pow(6 - i));
    }
}
