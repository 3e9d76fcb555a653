/** What carries values between processes, and whether they arrive whole. */
package io.github.formulationmath.carrier;
