package io.github.formulationmath.working;

import java.nio.file.*;
import org.junit.jupiter.api.Test;

class DumpTest {
    @Test
    void dump() throws Exception {
        Path d = Path.of("/tmp/wt/dump");
        Files.createDirectories(d);
        java.util.Map<String, Working> ws = java.util.Map.of(
                "everything",
                Workings.everything(),
                "hostile",
                Workings.hostile(),
                "total",
                Workings.total(40),
                "line",
                Workings.lineMass());
        for (var e : ws.entrySet()) {
            Files.writeString(
                    d.resolve(e.getKey() + ".txt"),
                    WorkingFormat.text().with(Depth.EVERYTHING).format(e.getValue()));
            Files.writeString(
                    d.resolve(e.getKey() + ".md"),
                    WorkingFormat.markdown().with(Depth.EVERYTHING).format(e.getValue()));
            Files.writeString(
                    d.resolve(e.getKey() + ".tex"),
                    WorkingFormat.latexDocument().with(Depth.EVERYTHING).format(e.getValue()));
            Files.writeString(
                    d.resolve(e.getKey() + ".html"),
                    WorkingFormat.htmlPage().with(Depth.EVERYTHING).format(e.getValue()));
            io.github.formulationmath.support.WorkingAssertions.assertSelfChecking(e.getValue());
        }
    }
}
