package io.github.formulationmath.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.util.List;
import java.util.stream.Collectors;

/** The classes of the library, as they were compiled. */
final class Types {

    private static final List<Class<?>> LIBRARY = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages(Ladder.ROOT).stream()
                    .filter(type -> !type.isAnonymousClass() && stands(type))
                    .map(JavaClass::reflect)
                    .collect(Collectors.toUnmodifiableList());

    private Types() {}

    /** However the tests are laid out on the class path, a class of the library has a source among the library's. */
    private static boolean stands(JavaClass type) {
        String topLevel = type.getName().substring(Ladder.ROOT.length() + 1).split("\\$", 2)[0];
        return Files.exists(Sources.MAIN.resolve(topLevel.replace('.', '/') + ".java"));
    }

    static List<Class<?>> ofTheLibrary() {
        return LIBRARY;
    }
}
