package io.github.formulationmath.soap;

import io.github.formulationmath.formula.FormulaLine;
import java.util.List;
import java.util.Optional;

/** Lines of which it is said what they are; the formula they stand in is made only if somebody asks for it. */
interface Declared {

    /** How many lines there are. */
    int size();

    /** What a line is, counted from 0, if that is said. */
    Optional<SoapRole> role(int line);

    /** The lines of which nothing is said. */
    List<FormulaLine> undeclared();

    /** The same with its formula. */
    Soap soap();

    /** A soap that has its formula already. */
    record Whole(Soap soap) implements Declared {

        @Override
        public int size() {
            return soap.formula().lines().size();
        }

        @Override
        public Optional<SoapRole> role(int line) {
            return soap.role(line);
        }

        @Override
        public List<FormulaLine> undeclared() {
            return soap.undeclared();
        }
    }

    /** A lye calculation, which declares all its lines. */
    record Calculated(LyeCalculation lye, List<SoapRole> roles) implements Declared {

        public Calculated {
            roles = List.copyOf(roles);
        }

        @Override
        public int size() {
            return roles.size();
        }

        @Override
        public Optional<SoapRole> role(int line) {
            return Optional.of(roles.get(line));
        }

        @Override
        public List<FormulaLine> undeclared() {
            return List.of();
        }

        @Override
        public Soap soap() {
            return lye.soap();
        }
    }
}
