package io.github.formulationmath.sheet;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.label.IngredientList;
import io.github.formulationmath.label.NetContents;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.BatchRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The words of a small label: name, net contents, ingredients, what is to be declared or heeded, day of making and batch
 * number, which is that of the house or else the code of the record. The text is for the label; what stands under it, and with
 * it the lots that were used, is for the maker and does not go onto it.
 *
 * <p>Example: {@code LabelText.of(record).with(Label.of(LabelRule.eu()).list(record.formula())).document().print(Format.TEXT)}.
 *
 * <p>Whether a label is lawful is for the law in force and a qualified person to say.
 *
 * <p>Immutable and thread-safe.
 */
public final class LabelText {

    private final BatchRecord record;
    private final @Nullable IngredientList ingredients;
    private final @Nullable Amount<?> contents;
    private final List<String> notices;

    private LabelText(
            BatchRecord record,
            @Nullable IngredientList ingredients,
            @Nullable Amount<?> contents,
            List<String> notices) {
        this.record = record;
        this.ingredients = ingredients;
        this.contents = contents;
        this.notices = List.copyOf(notices);
    }

    /**
     * The label of a batch.
     *
     * @param record the record of the batch
     * @return the label with name, day and batch number; net contents as filled, if that is in the record
     */
    public static LabelText of(BatchRecord record) {
        Objects.requireNonNull(record, "record");
        Amount<?> filled =
                record.filling().map(filling -> filled(filling.fill())).orElse(null);
        return new LabelText(record, null, filled, List.of());
    }

    private static Amount<?> filled(PackFill fill) {
        return fill.volume().isPresent() ? fill.volume().get() : fill.mass();
    }

    /**
     * The same label with the list of ingredients.
     *
     * @param list the list
     * @return the label
     */
    public LabelText with(IngredientList list) {
        return new LabelText(record, Objects.requireNonNull(list, "list"), contents, notices);
    }

    /**
     * The same label with its net contents.
     *
     * @param net the contents as they are declared
     * @return the label
     */
    public LabelText with(NetContents<?> net) {
        return new LabelText(
                record, ingredients, Objects.requireNonNull(net, "net").declared(), notices);
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
        return new LabelText(record, ingredients, contents, more);
    }

    /**
     * The label in English.
     *
     * @return the label, to be printed in any format
     */
    public Document document() {
        return document(Wording.english());
    }

    /**
     * The label.
     *
     * @param wording the words
     * @return the label, to be printed in any format; cautions are for the maker and do not go onto it
     */
    public Document document(Wording wording) {
        Document label = Document.titled(record.formula().name(), wording.say("language"));
        if (contents != null) {
            label = label.fact(wording.say("sheet.label.contents"), SheetNumbers.amount(wording, contents));
        }
        if (ingredients != null) {
            label = label.fact(wording.say("sheet.label.ingredients"), ingredients.text());
        }
        label = label.fact(wording.say("sheet.label.day"), record.code().day().toString())
                .fact(wording.say("sheet.label.code"), record.batchNumber());
        for (String notice : notices) {
            label = label.paragraph(notice);
        }
        for (String doubt : doubts(wording)) {
            label = label.caution(doubt);
        }
        return label;
    }

    /** What the maker has to look at before the label is used. */
    private List<String> doubts(Wording wording) {
        List<String> doubts = new ArrayList<>();
        doubts.add(wording.say("sheet.label.caution"));
        if (ingredients == null) {
            doubts.add(wording.say("sheet.label.no-ingredients"));
        } else {
            List<String> described = ingredients.describe(wording);
            doubts.addAll(described.subList(1, described.size()));
        }
        if (record.hasOwnBatchNumber()) {
            doubts.add(wording.say(
                    "sheet.label.record", record.batchNumber(), record.code().toString()));
        }
        if (!record.lots().isEmpty()) {
            doubts.add(wording.say("sheet.label.lots", lots(wording)));
        }
        return doubts;
    }

    private String lots(Wording wording) {
        return record.lots().entrySet().stream()
                .map(used -> used.getKey().name() + " (" + SheetNumbers.lots(wording, used.getValue()) + ")")
                .collect(Collectors.joining(", "));
    }

    /** The label as plain text, for reading at a prompt. */
    @Override
    public String toString() {
        return document().toString();
    }
}
