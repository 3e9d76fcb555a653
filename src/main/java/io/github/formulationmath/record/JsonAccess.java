package io.github.formulationmath.record;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;

/** The way to JSON text for all who read and write it; says what is missing where Jackson is not there. */
final class JsonAccess {

    /** What the JVM names when the first class of Jackson is not found, and when our own class could not be started. */
    private static final String JACKSON = "com/fasterxml/jackson/";

    private static final String OURS = JsonAccess.class.getPackageName() + ".JsonText";

    private JsonAccess() {}

    static Object read(Reader reader) throws IOException {
        try {
            return JsonText.read(reader);
        } catch (NoClassDefFoundError e) {
            throw translated(e);
        }
    }

    static void write(Object document, Writer writer) throws IOException {
        try {
            JsonText.write(document, writer);
        } catch (NoClassDefFoundError e) {
            throw translated(e);
        }
    }

    private static IllegalStateException translated(NoClassDefFoundError e) {
        String missing = String.valueOf(e.getMessage());
        if (!missing.contains(JACKSON) && !missing.contains(OURS)) {
            throw e;
        }
        return new IllegalStateException(
                "reading and writing JSON needs Jackson, which is not on the class path: add the dependency"
                        + " com.fasterxml.jackson.core:jackson-core (2.x) to your build",
                e);
    }
}
