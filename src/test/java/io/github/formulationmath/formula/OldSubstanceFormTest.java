package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.ValueContract;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.ObjectStreamConstants;
import org.junit.jupiter.api.Test;

/** A substance that was saved before there were synonyms is read, with none. */
class OldSubstanceFormTest {

    /** The stream as the specification of object serialization lays it out, written by hand. */
    private static byte[] withoutSynonyms(String name, String cas) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeShort(ObjectStreamConstants.STREAM_MAGIC);
        out.writeShort(ObjectStreamConstants.STREAM_VERSION);
        out.writeByte(ObjectStreamConstants.TC_OBJECT);
        out.writeByte(ObjectStreamConstants.TC_CLASSDESC);
        out.writeUTF(Substance.class.getName());
        out.writeLong(1);
        out.writeByte(ObjectStreamConstants.SC_SERIALIZABLE);
        out.writeShort(2);
        for (String field : new String[] {"cas", "name"}) {
            out.writeByte('L');
            out.writeUTF(field);
            text(out, "Ljava/lang/String;");
        }
        out.writeByte(ObjectStreamConstants.TC_ENDBLOCKDATA);
        out.writeByte(ObjectStreamConstants.TC_NULL);
        text(out, cas);
        text(out, name);
        return bytes.toByteArray();
    }

    private static void text(DataOutputStream out, String text) throws Exception {
        out.writeByte(ObjectStreamConstants.TC_STRING);
        out.writeUTF(text);
    }

    @Test
    void the_form_without_synonyms_is_read() throws Exception {
        byte[] old = withoutSynonyms("Glycerin", "56-81-5");
        Substance read = (Substance) ValueContract.read(old);
        assertThat(read).isEqualTo(Substance.of("Glycerin").withCas("56-81-5"));
        assertThat(read.synonyms()).isEmpty();
        assertThat(read.keys()).containsExactly("GLYCERIN", "56-81-5");
    }
}
