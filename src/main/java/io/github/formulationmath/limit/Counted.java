package io.github.formulationmath.limit;

/**
 * A limit counts a member of its group.
 *
 * @param limit the limit
 * @param member the member, the strictest of several forms unless a CAS number says which
 * @param conversion what one gram of the member counts as, if no supplier tells more
 * @param formGuessed whether there were several forms and nothing said which
 */
record Counted(UsageLimit limit, GroupMember member, Conversion conversion, boolean formGuessed) {}
