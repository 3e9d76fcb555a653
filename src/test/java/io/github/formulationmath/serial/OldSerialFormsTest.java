package io.github.formulationmath.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.GroupMember;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.record.BatchRecordTest;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.ErrorModel;
import java.io.InvalidClassException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What an earlier version wrote in another form is refused, never read with something missing. */
class OldSerialFormsTest {

    /** One value of every class whose form changed. */
    private static List<Object> changed() throws Exception {
        MassFraction cap = MassFraction.parse("1 %");
        Substance substance = Substance.of("Phenoxyethanol");
        LineAddition addition = LineAddition.of(Lotion.line("Aqua"), Lotion.g("1"));
        return List.of(
                ErrorModel.readabilityOnly().withLinearityOfIndication("1 g"),
                BenchEntry.addition(addition),
                BatchRecordTest.record(),
                CorrectionRules.within(Tolerances.of("5 %")),
                Lotion.BENCH.closingWithin(Tolerances.of("5 %")),
                LimitTable.of(
                        "house",
                        List.of(UsageLimit.of(
                                "L",
                                SubstanceGroup.of("g", List.of(GroupMember.of(substance))),
                                LimitKind.MAXIMUM,
                                cap))));
    }

    @TestFactory
    Stream<DynamicTest> forms_of_earlier_versions_are_refused() throws Exception {
        return changed().stream()
                .map(each -> DynamicTest.dynamicTest(each.getClass().getSimpleName(), () -> refusesFirstForm(each)));
    }

    private static void refusesFirstForm(Object value) throws Exception {
        byte[] bytes = ValueContract.bytes(value);
        assertThat(ValueContract.read(bytes)).hasToString(value.toString());
        byte[] name = value.getClass().getName().getBytes(StandardCharsets.US_ASCII);
        int place =
                new String(bytes, StandardCharsets.ISO_8859_1).indexOf(new String(name, StandardCharsets.ISO_8859_1))
                        + name.length;
        assertThat(ByteBuffer.wrap(bytes).getLong(place)).isGreaterThan(1);
        ByteBuffer.wrap(bytes).putLong(place, 1);
        assertThatThrownBy(() -> ValueContract.read(bytes))
                .isInstanceOf(InvalidClassException.class)
                .hasMessageContaining("serialVersionUID");
    }
}
