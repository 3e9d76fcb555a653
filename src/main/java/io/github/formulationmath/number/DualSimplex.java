package io.github.formulationmath.number;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/**
 * The dual simplex method in whole numbers. All costs being at least 0, x = 0 is optimal as far as costs go and needs only
 * be driven to where all rows are kept: there is no first phase, and no tolerance anywhere.
 *
 * <p>The tableau says {@code basic_i = (B_i + Σ A_ij · nonbasic_j) / D} with one common denominator D &gt; 0; every entry
 * stays whole because it is a minor of the first tableau (integer pivoting: J. Edmonds, Systems of distinct
 * representatives and linear algebra, 1967; E. H. Bareiss, 1968; from memory). The leaving row is the one most violated; as
 * long as the cost does not move, it is the one of smallest index, which cannot cycle (R. G. Bland, 1977; from memory).
 */
final class DualSimplex {

    private final int unknowns;
    private final int rows;
    /** Row i: entries of the nonbasic variables, then the constant; the last row is the cost. */
    private final BigInteger[][] tableau;
    /** Variables: 0 … unknowns−1 are x, the rest is by how much row k is kept with something to spare. */
    private final int[] basic;

    private final int[] nonbasic;
    private final BigInteger[] rowScale;
    private BigInteger denominator = BigInteger.ONE;

    DualSimplex(LinearProgram program) {
        this.unknowns = program.costs().size();
        this.rows = program.rows().size();
        this.tableau = new BigInteger[rows + 1][unknowns + 1];
        this.rowScale = new BigInteger[rows + 1];
        this.basic = new int[rows];
        this.nonbasic = new int[unknowns];
        Arrays.setAll(nonbasic, j -> j);
        for (int k = 0; k < rows; k++) {
            basic[k] = unknowns + k;
            LinearProgram.Row row = program.rows().get(k);
            fill(k, row.coefficients(), row.least().unaryMinus());
        }
        fill(rows, program.costs(), Ratio.ZERO);
    }

    /** Multiplies a row by what makes it whole, so that the size of its numbers does not matter. */
    private void fill(int k, List<Ratio> coefficients, Ratio constant) {
        BigInteger scale = constant.denominator();
        for (Ratio c : coefficients) {
            scale = scale.multiply(c.denominator()).divide(scale.gcd(c.denominator()));
        }
        rowScale[k] = scale;
        for (int j = 0; j < unknowns; j++) {
            tableau[k][j] = times(coefficients.get(j), scale);
        }
        tableau[k][unknowns] = times(constant, scale);
    }

    private static BigInteger times(Ratio value, BigInteger scale) {
        return value.numerator().multiply(scale.divide(value.denominator()));
    }

    LinearProgram.Answer solve() {
        boolean stalled = false;
        while (true) {
            int leaving = stalled ? firstViolated() : mostViolated();
            if (leaving < 0) {
                return optimal();
            }
            int entering = entering(leaving);
            if (entering < 0) {
                return infeasible(leaving);
            }
            stalled = tableau[rows][entering].signum() == 0;
            pivot(leaving, entering);
        }
    }

    private int mostViolated() {
        int worst = -1;
        for (int i = 0; i < rows; i++) {
            if (constant(i).signum() < 0 && (worst < 0 || constant(i).compareTo(constant(worst)) < 0)) {
                worst = i;
            }
        }
        return worst;
    }

    private int firstViolated() {
        int first = -1;
        for (int i = 0; i < rows; i++) {
            if (constant(i).signum() < 0 && (first < 0 || basic[i] < basic[first])) {
                first = i;
            }
        }
        return first;
    }

    private BigInteger constant(int row) {
        return tableau[row][unknowns];
    }

    /** The variable whose cost per help is smallest; of equal ones, the one of smallest index. */
    private int entering(int leaving) {
        int best = -1;
        for (int j = 0; j < unknowns; j++) {
            if (tableau[leaving][j].signum() > 0 && (best < 0 || isCheaper(leaving, j, best))) {
                best = j;
            }
        }
        return best;
    }

    private boolean isCheaper(int row, int j, int than) {
        int order =
                tableau[rows][j].multiply(tableau[row][than]).compareTo(tableau[rows][than].multiply(tableau[row][j]));
        return order < 0 || order == 0 && nonbasic[j] < nonbasic[than];
    }

    private void pivot(int r, int q) {
        BigInteger pivot = tableau[r][q];
        for (int i = 0; i <= rows; i++) {
            if (i != r) {
                eliminate(tableau[i], tableau[r], q, pivot);
            }
        }
        for (int j = 0; j <= unknowns; j++) {
            tableau[r][j] = j == q ? denominator : tableau[r][j].negate();
        }
        denominator = pivot;
        int entered = nonbasic[q];
        nonbasic[q] = basic[r];
        basic[r] = entered;
    }

    private void eliminate(BigInteger[] row, BigInteger[] pivotRow, int q, BigInteger pivot) {
        BigInteger factor = row[q];
        for (int j = 0; j <= unknowns; j++) {
            if (j != q) {
                BigInteger scaled = row[j].multiply(pivot);
                row[j] = (factor.signum() == 0 ? scaled : scaled.subtract(factor.multiply(pivotRow[j])))
                        .divide(denominator);
            }
        }
    }

    private LinearProgram.Answer optimal() {
        Ratio[] values = zeros(unknowns);
        for (int i = 0; i < rows; i++) {
            if (basic[i] < unknowns) {
                values[basic[i]] = Ratio.of(constant(i), denominator);
            }
        }
        BigInteger costScale = denominator.multiply(rowScale[rows]);
        Ratio[] multipliers = zeros(rows);
        for (int j = 0; j < unknowns; j++) {
            setMultiplier(multipliers, nonbasic[j], tableau[rows][j], costScale);
        }
        return new LinearProgram.Answer.Optimal(
                List.of(values), List.of(multipliers), Ratio.of(constant(rows), costScale));
    }

    /** Row r reads: a sum of nothing but negative terms is to be at least 0. */
    private LinearProgram.Answer infeasible(int r) {
        Ratio[] multipliers = zeros(rows);
        setMultiplier(multipliers, basic[r], denominator, denominator);
        for (int j = 0; j < unknowns; j++) {
            setMultiplier(multipliers, nonbasic[j], tableau[r][j].negate(), denominator);
        }
        return new LinearProgram.Answer.Infeasible(List.of(multipliers));
    }

    /** A multiplier of a scaled row, turned into one of the row as it was given. */
    private void setMultiplier(Ratio[] multipliers, int variable, BigInteger numerator, BigInteger under) {
        if (variable >= unknowns) {
            int k = variable - unknowns;
            multipliers[k] = Ratio.of(numerator.multiply(rowScale[k]), under);
        }
    }

    private static Ratio[] zeros(int count) {
        Ratio[] zeros = new Ratio[count];
        Arrays.fill(zeros, Ratio.ZERO);
        return zeros;
    }
}
