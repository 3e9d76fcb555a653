package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * The substances that a limit counts.
 *
 * <p>Example: {@code SubstanceGroup.of("Phenoxyethanol")}, one substance of that name.
 *
 * <p>Immutable and thread-safe.
 *
 * @param name the name of the entry or of the group
 * @param members the substances, at least one
 */
public record SubstanceGroup(String name, List<GroupMember> members) implements Serializable {

    /**
     * Copies.
     *
     * @param name the name of the group
     * @param members the substances, at least one
     * @throws IllegalArgumentException if the name is blank or there is no member
     */
    public SubstanceGroup {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the group");
        }
        if (Objects.requireNonNull(members, "members").isEmpty()) {
            throw new IllegalArgumentException("members is empty: a group needs at least one substance");
        }
        members = List.copyOf(members);
    }

    /**
     * One substance.
     *
     * @param inciName its INCI name
     * @return the group
     * @throws IllegalArgumentException if the name is blank
     */
    public static SubstanceGroup of(String inciName) {
        return of(inciName, List.of(GroupMember.of(Substance.of(inciName))));
    }

    /**
     * Several substances.
     *
     * @param name the name of the group
     * @param members the substances, at least one
     * @return the group
     * @throws IllegalArgumentException if the name is blank or there is no member
     */
    public static SubstanceGroup of(String name, List<GroupMember> members) {
        return new SubstanceGroup(name, members);
    }

    @Override
    public String toString() {
        return name;
    }
}
