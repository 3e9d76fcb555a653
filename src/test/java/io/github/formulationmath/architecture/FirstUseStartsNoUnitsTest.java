package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The start of the reference implementation of the units takes longer than a first plan; no everyday job waits for it.
 * Seen in a virtual machine of its own, for this one has the units long since.
 */
class FirstUseStartsNoUnitsTest {

    @ParameterizedTest
    @CsvSource({
        "1, plan.WeighingPlan",
        "2, size.MinimumBatch",
        "3, limit.LimitReport",
        "4, mend.DisplayedAdditions",
        "5, document.LatexWriter"
    })
    void an_everyday_job_loads_no_unit_of_the_reference_implementation(String path, String loaded) throws Exception {
        Process java = new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-Xshare:auto",
                        "-verbose:class",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FivePaths.class.getName(),
                        path)
                .redirectErrorStream(true)
                .start();
        String log = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor()).as(log).isZero();
        assertThat(log).contains(loaded).doesNotContain("tech.units.indriya");
    }
}
