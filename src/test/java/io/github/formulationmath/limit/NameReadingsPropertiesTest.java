package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every name of the table in disguises that people write: no disguise lets a substance escape its limits, and none is taken
 * for a name of the table without being told. A name with a wrong letter is never counted.
 */
class NameReadingsPropertiesTest {

    private static final LimitTable TABLE = LimitTable.eu2024February();
    private static final LimitChecker CHECKER =
            LimitChecker.of(TABLE, Product.leaveOn().on("face"), DecisionRule.worstCase());

    private static final Map<String, UnaryOperator<String>> DISGUISES = disguises();

    private static Map<String, UnaryOperator<String>> disguises() {
        Map<String, UnaryOperator<String>> all = new LinkedHashMap<>();
        all.put(
                "a common name in brackets",
                name -> name.contains(" ") ? name.replaceFirst(" ", " (Common Name) ") : name + " (Common Name)");
        all.put("an asterisk", name -> name + "*");
        all.put(
                "organic",
                name -> "Organic " + name.charAt(0) + name.substring(1).toLowerCase(java.util.Locale.ROOT));
        all.put("sulphate", name -> name.replace("SULF", "Sulph"));
        all.put("aluminium", name -> name.replace("ALUMINUM", "Aluminium"));
        all.put("no hyphens", name -> name.replace("-", " "));
        all.put(
                "Greek",
                name -> name.replace("ALPHA", "\u03b1")
                        .replace("BETA", "\u03b2")
                        .replace("DELTA", "\u03b4"));
        all.put("square brackets", name -> name.replace("(NANO)", "[nano]"));
        all.put("nano first", name -> name.endsWith(" (NANO)") ? "Nano " + name.replace(" (NANO)", "") : name);
        return all;
    }

    private static Set<String> names() {
        return TABLE.limits().stream()
                .flatMap(limit -> limit.group().members().stream())
                .filter(GroupMember::isCounted)
                .map(member -> member.substance().name())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static LimitReport check(String name) {
        return CHECKER.check(Formula.inPercent("Trial")
                .quantitySufficient("Carrier of the trial")
                .line(name, "30 %")
                .build());
    }

    private static Set<String> found(LimitReport report) {
        return Stream.of(
                        report.verdicts().stream().map(Verdict::limit),
                        report.outOfScope().stream().flatMap(finding -> finding.limits().stream()),
                        report.mentioned().stream().flatMap(finding -> finding.limits().stream()))
                .flatMap(limits -> limits)
                .map(UsageLimit::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    @DisplayName("no disguise lets a substance of the table escape, and every one is told")
    void none_escapes() {
        int tried = 0;
        for (String name : names()) {
            Set<String> plain = found(check(name));
            for (Map.Entry<String, UnaryOperator<String>> disguise : DISGUISES.entrySet()) {
                String written = disguise.getValue().apply(name);
                if (written.equals(name)) {
                    continue;
                }
                LimitReport report = check(written);
                tried++;
                assertThat(found(report))
                        .as("%s, %s", written, disguise.getKey())
                        .containsAll(plain);
                boolean known = !TABLE.limitsFor(io.github.formulationmath.formula.Substance.of(written))
                                .isEmpty()
                        && report.readings().isEmpty();
                assertThat(known && !isPrinted(written))
                        .as("%s is told", written)
                        .isFalse();
            }
        }
        assertThat(tried).isGreaterThan(2000);
    }

    /** Whether the table itself has the spelling. */
    private static boolean isPrinted(String written) {
        return TABLE.limits().stream()
                .flatMap(limit -> limit.group().members().stream())
                .flatMap(member -> member.substance().keys().stream())
                .anyMatch(key -> key.equals(io.github.formulationmath.formula.SubstanceName.normalise(written)));
    }

    @Test
    @DisplayName("what is forbidden or too much by itself is never called within inside a blend of unknown shares")
    void a_blend_is_never_called_within_by_what_is_not_known() {
        for (String name : names()) {
            LimitReport alone = check(name);
            LimitReport blend = check(name + " (and) Squalane");
            for (Verdict verdict : alone.verdicts()) {
                if (!verdict.limit().kind().isUpper() || verdict.conformity() == Conformity.WITHIN) {
                    continue;
                }
                assertThat(blend.verdict(verdict.limit().id()))
                        .as("%s in a blend, %s", name, verdict)
                        .isPresent();
                Conformity inBlend =
                        blend.verdict(verdict.limit().id()).orElseThrow().conformity();
                assertThat(inBlend).as(name + " " + verdict).isNotEqualTo(Conformity.WITHIN);
                assertThat(inBlend == Conformity.PROHIBITED)
                        .as(name + " " + verdict)
                        .isEqualTo(verdict.conformity() == Conformity.PROHIBITED);
            }
            assertThat(blend.readings()).as(name).isNotEmpty();
        }
    }

    /** The part weighs 0.9 % at most, whatever the shares: that is known, and within 1 %. */
    @Test
    void what_holds_for_every_share_of_a_blend_is_decided() {
        LimitReport report = CHECKER.check(Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Phenoxyethanol (and) Ethylhexylglycerin", "0.9 %")
                .build());
        assertThat(report.verdict("EU-V-29").orElseThrow().conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(report.withoutLimit()).extracting(Object::toString).contains("ETHYLHEXYLGLYCERIN");
    }

    /** Two members of one sum in one blend are together no more than the blend: 0.85 % of the two is at most 0.77 % as acid, under 0.8 %. */
    @Test
    void parts_of_one_sum_are_together_no_more_than_the_blend() {
        LimitReport report = CHECKER.check(Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Methylparaben (and) Ethylparaben", "0.85 %")
                .build());
        assertThat(report.verdicts().stream()
                        .filter(verdict -> verdict.limit().id().startsWith("EU-V-12"))
                        .filter(verdict -> verdict.limit().sumRule() == SumRule.SUM)
                        .map(Verdict::conformity))
                .isNotEmpty()
                .containsOnly(Conformity.WITHIN);
    }

    @Test
    @DisplayName("a wrong letter is never counted, it is at most suggested")
    void a_wrong_letter_is_not_counted() {
        for (String name : names()) {
            for (int at = 0; at < name.length(); at += 3) {
                if (!Character.isLetter(name.charAt(at)) || name.length() < 6) {
                    continue;
                }
                String wrong = name.substring(0, at) + (name.charAt(at) == 'Q' ? 'J' : 'Q') + name.substring(at + 1);
                LimitReport report = check(wrong);
                boolean counted = report.verdicts().stream()
                        .anyMatch(verdict -> verdict.substances().stream()
                                .anyMatch(one -> one.name().equals(wrong)));
                assertThat(counted && report.readings().isEmpty()).as(wrong).isFalse();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Aqua",
                "Glycerin",
                "Squalane",
                "Caprylic/Capric Triglyceride",
                "Cetearyl Alcohol",
                "Cetyl Alcohol",
                "Stearic Acid",
                "Butyrospermum Parkii (Shea) Butter",
                "Theobroma Cacao (Cocoa) Seed Butter",
                "Simmondsia Chinensis (Jojoba) Seed Oil",
                "Helianthus Annuus (Sunflower) Seed Oil",
                "Ricinus Communis (Castor) Seed Oil",
                "Cocos Nucifera (Coconut) Oil",
                "Persea Gratissima (Avocado) Oil",
                "Vitis Vinifera (Grape) Seed Oil",
                "Sesamum Indicum (Sesame) Seed Oil",
                "Oenothera Biennis (Evening Primrose) Oil",
                "Candelilla Cera",
                "Cera Alba (Beeswax)",
                "Lanolin",
                "Xanthan Gum",
                "Hydroxyethylcellulose",
                "Carbomer",
                "Glyceryl Stearate (and) PEG-100 Stearate",
                "Polysorbate 20",
                "Lecithin",
                "Sodium Hyaluronate",
                "Panthenol",
                "Niacinamide",
                "Allantoin",
                "Tocopherol (Vitamin E)",
                "Ascorbyl Palmitate",
                "Aloe Barbadensis (Aloe Vera) Leaf Juice",
                "Chamomilla Recutita (Matricaria) Flower Extract",
                "Urea",
                "Lactic Acid",
                "Sodium Lactate",
                "Citric Acid",
                "Sodium Chloride",
                "Sodium Bicarbonate",
                "Kaolin",
                "Bentonite",
                "Charcoal Powder",
                "Cocamidopropyl Betaine",
                "Decyl Glucoside (and) Aqua",
                "Sodium Cocoyl Isethionate",
                "Coco-Glucoside",
                "Maltodextrin",
                "Butylene Glycol",
                "Propanediol",
                "Pentylene Glycol",
                "Caprylyl Glycol (and) Glycerin",
                "Ethylhexylglycerin",
                "Dimethicone",
                "Isopropyl Myristate",
                "Cetyl Palmitate",
                "Behenyl Alcohol",
                "Hydrolyzed Silk",
                "Betaine",
                "Mica"
            })
    void harmless_names_are_taken_for_nothing(String name) {
        LimitReport report = check(name);
        assertThat(report.readings()).isEmpty();
        assertThat(report.verdicts()).isEmpty();
    }
}
