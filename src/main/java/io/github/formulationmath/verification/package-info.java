/**
 * Somebody else's figures against ours: does each agree, agree as rounded, or disagree; does the total close; are limits
 * kept by their figures; and which one known slip would explain them all.
 *
 * <p>Reading order: {@link io.github.formulationmath.verification.Figure}, {@link io.github.formulationmath.verification.Claim}, {@link
 * io.github.formulationmath.verification.Verification}, {@link io.github.formulationmath.verification.Diagnosis}, {@link
 * io.github.formulationmath.verification.Slip}.
 *
 * <p>May depend on every chapter below {@code sheet}.
 */
@NullMarked
package io.github.formulationmath.verification;

import org.jspecify.annotations.NullMarked;
