package io.github.formulationmath.limit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Under which name each member of a group is counted where every substance counts alone: members that share a name, a
 * synonym, a CAS number or the name to be counted as are one substance, and the first of them names it.
 */
final class CountedNames {

    /** With it begins no key of a substance. */
    private static final String COUNTED_AS = "\n";

    private final Map<String, String> nameByKey = new HashMap<>();

    CountedNames(List<GroupMember> members) {
        members.stream().filter(GroupMember::isCounted).forEach(this::add);
    }

    private void add(GroupMember member) {
        List<String> keys = keys(member);
        List<String> found = keys.stream()
                .map(nameByKey::get)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        String name = found.isEmpty() ? member.countsAs() : found.get(0);
        if (found.size() > 1) {
            nameByKey.replaceAll((key, earlier) -> found.contains(earlier) ? name : earlier);
        }
        keys.forEach(key -> nameByKey.put(key, name));
    }

    private static List<String> keys(GroupMember member) {
        List<String> keys = new ArrayList<>(member.substance().keys());
        keys.add(COUNTED_AS + LimitNames.normalise(member.countsAs()));
        return keys;
    }

    String of(GroupMember member) {
        return nameByKey.getOrDefault(COUNTED_AS + LimitNames.normalise(member.countsAs()), member.countsAs());
    }
}
