/** Serialized forms across JVMs of different releases. */
package io.github.formulationmath.serial;
