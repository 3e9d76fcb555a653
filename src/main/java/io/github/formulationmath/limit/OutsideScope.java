package io.github.formulationmath.limit;

/** What an entry says of products that none of its limits cover. */
public enum OutsideScope {
    /** The entry allows the substance only where its limits apply. */
    NOT_ALLOWED("not_allowed"),
    /** The printed entry has to be read. */
    READ_ENTRY("read_entry"),
    /** Nothing more. */
    NONE("none");

    private final String code;

    OutsideScope(String code) {
        this.code = code;
    }

    /**
     * The word for it in a table of limits.
     *
     * @return for example {@code not_allowed}
     */
    public String code() {
        return code;
    }
}
