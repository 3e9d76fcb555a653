package io.github.formulationmath.architecture;

import com.tngtech.archunit.ArchConfiguration;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaCodeUnitAccess;
import com.tngtech.archunit.core.domain.JavaFieldAccess;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaParameterizedType;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.domain.ReferencedClassObject;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import io.github.formulationmath.support.ValueContract;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Which rooms the compiled tests use. A test stands in the highest room that it uses: what it leans on lies below, and every
 * test method asks its own room, be it through helpers of the test tree, which are followed.
 *
 * <p>What this cannot see: whether a method that asks its room asserts on it or only passes through; what a helper that is
 * called by its name in a text does ({@code @MethodSource}); rooms that hide behind a helper outside the rooms.
 */
final class TestRooms {

    /** The room of what several rooms promise together. */
    static final String TOGETHER = "promise";

    private static final Set<String> TESTS =
            Set.of("Test", "ParameterizedTest", "RepeatedTest", "TestFactory", "Property", "Example");

    private final JavaClasses tests;
    private final Function<JavaClass, String> roomOf;
    private final Map<String, Set<String>> below = new HashMap<>();

    /** The classes of the test tree, and for each the room, or other package, that it stands in. */
    TestRooms(JavaClasses tests, Function<JavaClass, String> roomOf) {
        this.tests = tests;
        this.roomOf = roomOf;
    }

    /** The tests as they were compiled, without the classes of the library around them. */
    static JavaClasses compiled() {
        return ArchConfiguration.withThreadLocalScope(configuration -> {
            configuration.setResolveMissingDependenciesFromClassPath(false);
            return new ClassFileImporter().importPath(place());
        });
    }

    private static Path place() {
        try {
            return Path.of(TestRooms.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The package of a class below the root, of an array that of its elements; an empty text for a class of others. */
    static String packageOf(JavaClass type) {
        String name = elementOf(type);
        return Ladder.chapterOf(name.substring(0, Math.max(0, name.lastIndexOf('.'))))
                .orElse("");
    }

    /** By its name, for of a class that was not imported nothing else is known. */
    private static String elementOf(JavaClass type) {
        return type.getName().replaceFirst("^\\[+L?", "").replaceFirst("(\\[])*;?$", "");
    }

    /** Every class that leans on a room above its own, with the types it leans on. */
    List<String> leaningUpwards() {
        Map<String, Set<String>> found = new TreeMap<>();
        standing().forEach(type -> {
            String room = roomOf.apply(type);
            for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                JavaClass target = dependency.getTargetClass();
                String other = roomOf.apply(target);
                if (Ladder.isChapter(other) && !below(room).contains(other)) {
                    found.computeIfAbsent(place(type), any -> new TreeSet<>())
                            .add(other + "." + target.getSimpleName());
                }
            }
        });
        return found.entrySet().stream()
                .map(each -> each.getKey() + " leans on what lies above: " + String.join(", ", each.getValue()))
                .toList();
    }

    /** Every test method that asks other rooms and not its own. */
    List<String> askingOthers() {
        List<String> found = new ArrayList<>();
        standing().forEach(type -> {
            for (JavaMethod method : type.getMethods()) {
                Set<String> asked = isTest(method) ? roomsAskedBy(method) : Set.of();
                if (!asked.isEmpty() && !asked.contains(roomOf.apply(type))) {
                    found.add(place(type) + "." + method.getName() + " asks only " + String.join(", ", asked));
                }
            }
        });
        return found.stream().sorted().toList();
    }

    /** Every contract of a value that stands in another room than the value. */
    List<String> contractsOfOthers() {
        List<String> found = new ArrayList<>();
        standing()
                .forEach(type -> valuesOf(type)
                        .filter(value -> !roomOf.apply(value).isEmpty()
                                && !roomOf.apply(value).equals(roomOf.apply(type)))
                        .forEach(value -> found.add(place(type) + " holds the contract of " + roomOf.apply(value) + "."
                                + value.getSimpleName())));
        return found.stream().sorted().toList();
    }

    private static Stream<JavaClass> valuesOf(JavaClass type) {
        return type.getInterfaces().stream()
                .filter(each -> each.toErasure().isEquivalentTo(ValueContract.class))
                .filter(JavaParameterizedType.class::isInstance)
                .flatMap(each -> ((JavaParameterizedType) each).getActualTypeArguments().stream())
                .map(JavaType::toErasure);
    }

    /** Every class of its own that is named for a public type of another room, and for none of its own. */
    List<String> namedForOthers(Collection<Class<?>> library) {
        Map<String, Set<String>> rooms = new HashMap<>();
        library.stream()
                .filter(type -> java.lang.reflect.Modifier.isPublic(type.getModifiers()) && !type.isMemberClass())
                .forEach(type -> rooms.computeIfAbsent(type.getSimpleName(), any -> new TreeSet<>())
                        .add(Ladder.chapterOf(type.getPackageName()).orElse("")));
        return standing()
                .filter(type -> outermost(type).equals(type))
                .filter(type -> {
                    Set<String> named = rooms.getOrDefault(subject(type.getSimpleName()), Set.of());
                    return !named.isEmpty() && !named.contains(roomOf.apply(type));
                })
                .map(type -> place(type) + " is named for a type of "
                        + String.join(", ", rooms.get(subject(type.getSimpleName()))))
                .sorted()
                .toList();
    }

    private static String subject(String test) {
        return test.replaceFirst("(Contract|Properties|Reference|Oracle)?Test$", "");
    }

    /** Every class among what rooms promise together that one room could ask alone: that room may use all the others. */
    List<String> oneRoomCouldAskAlone() {
        Map<String, Set<String>> asked = new TreeMap<>();
        tests.stream()
                .filter(type -> roomOf.apply(type).equals(TOGETHER))
                .forEach(type -> type.getDirectDependenciesFromSelf().stream()
                        .map(each -> roomOf.apply(each.getTargetClass()))
                        .filter(Ladder::isChapter)
                        .forEach(room -> asked.computeIfAbsent(place(type), any -> new TreeSet<>())
                                .add(room)));
        List<String> found = new ArrayList<>();
        asked.forEach((test, rooms) -> rooms.stream()
                .filter(room -> rooms.stream().allMatch(other -> Ladder.allows(room, other)))
                .forEach(room -> found.add(test + " belongs to " + room)));
        return found;
    }

    private Stream<JavaClass> standing() {
        return tests.stream().filter(type -> Ladder.isChapter(roomOf.apply(type)));
    }

    private String place(JavaClass type) {
        return roomOf.apply(type) + "." + outermost(type).getSimpleName();
    }

    /** The outermost class around it that stands in the same room. */
    private JavaClass outermost(JavaClass type) {
        return type.getEnclosingClass()
                .filter(around -> roomOf.apply(around).equals(roomOf.apply(type)))
                .map(this::outermost)
                .orElse(type);
    }

    private static boolean isTest(JavaMethod method) {
        return method.getAnnotations().stream()
                .anyMatch(each -> TESTS.contains(each.getRawType().getSimpleName()));
    }

    /** A room and all below it. */
    private Set<String> below(String room) {
        Set<String> known = below.get(room);
        if (known == null) {
            known = new TreeSet<>(Set.of(room));
            for (String lower : Ladder.lowerThan(room)) {
                known.addAll(below(lower));
            }
            below.put(room, known);
        }
        return known;
    }

    private Set<String> roomsAskedBy(JavaMethod method) {
        Set<String> rooms = new TreeSet<>();
        follow(method, rooms, new HashSet<>());
        return rooms;
    }

    /** What a test calls, makes and reads; a fixture counts by its type, or, if that is nobody's, by what made it. */
    private void follow(JavaCodeUnit unit, Set<String> rooms, Set<JavaCodeUnit> seen) {
        if (!seen.add(unit)) {
            return;
        }
        List<JavaClass> types = new ArrayList<>(unit.getRawParameterTypes());
        types.add(unit.getRawReturnType());
        for (JavaAccess<?> access : unit.getAccessesFromSelf()) {
            types.add(access.getTargetOwner());
            if (access instanceof JavaMethodCall call) {
                types.add(call.getTarget().getRawReturnType());
                types.addAll(call.getTarget().getRawParameterTypes());
            }
            if (access instanceof JavaFieldAccess field) {
                types.add(field.getTarget().getRawType());
                if (!isOfTheLibrary(field.getTarget().getRawType())) {
                    makersOf(access.getTargetOwner()).forEach(maker -> follow(maker, rooms, seen));
                }
            }
            if (access instanceof JavaCodeUnitAccess<?> call && isTest(access.getTargetOwner())) {
                call.getTarget().resolveMember().ifPresent(helper -> follow((JavaCodeUnit) helper, rooms, seen));
            }
        }
        unit.getReferencedClassObjects().stream()
                .map(ReferencedClassObject::getRawType)
                .forEach(types::add);
        types.stream().filter(this::isOfTheLibrary).map(TestRooms::packageOf).forEach(rooms::add);
    }

    private List<JavaCodeUnit> makersOf(JavaClass owner) {
        List<JavaCodeUnit> makers = new ArrayList<>();
        if (isTest(owner)) {
            owner.getStaticInitializer().ifPresent(makers::add);
            makers.addAll(owner.getConstructors());
        }
        return makers;
    }

    private boolean isTest(JavaClass type) {
        return tests.contain(elementOf(type));
    }

    private boolean isOfTheLibrary(JavaClass type) {
        return !isTest(type) && Ladder.isChapter(packageOf(type));
    }
}
