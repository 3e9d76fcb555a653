package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The substances that a limit counts.
 *
 * <p>Example: {@code SubstanceGroup.of("Phenoxyethanol")}, one substance of that name.
 *
 * <p>Immutable and thread-safe.
 */
public final class SubstanceGroup implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String name;
    private final List<GroupMember> members;

    private SubstanceGroup(String name, List<GroupMember> members) {
        this.name = name;
        this.members = List.copyOf(members);
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
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the group");
        }
        if (Objects.requireNonNull(members, "members").isEmpty()) {
            throw new IllegalArgumentException("members is empty: a group needs at least one substance");
        }
        return new SubstanceGroup(name, members);
    }

    /**
     * The name.
     *
     * @return the name of the entry or of the group
     */
    public String name() {
        return name;
    }

    /**
     * The substances.
     *
     * @return an unmodifiable list of at least one
     */
    public List<GroupMember> members() {
        return members;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SubstanceGroup that && name.equals(that.name) && members.equals(that.members);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, members);
    }

    @Override
    public String toString() {
        return name;
    }
}
