/** The documentation, executed: code blocks are compiled and run, printed outputs compared, links followed. */
package io.github.formulationmath.guide;
