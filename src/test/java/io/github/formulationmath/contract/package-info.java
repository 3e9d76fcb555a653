/** What every public type keeps, tried on all of them at once. */
package io.github.formulationmath.contract;
