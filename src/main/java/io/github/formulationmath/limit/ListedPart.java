package io.github.formulationmath.limit;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.quantity.MassFraction;

/** What one line brings in of a listed ingredient. */
record ListedPart(FormulaLine line, MassFraction strength) {}
