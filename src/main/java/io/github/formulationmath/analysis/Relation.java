package io.github.formulationmath.analysis;

import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.List;

/** What is measured, as a function of its inputs. */
interface Relation {

    /** The question that it answers. */
    Phrase question();

    /** The inputs that may be uncertain; equal ones are one. */
    List<Input> inputs();

    /** The formula, in sums, differences, products and quotients alone. */
    <V> V in(Reckoning<V> r);
}
