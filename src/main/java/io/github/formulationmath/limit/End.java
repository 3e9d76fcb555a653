package io.github.formulationmath.limit;

/** Which end of what may be, where contents are known only in part. */
enum End {
    /** What is known alone. */
    LOWEST,
    /** What is known, and all the rest at the greatest content possible. */
    HIGHEST
}
