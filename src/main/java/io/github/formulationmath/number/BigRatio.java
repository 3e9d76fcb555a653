package io.github.formulationmath.number;

import java.io.Serializable;
import java.math.BigInteger;

/** Numerator and denominator of a ratio that does not fit 64 bits, in lowest terms, denominator positive. */
record BigRatio(BigInteger num, BigInteger den) implements Serializable {}
