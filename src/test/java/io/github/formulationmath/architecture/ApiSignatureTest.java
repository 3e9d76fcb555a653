package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Nothing that a caller could have compiled against goes away unnoticed: every line of the checked-in signature is still
 * there. Additions are free. Written anew with {@code mvn -q -Pquick test -Dtest=ApiSignatureTest -Dapi.write=true}; the
 * difference then shows in the review.
 */
class ApiSignatureTest {

    private static final Path BASELINE = Path.of("src", "build", "api-signature.txt");

    @Test
    void nothing_of_the_public_api_is_missing() throws IOException {
        SortedSet<String> now = ApiSignature.of(publicTypes());
        if (Boolean.getBoolean("api.write")) {
            Files.writeString(BASELINE, String.join("\n", now) + "\n");
        }
        List<String> before = Files.readAllLines(BASELINE);

        assertThat(before).isNotEmpty();
        assertThat(before)
                .as("gone or changed since the checked-in signature; see DEVELOPERS.md, \"Changing the public API\"")
                .filteredOn(line -> !now.contains(line))
                .isEmpty();
    }

    private static List<Class<?>> publicTypes() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages(Ladder.ROOT).stream()
                        .filter(type -> !type.isAnonymousClass())
                        .map(JavaClass::reflect)
                        .collect(Collectors.toList());
    }
}
