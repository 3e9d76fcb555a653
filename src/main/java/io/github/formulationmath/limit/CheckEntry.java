package io.github.formulationmath.limit;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a checker knows of one substance.
 *
 * @param hits what it counts towards
 * @param outside limits of entries that do not cover the product at all
 * @param otherPurpose limits that do not count it because it serves another purpose
 * @param byCas what it counts towards if a CAS number says which form it is; only where that makes a difference
 * @param casNumbers all CAS numbers the table has for the name
 */
record CheckEntry(
        List<Hit> hits,
        List<UsageLimit> outside,
        List<UsageLimit> otherPurpose,
        Map<String, CheckEntry> byCas,
        Set<String> casNumbers) {}
