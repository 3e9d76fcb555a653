package io.github.formulationmath.document;

import io.github.formulationmath.document.Document.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A part of a document. Texts are cleaned when a block is made, and stay data until a writer escapes them. */
sealed interface Block {

    /** Begins a section. */
    record Heading(String text) implements Block {
        public Heading {
            text = Clean.text(text, "text");
        }
    }

    record Paragraph(String text) implements Block {
        public Paragraph {
            text = Clean.text(text, "text");
        }
    }

    /** A warning. */
    record Caution(String text) implements Block {
        public Caution {
            text = Clean.text(text, "text");
        }
    }

    /** Names and what stands beside them. */
    record Facts(List<Fact> facts) implements Block {
        public Facts {
            facts = List.copyOf(Objects.requireNonNull(facts, "facts"));
        }

        Facts with(Fact fact) {
            return new Facts(longer(facts, fact));
        }
    }

    record Fact(String name, String value) {
        public Fact {
            name = Clean.text(name, "name");
            value = Clean.text(value, "value");
        }
    }

    record Table(List<Column> columns, List<Row> rows) implements Block {
        public Table {
            columns = List.copyOf(Objects.requireNonNull(columns, "columns"));
            rows = List.copyOf(Objects.requireNonNull(rows, "rows"));
            if (columns.isEmpty()) {
                throw new IllegalArgumentException("columns is empty: give at least one");
            }
            for (Row row : rows) {
                if (row.cells().size() != columns.size()) {
                    throw new IllegalArgumentException("the row " + row.cells() + " has "
                            + row.cells().size() + " cells for " + columns.size() + " columns");
                }
            }
        }

        /** The table without room to write on by hand. */
        Table written() {
            List<Integer> kept = IntStream.range(0, columns.size())
                    .filter(i -> columns.get(i).use() != Column.Use.ROOM)
                    .boxed()
                    .toList();
            return kept.size() == columns.size()
                    ? this
                    : new Table(
                            kept.stream().map(columns::get).toList(),
                            rows.stream()
                                    .map(row -> new Row(
                                            row.value(),
                                            kept.stream().map(row.cells()::get).toList()))
                                    .toList());
        }

        /** Whether it is worked with by hand. */
        boolean isWorkedWith() {
            return columns.stream().anyMatch(column -> column.use() == Column.Use.ROOM);
        }

        boolean hasNumbers() {
            return columns.stream().anyMatch(Column::isNumber);
        }
    }

    /** The cells of a row; the first stands for a formula where there is one, along the line. */
    record Row(@Nullable Expression value, List<String> cells) {
        public Row {
            cells = cells.stream().map(Clean::text).toList();
        }

        static Row of(Expression value, List<String> words) {
            List<String> cells = new ArrayList<>(List.of(Linear.plain(value)));
            cells.addAll(words);
            return new Row(value, cells);
        }
    }

    /**
     * Lines of arithmetic.
     *
     * @param text what they are about; may be empty
     * @param lines the lines, each a relation
     * @param remark what qualifies them; may be empty
     * @param isStep whether they are one of several, which are counted where the format can
     */
    record Equations(String text, List<Expression> lines, String remark, boolean isStep) implements Block {
        public Equations {
            text = Clean.text(text, "text");
            lines = List.copyOf(Objects.requireNonNull(lines, "lines"));
            remark = Clean.text(remark, "remark");
        }
    }

    /** Words between the steps. */
    record Note(String lead, String text) implements Block {
        public Note {
            lead = Clean.text(lead, "lead");
            text = Clean.text(text, "text");
        }
    }

    /** Blanks with their names. */
    record Fields(List<String> labels) implements Block {

        private static final String BLANK = "_".repeat(16);

        public Fields {
            labels = Objects.requireNonNull(labels, "labels").stream()
                    .map(label -> Clean.text(label, "label"))
                    .toList();
        }

        /** One after the other: {@code Made on ____ Made by ____}. */
        String inLine() {
            return labels.stream().map(label -> label + "\u00A0" + BLANK).collect(Collectors.joining(" "));
        }
    }

    /** Ruled lines to write on, each with the words it begins with; none of them breaks away from the others. */
    record Lines(List<String> labels) implements Block {
        public Lines {
            labels = Objects.requireNonNull(labels, "labels").stream()
                    .map(label -> Clean.text(label, "label"))
                    .toList();
        }
    }

    /**
     * What is asked and the answers to choose from: in a row, or one below the other if something is said of them.
     *
     * @param symbol what the value is called; null where words alone ask, and each answer has a box to tick
     * @param text what it stands for, or what is asked
     * @param choices the answers
     */
    record Question(@Nullable Expression symbol, String text, List<Choice> choices) implements Block {
        public Question {
            text = Clean.text(text, "text");
            choices = List.copyOf(Objects.requireNonNull(choices, "choices"));
        }

        Question with(Choice choice) {
            return new Question(symbol, text, longer(choices, choice));
        }

        boolean hasBoxes() {
            return symbol == null && isInRow();
        }

        boolean isInRow() {
            return choices.stream().allMatch(choice -> choice.comment().isEmpty());
        }
    }

    record Choice(String answer, boolean isRight, String comment, String beforeColon) {
        public Choice {
            answer = Clean.text(answer, "answer");
            comment = Clean.text(comment, "comment");
        }

        /** The comment with what parts it from the answer. */
        String rest() {
            return comment.isEmpty() ? "" : beforeColon + ": " + comment;
        }
    }

    private static <T> List<T> longer(List<T> list, T last) {
        List<T> longer = new ArrayList<>(list);
        longer.add(last);
        return longer;
    }
}
