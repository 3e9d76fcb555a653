package io.github.formulationmath.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/**
 * The packages are chapters and form a ladder; see {@link Ladder} for the edges. Everything else that binds all of the
 * main code and that the compiler cannot see is here too.
 */
@AnalyzeClasses(packages = Ladder.ROOT, importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule packages_depend_downwards_only = classes()
            .should(Conditions.dependOnLowerChaptersOnly())
            .because("an edge that the ladder does not list is a mistake until the ladder says otherwise");

    @ArchTest
    static final ArchRule packages_have_no_cycles =
            slices().matching(Ladder.ROOT + ".(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule packages_are_flat = classes()
            .should(Conditions.liveInAChapter())
            .because("there is no impl, internal, util or common: package-private is the tool for hiding");

    @ArchTest
    static final ArchRule packages_are_null_marked = classes().should(Conditions.liveInANullMarkedPackage());

    @ArchTest
    static final ArchRule only_known_libraries_are_used = classes()
            .should()
            .onlyDependOnClassesThat(resideInAnyPackage(
                    "java..",
                    Ladder.ROOT + "..",
                    "org.jspecify.annotations..",
                    "javax.measure..",
                    // The writer of XML of the JDK.
                    "javax.xml.stream..",
                    "tech.units..",
                    "org.apache.commons.math3..",
                    "com.fasterxml.jackson.."));

    @ArchTest
    static final ArchRule number_needs_the_jdk_only = classes()
            .that()
            .resideInAPackage(Ladder.ROOT + ".number..")
            .should()
            .onlyDependOnClassesThat(
                    resideInAnyPackage("java..", Ladder.ROOT + ".number..", "org.jspecify.annotations.."));

    @ArchTest
    static final ArchRule indriya_stays_in_quantity = noClasses()
            .that()
            .resideOutsideOfPackage(Ladder.ROOT + ".quantity..")
            .should()
            .dependOnClassesThat(resideInAnyPackage("tech.units..", "tech.uom.."));

    @ArchTest
    static final ArchRule jackson_stays_in_the_reader_of_json = noClasses()
            .that(not(Predicates.theJsonClass()))
            .should()
            .dependOnClassesThat(resideInAnyPackage("com.fasterxml.."))
            .because("Jackson is optional: every other class must load without it");

    @ArchTest
    static final ArchRule other_libraries_stay_out_of_signatures = classes()
            .should(Conditions.showNothingOf("org.apache.commons.math3", "tech.units", "tech.uom", "com.fasterxml"))
            .because("a caller must not have to compile against what is used inside");

    @ArchTest
    static final ArchRule statics_never_change =
            fields().that().areStatic().should().beFinal().andShould(Conditions.notBeSharedArrays());

    @ArchTest
    static final ArchRule what_is_serializable_holds_nothing_that_is_not = fields().that()
            .areNotStatic()
            .and()
            .doNotHaveModifier(JavaModifier.TRANSIENT)
            .and()
            .areDeclaredInClassesThat()
            .areAssignableTo(java.io.Serializable.class)
            .and()
            .areDeclaredInClassesThat()
            .areNotEnums() // written by their name
            .should(Conditions.beSerializable());

    @ArchTest
    static final ArchRule enums_never_change = fields().that()
            .areDeclaredInClassesThat()
            .areEnums()
            .should()
            .beFinal()
            .because("an enum is a constant all the way down");

    @ArchTest
    static final ArchRule public_classes_are_closed = classes()
            .that()
            .arePublic()
            .should(Conditions.beFinalOrSealed())
            .because("values are final classes, sealed interfaces and enums; nobody subclasses them by accident");

    @ArchTest
    static final ArchRule no_reflection_and_no_services = noClasses()
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.lang.reflect..", "java.lang.invoke..")
                    .and(not(JavaClass.Predicates.belongToAnyOf(
                            java.lang.invoke.MethodHandles.class,
                            java.lang.invoke.StringConcatFactory.class,
                            java.lang.invoke.LambdaMetafactory.class,
                            java.lang.invoke.SerializedLambda.class))))
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(java.util.ServiceLoader.class);

    @ArchTest
    static final ArchRule the_default_locale_is_never_asked_for = noClasses()
            .should()
            .callMethod(java.util.Locale.class, "getDefault")
            .orShould()
            .callMethod(String.class, "format", String.class, Object[].class)
            .orShould()
            .callMethod(String.class, "toUpperCase")
            .orShould()
            .callMethod(String.class, "toLowerCase");

    @ArchTest
    static final ArchRule a_library_does_not_print =
            noClasses().should().accessField(System.class, "out").orShould().accessField(System.class, "err");
}
