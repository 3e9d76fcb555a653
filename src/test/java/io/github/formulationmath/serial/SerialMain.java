package io.github.formulationmath.serial;

import io.github.formulationmath.support.ValueContract;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs in a JVM of its own: writes every value to a file, or reads such a file and compares. */
public final class SerialMain {

    private SerialMain() {}

    /** Arguments: {@code write} or {@code read}, and the file. */
    public static void main(String[] arguments) throws Exception {
        Path file = Path.of(arguments[1]);
        if (arguments[0].equals("write")) {
            write(file);
        } else {
            read(file);
        }
        System.out.println(arguments[0] + " on " + Runtime.version().feature() + ": "
                + SerialValues.all().size() + " values");
    }

    private static void write(Path file) throws IOException {
        try (ObjectOutputStream out = new ObjectOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            for (Serializable value : SerialValues.all()) {
                out.writeObject(value);
            }
        }
    }

    /** Each value must be what this JVM makes itself: equal, or else the same in print and in size. */
    private static void read(Path file) throws IOException, ClassNotFoundException {
        List<Serializable> expected = SerialValues.all();
        try (ObjectInputStream in = new ObjectInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
            for (Serializable value : expected) {
                Object back = in.readObject();
                if (!back.equals(value) && !looksTheSame(value, back)) {
                    throw new IllegalStateException("wrote " + value + ", read " + back);
                }
            }
        }
    }

    /** For types whose equality is identity. */
    private static boolean looksTheSame(Object value, Object back) throws IOException {
        boolean printsItself = !value.toString().startsWith(value.getClass().getName() + "@");
        return (!printsItself || back.toString().equals(value.toString()))
                && ValueContract.bytes(back).length == ValueContract.bytes(value).length;
    }
}
