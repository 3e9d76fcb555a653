/** Java that stands in texts (Javadoc, tables of refusals): cut out, compiled in one go and run. */
package io.github.formulationmath.snippet;
