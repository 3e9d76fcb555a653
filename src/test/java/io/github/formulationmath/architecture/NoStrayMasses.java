package io.github.formulationmath.architecture;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.MadeMasses;
import java.lang.reflect.Executable;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds the methods through which the masses of one formula could be handed in beside another: they take a formula (or a
 * batch, or a plan of one; or are a member of it) and masses that do not say of which line they are, together, in a
 * collection, a map, an array, a stream or a function.
 */
final class NoStrayMasses {

    private static final Set<Class<?>> FORMULAS = Set.of(Formula.class, Batch.class, WeighingPlan.class);
    private static final Set<Class<?>> MASSES = Set.of(
            Ratio.class,
            Amount.class,
            MassFraction.class,
            Addition.class,
            AdditionError.class,
            Number.class,
            double.class,
            long.class,
            int.class);

    private NoStrayMasses() {}

    static SortedSet<String> in(Collection<Class<?>> types) {
        SortedSet<String> found = new TreeSet<>();
        types.stream()
                .filter(type -> Modifier.isPublic(type.getModifiers()))
                .flatMap(type -> Stream.<Executable>concat(
                        Arrays.stream(type.getMethods()), Arrays.stream(type.getConstructors())))
                .filter(member -> !member.isSynthetic())
                .filter(NoStrayMasses::takesBoth)
                // Makes another formula of the masses it is told line by line, and checks none against this one.
                .filter(member -> !member.getName().equals("withMasses"))
                .forEach(member -> found.add(member.toGenericString()));
        return found;
    }

    private static boolean takesBoth(Executable member) {
        List<Type> parameters = List.of(member.getGenericParameterTypes());
        boolean ofFormula = FORMULAS.contains(member.getDeclaringClass()) && !Modifier.isStatic(member.getModifiers());
        return (ofFormula || parameters.stream().anyMatch(NoStrayMasses::speaksOfAFormula))
                && parameters.stream().anyMatch(NoStrayMasses::isManyMasses);
    }

    private static boolean speaksOfAFormula(Type type) {
        return type instanceof Class<?> plain && FORMULAS.contains(plain);
    }

    private static boolean isManyMasses(Type type) {
        if (type instanceof Class<?> plain) {
            return plain == MadeMasses.class || plain.isArray() && isMass(plain.getComponentType());
        }
        if (type instanceof GenericArrayType array) {
            return isMass(array.getGenericComponentType());
        }
        return type instanceof ParameterizedType many
                && isContainer((Class<?>) many.getRawType())
                && Arrays.stream(many.getActualTypeArguments())
                        .anyMatch(argument -> isMass(argument) || isManyMasses(argument));
    }

    private static boolean isContainer(Class<?> raw) {
        return Iterable.class.isAssignableFrom(raw)
                || Map.class.isAssignableFrom(raw)
                || java.util.stream.BaseStream.class.isAssignableFrom(raw)
                || java.util.Iterator.class.isAssignableFrom(raw)
                || raw.getPackageName().equals("java.util.function");
    }

    private static boolean isMass(Type type) {
        if (type instanceof WildcardType wild) {
            return Stream.concat(Arrays.stream(wild.getUpperBounds()), Arrays.stream(wild.getLowerBounds()))
                    .anyMatch(NoStrayMasses::isMass);
        }
        if (type instanceof ParameterizedType generic) {
            return isMass(generic.getRawType());
        }
        return type instanceof Class<?> plain && MASSES.stream().anyMatch(mass -> mass.isAssignableFrom(plain));
    }
}
