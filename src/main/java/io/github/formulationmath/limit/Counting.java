package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * That a limit counts a substance, and how.
 *
 * @param limit the limit
 * @param counted what is counted together, in words
 * @param key the same as a key: what has it goes into one sum
 * @param member the member of the limit's group that the substance is
 * @param conversion how it is converted into what the limit counts
 * @param applicability whether the limit is for the product; it applies as far as only the table is asked
 * @param own the limit of the substance alone, by which a sum of ratios divides
 * @param formGuessed whether the entry has other forms of the name too, and the strictest was taken
 */
record Counting(
        UsageLimit limit,
        String counted,
        String key,
        GroupMember member,
        Conversion conversion,
        Applicability applicability,
        @Nullable UsageLimit own,
        boolean formGuessed) {

    /** Before the names under which members are counted, so that none is taken for the name of a substance. */
    private static final String COUNTED_AS = "\n";

    /** Every member that a limit counts, as the table alone has it. */
    static List<Counting> of(UsageLimit limit) {
        List<GroupMember> members = limit.group().members();
        List<Conversion> conversions = Conversion.ofMembers(limit);
        boolean alone = limit.sumRule() == SumRule.SINGLE;
        Map<String, String> names = alone ? countedNames(members) : Map.of();
        List<Counting> all = new ArrayList<>(members.size());
        for (int i = 0; i < conversions.size(); i++) {
            GroupMember member = members.get(i);
            if (!member.isAllowed()) {
                all.add(new Counting(
                                limit,
                                member.countsAs(),
                                limit.id(),
                                member,
                                Conversion.NONE,
                                Applicability.APPLIES,
                                null,
                                false)
                        .forbidden());
            } else if (member.isCounted()) {
                String name = alone
                        ? names.getOrDefault(countedAs(member), member.countsAs())
                        : limit.group().name();
                String key = limit.id() + "\n" + (alone ? SubstanceName.normalise(name) : "");
                all.add(new Counting(limit, name, key, member, conversions.get(i), Applicability.APPLIES, null, false));
            }
        }
        return all;
    }

    /**
     * Under which name each member is counted where each substance counts alone. Members that share a name, a number or what
     * they count as are one substance, directly or through others.
     */
    private static Map<String, String> countedNames(List<GroupMember> members) {
        Map<String, String> names = new HashMap<>();
        for (GroupMember member : members) {
            if (!member.isCounted()) {
                continue;
            }
            List<String> keys = new ArrayList<>(member.substance().keys());
            keys.add(countedAs(member));
            Set<String> found = new LinkedHashSet<>();
            for (String key : keys) {
                if (names.containsKey(key)) {
                    found.add(names.getOrDefault(key, ""));
                }
            }
            String name = found.isEmpty() ? member.countsAs() : found.iterator().next();
            if (found.size() > 1) {
                names.replaceAll((key, earlier) -> found.contains(earlier) ? name : earlier);
            }
            for (String key : keys) {
                names.put(key, name);
            }
        }
        return names;
    }

    private static String countedAs(GroupMember member) {
        return COUNTED_AS + SubstanceName.normalise(member.countsAs());
    }

    /** Whether another is made of the very same things; looked at in every check, so that it compares no texts of entries. */
    @SuppressWarnings("ReferenceEquality") // What differs without being another only costs a second sum.
    boolean isSameAs(Counting other) {
        return limit == other.limit
                && member == other.member
                && conversion == other.conversion
                && own == other.own
                && applicability == other.applicability
                && formGuessed == other.formGuessed
                && key.equals(other.key)
                && counted.equals(other.counted);
    }

    /** The same in a product for which the limit is, or may be. */
    Counting in(Applicability product, Conversion stated, @Nullable UsageLimit ownLimit) {
        return new Counting(limit, counted, key, member, stated, product, ownLimit, formGuessed);
    }

    /** The same in a product in which the entry does not allow the substance. */
    Counting forbidden() {
        String name = member.countsAs();
        String place = "forbidden\n" + limit.id() + "\n" + SubstanceName.normalise(name);
        return new Counting(
                limit.allowingNothing(), name, place, member, Conversion.NONE, Applicability.OUT_OF_SCOPE, null, false);
    }

    /** The same in a blend that does not say how much of it is this substance. */
    Counting inBlend() {
        return new Counting(
                limit,
                counted,
                key,
                member,
                new Conversion.Unstated(conversion.factor()),
                applicability,
                own,
                formGuessed);
    }

    /** Whether the entry does not allow the substance where the limit is for the product. */
    boolean isForbidden() {
        return applicability == Applicability.OUT_OF_SCOPE;
    }

    boolean isNamed(String name) {
        Substance substance = member.substance();
        return substance.keys().contains(name) && !isNumbered(name);
    }

    boolean isNamedOneOf(List<String> keys) {
        for (String key : keys) {
            if (isNamed(key)) {
                return true;
            }
        }
        return false;
    }

    boolean isNumberedOneOf(List<String> keys) {
        for (String key : keys) {
            if (isNumbered(key)) {
                return true;
            }
        }
        return false;
    }

    boolean isNumbered(String cas) {
        return member.substance().cas().equals(Optional.of(cas));
    }

    boolean isAssessable() {
        return conversion.isKnown() && hasDivisor();
    }

    /** False for a sum of ratios to which the substance has no limit of its own to be divided by. */
    boolean hasDivisor() {
        return own != null || limit.sumRule() != SumRule.SUM_OF_RATIOS;
    }

    /** What one part of the substance weighs in the sum. */
    Ratio weight() {
        Ratio factor = conversion.factor();
        return own == null || own.share().fraction().isZero()
                ? factor
                : factor.dividedBy(own.share().fraction());
    }

    /** The one that stands more against the formula; what cannot be assessed stands before what can. */
    static Counting stricterOf(Counting one, Counting other) {
        if (!one.isAssessable() || !other.isAssessable()) {
            return one.isAssessable() ? other : one;
        }
        int more = one.weight().compareTo(other.weight());
        return (one.limit.kind().isUpper() ? more >= 0 : more <= 0) ? one : other;
    }

    /** Which form of one limit is meant: the one of the number, else the strictest. */
    static Counting strictestOf(List<Counting> forms, String cas) {
        if (forms.size() == 1) {
            return forms.get(0);
        }
        List<Counting> exact =
                forms.stream().filter(form -> form.isNumbered(cas)).toList();
        List<Counting> left = exact.isEmpty() ? forms : exact;
        if (left.size() == 1) {
            return left.get(0);
        }
        Comparator<Counting> byShare = Comparator.comparing(form -> form.conversion.factor());
        Counting strictest = left.stream()
                .filter(form -> form.conversion.isKnown())
                .max(left.get(0).limit.kind().isUpper() ? byShare : byShare.reversed())
                .orElse(left.get(0));
        boolean differ =
                left.stream().map(form -> form.member.form()).distinct().count() > 1
                        && strictest.limit.basis().isReference();
        return new Counting(
                strictest.limit,
                strictest.counted,
                strictest.key,
                strictest.member,
                strictest.conversion,
                strictest.applicability,
                strictest.own,
                differ);
    }
}
