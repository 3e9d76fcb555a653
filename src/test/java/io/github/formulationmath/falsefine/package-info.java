/**
 * Tries to make the library say "fine" falsely. A generator builds something wrong (a limit exceeded, a claim that is no
 * rounding, a cap broken) from integers, proves it wrong here by an inequality between integers, and only then asks; the
 * answer "fine" is a failure. The other way round nothing that is proved right may be accused.
 *
 * <p>Nothing here decides what is right with the arithmetic of the library: it is called through its public API with
 * texts, and its answers are read back as whole numbers. What is asked goes through a {@link
 * io.github.formulationmath.falsefine.Judge}, so that judges with known defects can stand in for the library and show
 * that each would be found.
 */
package io.github.formulationmath.falsefine;
