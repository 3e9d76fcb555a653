package io.github.formulationmath.limit;

/** How the members of a group count together. */
public enum SumRule {
    /** Each member alone; members that count as the same substance (an ester and its salts) are added. */
    SINGLE("single"),
    /** All members added, on the stated basis. */
    SUM("sum"),
    /**
     * Perhaps all members added: the text that says how they count together was not seen. What keeps the limit even so is
     * within it; what does not cannot be assessed before somebody reads that text.
     */
    PERHAPS_SUM("perhaps_sum"),
    /** Every member's share divided by its own single limit, added; the sum must not pass 1. */
    SUM_OF_RATIOS("sum_of_ratios");

    private final String code;

    SumRule(String code) {
        this.code = code;
    }

    /**
     * The word for it in a table of limits.
     *
     * @return for example {@code sum}
     */
    public String code() {
        return code;
    }
}
