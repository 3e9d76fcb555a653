package io.github.formulationmath.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.NullMarked;

/** The checks of the architecture test that ArchUnit does not bring along. */
final class Conditions {

    private Conditions() {}

    static ArchCondition<JavaClass> dependOnLowerChaptersOnly() {
        return condition("depend on lower chapters only", (type, events) -> {
            String from = Ladder.chapterOf(type.getPackageName()).orElse("");
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                Ladder.chapterOf(dependency
                                .getTargetClass()
                                .getBaseComponentType()
                                .getPackageName())
                        .filter(to -> !Ladder.allows(from, to))
                        .ifPresent(
                                to -> violated(events, type, from + " -> " + to + ": " + dependency.getDescription()));
            }
        });
    }

    static ArchCondition<JavaClass> liveInAChapter() {
        return condition("live in a chapter of the ladder", (type, events) -> {
            if (!Ladder.chapterOf(type.getPackageName())
                    .filter(Ladder::isChapter)
                    .isPresent()) {
                violated(events, type, type.getName() + " is in no chapter of the ladder");
            }
        });
    }

    static ArchCondition<JavaClass> liveInANullMarkedPackage() {
        return condition("live in a package marked @NullMarked", (type, events) -> {
            if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
                violated(events, type, "the package of " + type.getName() + " is not @NullMarked");
            }
        });
    }

    /** No type of the named packages in a signature, supertype or field that a caller can see. */
    static ArchCondition<JavaClass> showNothingOf(String... packages) {
        return condition("show nothing of " + String.join(", ", packages), (type, events) -> {
            if (!isVisible(type)) {
                return;
            }
            List<JavaType> shown = new ArrayList<>(type.getInterfaces());
            type.getSuperclass().ifPresent(shown::add);
            type.getMembers().stream()
                    .filter(member -> isVisible(member.getModifiers()))
                    .forEach(member -> shown.addAll(typesOf(member)));
            shown.stream()
                    .flatMap(seen -> seen.getAllInvolvedRawTypes().stream())
                    .map(JavaClass::getName)
                    .filter(name -> List.of(packages).stream().anyMatch(prefix -> name.startsWith(prefix + ".")))
                    .distinct()
                    .forEach(name -> violated(events, type, type.getName() + " shows " + name));
        });
    }

    static ArchCondition<JavaField> notBeSharedArrays() {
        return new ArchCondition<>("not be arrays that others can change") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                boolean shared = field.getRawType().isArray()
                        && !field.getModifiers().contains(JavaModifier.PRIVATE)
                        && !field.getModifiers().contains(JavaModifier.SYNTHETIC);
                if (shared) {
                    events.add(SimpleConditionEvent.violated(field, field.getFullName() + " is a shared array"));
                }
            }
        };
    }

    static ArchCondition<JavaClass> beFinalOrSealed() {
        return condition("be final, sealed, an interface or an enum", (type, events) -> {
            boolean closed = type.getModifiers().contains(JavaModifier.FINAL)
                    || type.isInterface()
                    || type.isEnum()
                    || type.reflect().isSealed();
            if (!closed) {
                violated(events, type, type.getName() + " can be subclassed by anybody");
            }
        });
    }

    private static List<JavaType> typesOf(JavaMember member) {
        List<JavaType> types = new ArrayList<>();
        if (member instanceof JavaField field) {
            types.add(field.getType());
        } else if (member instanceof JavaCodeUnit unit) {
            types.add(unit.getReturnType());
            types.addAll(unit.getParameterTypes());
            types.addAll(unit.getExceptionTypes());
        }
        return types;
    }

    private static boolean isVisible(JavaClass type) {
        return isVisible(type.getModifiers())
                && type.getEnclosingClass().map(Conditions::isVisible).orElse(true);
    }

    private static boolean isVisible(java.util.Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    private static ArchCondition<JavaClass> condition(String text, BiConsumer<JavaClass, ConditionEvents> check) {
        return new ArchCondition<>(text) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                check.accept(type, events);
            }
        };
    }

    private static void violated(ConditionEvents events, JavaClass type, String message) {
        events.add(SimpleConditionEvent.violated(type, message));
    }

    /**
     * Lists, maps and sets are taken for serializable, and so are dimensions, of which there are no values. The two
     * interfaces of the workings are left to the tests, and so is what the ends of an interval are: whoever implements them
     * decides.
     */
    static ArchCondition<JavaField> beSerializable() {
        return new ArchCondition<>("be serializable") {
            @Override
            public void check(JavaField field, ConditionEvents events) {
                field.getType().getAllInvolvedRawTypes().stream()
                        .filter(type -> !mayBeSerializable(type))
                        .forEach(type -> events.add(SimpleConditionEvent.violated(
                                field,
                                field.getFullName() + " holds " + type.getName() + ", which is not serializable")));
            }
        };
    }

    private static boolean mayBeSerializable(JavaClass type) {
        return type.isPrimitive()
                || type.isArray()
                || type.isAssignableTo(java.io.Serializable.class)
                || type.getPackageName().startsWith("javax.measure")
                || type.getPackageName().equals("java.util") && type.isInterface()
                || type.isEquivalentTo(Comparable.class)
                || type.isEquivalentTo(Explained.class)
                || type.isEquivalentTo(Subject.class);
    }
}
