package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.Objects;

/** One thing a working says, in the order in which it was worked: a step, a comparison, or a remark. */
public sealed interface Entry permits Step, Entry.Decision, Entry.Note {

    /**
     * A comparison that decided something.
     *
     * @param left the term on the left
     * @param comparison the relation
     * @param right the term on the right
     * @param holds whether it holds
     */
    record Decision(Term left, Comparison comparison, Term right, boolean holds) implements Entry {

        /**
         * Checks the terms.
         *
         * @param left the term on the left
         * @param comparison the relation
         * @param right the term on the right
         * @param holds whether it holds
         */
        public Decision {
            Objects.requireNonNull(left, "left");
            Objects.requireNonNull(comparison, "comparison");
            Objects.requireNonNull(right, "right");
        }
    }

    /**
     * An assumption or a remark.
     *
     * @param phrase the words
     */
    record Note(Phrase phrase) implements Entry {

        /**
         * Checks the words.
         *
         * @param phrase the words
         */
        public Note {
            Objects.requireNonNull(phrase, "phrase");
        }
    }

    /** The relations between two numbers that decide something. */
    enum Comparison {
        /** a &lt; b. */
        LESS("<"),
        /** a ≤ b. */
        AT_MOST("≤"),
        /** a = b. */
        EQUAL("="),
        /** a ≥ b. */
        AT_LEAST("≥"),
        /** a &gt; b. */
        GREATER(">");

        private final String sign;

        Comparison(String sign) {
            this.sign = sign;
        }

        /**
         * The sign as printed.
         *
         * @return one character
         */
        public String sign() {
            return sign;
        }

        /**
         * Whether the relation holds.
         *
         * @param left the number on the left
         * @param right the number on the right
         * @return true if it holds, decided exactly
         */
        public boolean holds(Ratio left, Ratio right) {
            int order = Objects.requireNonNull(left, "left").compareTo(right);
            return switch (this) {
                case LESS -> order < 0;
                case AT_MOST -> order <= 0;
                case EQUAL -> order == 0;
                case AT_LEAST -> order >= 0;
                case GREATER -> order > 0;
            };
        }
    }
}
