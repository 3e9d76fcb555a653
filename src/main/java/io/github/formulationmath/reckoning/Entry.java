package io.github.formulationmath.reckoning;

/** One thing a working says, in the order in which it was worked: a step, a comparison, or a remark. */
public sealed interface Entry permits Step, Decision, Note {}
