package io.github.formulationmath.json;

import io.github.formulationmath.record.BatchRecordTest;
import java.io.IOException;
import java.io.Reader;

/** Run in a JVM of its own with a small heap: reads a document of more than 100 MB that is made while it is read. */
public final class LargeDocument {

    private LargeDocument() {}

    public static void main(String[] args) throws IOException {
        String json = Json.records().write(BatchRecordTest.record());
        String head = json.substring(0, json.lastIndexOf("\"amendments\":[") + "\"amendments\":[".length());
        String one =
                "{\"who\":\"the maker\",\"time\":\"2026-11-25T13:00:00Z\",\"text\":\"" + "x".repeat(9_000) + "\"},";
        try {
            Json.records().read(new Endless(head, one, 110_000_000));
        } catch (RecordFormatException e) {
            System.out.println("refused: " + e.getMessage());
        }
    }

    /** A head, and then the same again and again. */
    private static final class Endless extends Reader {

        private final String again;
        private final long most;
        private String current;
        private int at;
        private long given;

        Endless(String head, String again, long most) {
            this.current = head;
            this.again = again;
            this.most = most;
        }

        @Override
        public int read(char[] buffer, int from, int length) {
            if (given >= most) {
                return -1;
            }
            if (at == current.length()) {
                current = again;
                at = 0;
            }
            int count = Math.min(length, current.length() - at);
            current.getChars(at, at + count, buffer, from);
            at += count;
            given += count;
            return count;
        }

        @Override
        public void close() {
            // Nothing is open.
        }
    }
}
