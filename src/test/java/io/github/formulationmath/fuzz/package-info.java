/** Hostile texts for everything that reads text: a replay of a kept corpus, and the targets of the coverage-guided fuzzer. */
package io.github.formulationmath.fuzz;
