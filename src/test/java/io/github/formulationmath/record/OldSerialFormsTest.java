package io.github.formulationmath.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.weighing.ErrorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InvalidClassException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Forms of earlier versions that did not say of what a linearity is, or held bounds that were not sure, are refused. */
class OldSerialFormsTest {

    @Test
    void forms_of_earlier_versions_are_refused() throws Exception {
        for (Object each : List.of(
                ErrorModel.readabilityOnly().withLinearityOfIndication("1 g"),
                Lotion.made("316.0", "12.3", "48.0", "20.0", "4.0"))) {
            byte[] bytes = written(each);
            assertThat(read(bytes)).isEqualTo(each);
            byte[] name = each.getClass().getName().getBytes(StandardCharsets.US_ASCII);
            int place = new String(bytes, StandardCharsets.ISO_8859_1)
                            .indexOf(new String(name, StandardCharsets.ISO_8859_1))
                    + name.length;
            assertThat(ByteBuffer.wrap(bytes).getLong(place)).isEqualTo(2);
            ByteBuffer.wrap(bytes).putLong(place, 1);
            assertThatThrownBy(() -> read(bytes))
                    .isInstanceOf(InvalidClassException.class)
                    .hasMessageContaining("serialVersionUID");
        }
    }

    private static byte[] written(Object value) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(value);
        }
        return bytes.toByteArray();
    }

    private static Object read(byte[] bytes) throws Exception {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            return in.readObject();
        }
    }
}
