/** Bad input, and what the library says to it. */
package io.github.formulationmath.refusal;
