/** The pictures of the documentation, drawn from the library's own results. */
package io.github.formulationmath.figures;
