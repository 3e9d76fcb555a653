/** Help for the tests of all chapters. */
package io.github.formulationmath.support;
