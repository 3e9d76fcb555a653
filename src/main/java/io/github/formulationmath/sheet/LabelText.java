package io.github.formulationmath.sheet;

import io.github.formulationmath.limit.IngredientList;
import io.github.formulationmath.limit.NetContents;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The words of a small label: name, net contents, ingredients, what is to be declared or heeded, day of making and batch
 * code. The text is for the label; what stands under it is for the maker and does not go onto it.
 *
 * <p>Example: {@code LabelText.of(record).with(Label.of(LabelRule.eu()).list(record.formula())).print(SheetFormat.TEXT)}.
 *
 * <p>Whether a label is lawful is for the law in force and a qualified person to say.
 *
 * <p>Immutable and thread-safe.
 */
public final class LabelText {

    private final BatchRecord record;
    private final @Nullable IngredientList ingredients;
    private final @Nullable String contents;
    private final List<String> notices;
    private final SheetWords words;

    private LabelText(
            BatchRecord record,
            @Nullable IngredientList ingredients,
            @Nullable String contents,
            List<String> notices,
            SheetWords words) {
        this.record = record;
        this.ingredients = ingredients;
        this.contents = contents;
        this.notices = List.copyOf(notices);
        this.words = words;
    }

    /**
     * The label of a batch, in English.
     *
     * @param record the record of the batch
     * @return the label with name, day and code; net contents as filled, if that is in the record
     */
    public static LabelText of(BatchRecord record) {
        String filled = Objects.requireNonNull(record, "record")
                .filling()
                .map(filling -> filling.fill()
                        .volume()
                        .map(SheetNumbers::amount)
                        .orElseGet(() -> SheetNumbers.amount(filling.fill().mass())))
                .orElse(null);
        return new LabelText(record, null, filled, List.of(), new SheetWords(Wording.english()));
    }

    /**
     * The same label with the list of ingredients.
     *
     * @param list the list
     * @return the label
     */
    public LabelText with(IngredientList list) {
        return new LabelText(record, Objects.requireNonNull(list, "list"), contents, notices, words);
    }

    /**
     * The same label with its net contents.
     *
     * @param net the contents as they are declared
     * @return the label
     */
    public LabelText with(NetContents<?> net) {
        String declared = SheetNumbers.amount(Objects.requireNonNull(net, "net").declared());
        return new LabelText(record, ingredients, declared, notices, words);
    }

    /**
     * The same label with a sentence that has to stand on it: a warning, how it is used, who is responsible.
     *
     * @param sentence the sentence
     * @return the label
     */
    public LabelText withNotice(String sentence) {
        List<String> more = new ArrayList<>(notices);
        more.add(Objects.requireNonNull(sentence, "sentence"));
        return new LabelText(record, ingredients, contents, more, words);
    }

    /**
     * The same label in other words.
     *
     * @param newWording the words
     * @return the label
     */
    public LabelText with(Wording newWording) {
        SheetWords other = new SheetWords(Objects.requireNonNull(newWording, "newWording"));
        return new LabelText(record, ingredients, contents, notices, other);
    }

    /**
     * Prints the label.
     *
     * @param format text, Markdown or HTML; CSV has tables alone, and a label has none
     * @return the label, its lines ended by a line feed
     * @throws IllegalArgumentException if the format is CSV
     */
    public String print(SheetFormat format) {
        if (Objects.requireNonNull(format, "format") == SheetFormat.CSV) {
            throw new IllegalArgumentException(
                    "format is CSV: a label has no table; print it as text, Markdown or HTML");
        }
        return format.write(page());
    }

    /** The text format, for reading at a prompt. */
    @Override
    public String toString() {
        return print(SheetFormat.TEXT);
    }

    private Page page() {
        List<Page.Block> blocks = new ArrayList<>();
        List<Page.Fact> facts = new ArrayList<>();
        if (contents != null) {
            facts.add(words.fact("label.contents", contents));
        }
        if (ingredients != null) {
            facts.add(words.fact("label.ingredients", ingredients.text()));
        }
        facts.add(words.fact("label.day", record.code().day().toString()));
        facts.add(words.fact("label.code", record.code().toString()));
        blocks.add(new Page.Facts(facts));
        notices.forEach(notice -> blocks.add(new Page.Remark(notice)));
        doubts().forEach(doubt -> blocks.add(new Page.Caution(doubt)));
        return new Page(words.say("language"), record.formula().name(), blocks);
    }

    /** What the maker has to look at before the label is used. */
    private List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        doubts.add(words.say("sheet.label.caution"));
        if (ingredients == null) {
            doubts.add(words.say("sheet.label.no-ingredients"));
        } else {
            List<String> described = ingredients.describe(words.wording());
            doubts.addAll(described.subList(1, described.size()));
        }
        return doubts;
    }
}
