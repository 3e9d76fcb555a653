/**
 * A second evaluator that reads printed arithmetic as text and works it out with exact fractions. It shares no code with
 * the library: what the library prints is held against what a careful reader with pencil and paper would find.
 */
package io.github.formulationmath.oracle;
