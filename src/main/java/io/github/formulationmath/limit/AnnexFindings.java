package io.github.formulationmath.limit;

import io.github.formulationmath.annex.ColorantEntry;
import io.github.formulationmath.annex.Colorants;
import io.github.formulationmath.annex.ProhibitedEntry;
import io.github.formulationmath.annex.ProhibitedEntry.Condition;
import io.github.formulationmath.annex.ProhibitedSubstances;
import io.github.formulationmath.annex.ProhibitedSubstances.Naming;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.LimitReport.Uncounted;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What Annexes II and IV say of one substance in one product: what counts it, as a limit that leaves nothing or a highest
 * share of a colorant, and what has to be read.
 *
 * @param countings limits that count the substance
 * @param findings what is told of it besides
 */
record AnnexFindings(List<Counting> countings, List<Uncounted> findings) {

    static final AnnexFindings NONE = new AnnexFindings(List.of(), List.of());

    private static final String REGULATION = "Regulation (EC) No 1223/2009, ";

    /** What the definitions of the annexes call the mucous membranes and the products for them. */
    private static final Scope NOT_MUCOUS =
            Scope.any().withAreas("not:mucous_membranes", "not:oral", "not:lips", "not:eyes", "not:intimate");

    private static final String LUNGS = "lungs by inhalation";

    static final String PROHIBITED = "EU-II-";

    private static final String COLORANT = "EU-IV-";

    private static final Set<Uncounted.Why> COLORANTS =
            Set.of(Uncounted.Why.COLORANT, Uncounted.Why.COLORANT_CONDITIONS);

    /** The reason in the file of entries left out. */
    private static final String FOR_HAIR_DYES = "hair, eyelash or eyebrow dye";

    private static final Set<String> HAIRY = Set.of("hair", "eyelashes", "eyebrows", "beard", "scalp");

    /** Whether Annex IV lists it. */
    private boolean isColorant() {
        return findings.stream().anyMatch(finding -> COLORANTS.contains(finding.why()))
                || countings.stream().anyMatch(counting -> counting.limit().id().startsWith(COLORANT));
    }

    /**
     * The entries not transcribed that speak of it in such a product: what Annex IV lists as a colorant is not held against the
     * entries for hair dyes where it dyes no hair.
     */
    List<OmittedEntry> speaking(List<OmittedEntry> entries, Product product) {
        if (entries.isEmpty() || !isColorant() || !isSurelyNoHairDye(product)) {
            return entries;
        }
        return entries.stream()
                .filter(entry -> !entry.reason().equals(FOR_HAIR_DYES))
                .toList();
    }

    boolean isEmpty() {
        return countings.isEmpty() && findings.isEmpty();
    }

    static AnnexFindings of(Substance substance, Product product, ProductWords words) {
        List<Counting> countings = new ArrayList<>();
        List<Uncounted> findings = new ArrayList<>();
        for (ProhibitedSubstances.Finding found :
                ProhibitedSubstances.eu2024February().find(substance)) {
            addProhibited(substance, product, found, countings, findings);
        }
        if (!isHairDye(product)) {
            addColorants(substance, product, words, countings, findings);
        }
        return countings.isEmpty() && findings.isEmpty()
                ? NONE
                : new AnnexFindings(List.copyOf(countings), List.copyOf(findings));
    }

    private static void addProhibited(
            Substance substance,
            Product product,
            ProhibitedSubstances.Finding found,
            List<Counting> countings,
            List<Uncounted> findings) {
        ProhibitedEntry entry = found.entry();
        boolean forDyes = entry.condition() == Condition.HAIR_DYE;
        if (forDyes && isSurelyNoHairDye(product)) {
            return;
        }
        boolean letsNothing =
                forDyes && isHairDye(product) || entry.condition() == Condition.NAILS && isSurelyNotForNails(product);
        if (found.naming() == Naming.NAMED || found.naming() == Naming.LET_THROUGH && letsNothing) {
            countings.add(forbidden(limit(entry, substance), substance));
            return;
        }
        Uncounted.Why why =
                found.naming() == Naming.MAY_BE ? Uncounted.Why.MAY_BE_PROHIBITED : Uncounted.Why.PROHIBITED_UNLESS;
        OmittedEntry printed = new OmittedEntry(
                "II",
                entry.number(),
                entry.printed(),
                entry.letsThrough(),
                entry.names(),
                entry.casNumbers(),
                EntryText.NONE);
        findings.add(new Uncounted(substance, why, List.of(), List.of(printed)));
    }

    private static void addColorants(
            Substance substance,
            Product product,
            ProductWords words,
            List<Counting> countings,
            List<Uncounted> findings) {
        Colorants.Finding found = Colorants.eu2024February().find(substance);
        boolean asColorant = Colorants.isColourIndexName(substance);
        for (ColorantEntry entry : found.entries()) {
            UsageLimit limit = limit(entry, substance);
            if (limit.scope().excludes(product, words) && limit.outside() == OutsideScope.NOT_ALLOWED) {
                countings.add(forbidden(limit, substance));
                continue;
            }
            Applicability applicability = limit.scope().applicabilityTo(product, words);
            if (entry.most().isPresent() && applicability != Applicability.OUT_OF_SCOPE) {
                countings.add(counting(limit, substance, applicability));
            }
            boolean open = applicability == Applicability.MAY_APPLY
                    || asColorant && !entry.conditions().isEmpty();
            findings.add(new Uncounted(
                    substance,
                    open ? Uncounted.Why.COLORANT_CONDITIONS : Uncounted.Why.COLORANT,
                    List.of(limit),
                    List.of()));
        }
        // What Annex II names needs no second word.
        if (!found.unlisted().isEmpty() && countings.isEmpty()) {
            OmittedEntry unlisted = new OmittedEntry(
                    "IV", "", String.join(", ", found.unlisted()), "", List.of(), List.of(), EntryText.NONE);
            findings.add(new Uncounted(substance, Uncounted.Why.COLORANT_UNLISTED, List.of(), List.of(unlisted)));
        }
    }

    /** Whether a limit is an entry of Annex II that names a substance. */
    static boolean isOfNamed(UsageLimit limit) {
        return limit.id().startsWith(PROHIBITED)
                && limit.kind() == LimitKind.MAXIMUM
                && limit.outside() == OutsideScope.NOT_ALLOWED
                && limit.share().fraction().isZero();
    }

    private static UsageLimit limit(ProhibitedEntry entry, Substance substance) {
        Citation citation = Citation.of(
                REGULATION + "Annex II, entry " + entry.number(),
                entry.amendingAct(),
                entry.updated(),
                ProhibitedSubstances.eu2024February().snapshot());
        return UsageLimit.of(
                        PROHIBITED + entry.number(),
                        group(entry.printed(), substance),
                        LimitKind.MAXIMUM,
                        MassFraction.ZERO)
                .citing(citation)
                .saying(EntryText.conditions(entry.letsThrough()))
                .inEntry(OutsideScope.NOT_ALLOWED, "II " + entry.number() + " " + entry.printed(), "");
    }

    private static UsageLimit limit(ColorantEntry entry, Substance substance) {
        Citation citation = Citation.of(
                REGULATION + "Annex IV, entry " + entry.number(),
                entry.amendingAct(),
                entry.updated(),
                Colorants.eu2024February().snapshot());
        MassFraction share = entry.most().orElse(MassFraction.ofPercent("100"));
        return UsageLimit.of(COLORANT + entry.number(), group(entry.printed(), substance), LimitKind.MAXIMUM, share)
                .within(scope(entry))
                .citing(citation)
                .saying(new EntryText(
                        entry.fieldAsPrinted(), entry.limitAsPrinted(), entry.conditions(), "", "", "", ""))
                .inEntry(
                        entry.field() == ColorantEntry.Field.LIPS ? OutsideScope.NONE : OutsideScope.NOT_ALLOWED,
                        "IV " + entry.number() + " " + entry.printed(),
                        "");
    }

    /** Where it may be used; what must not be breathed in is not for sprays either. */
    private static Scope scope(ColorantEntry entry) {
        Scope field = scope(entry.field());
        return entry.conditions().contains(LUNGS) ? field.withForms("not:inhaled") : field;
    }

    private static Scope scope(ColorantEntry.Field field) {
        return switch (field) {
            case ALL -> Scope.any();
            case RINSE_OFF -> Scope.rinseOff();
            case NOT_EYES -> Scope.any().withAreas("not:eyes");
            case NOT_MUCOUS_MEMBRANES -> NOT_MUCOUS;
            case LIPS -> Scope.any().withAreas("lips");
        };
    }

    private static SubstanceGroup group(String printed, Substance substance) {
        return SubstanceGroup.of(printed, List.of(GroupMember.of(substance)));
    }

    private static Counting forbidden(UsageLimit limit, Substance substance) {
        return counting(limit, substance, Applicability.APPLIES).forbidden();
    }

    private static Counting counting(UsageLimit limit, Substance substance, Applicability applicability) {
        return new Counting(
                limit,
                substance.name(),
                limit.id() + "\n" + substance.keys().get(0),
                limit.group().members().get(0),
                Conversion.NONE,
                applicability,
                null,
                false);
    }

    private static boolean isHairDye(Product product) {
        return product.kinds().stream()
                .flatMap(kind -> Stream.concat(Stream.of(kind), ProductWords.Vocabulary.KINDS.also(kind).stream()))
                .anyMatch(kind -> kind.contains("dye") || kind.contains("hair_colo"));
    }

    /** What is stated of a product is complete. */
    private static boolean isSurelyNotForNails(Product product) {
        boolean otherKind =
                !product.kinds().isEmpty() && product.kinds().stream().noneMatch(kind -> kind.contains("nail"));
        boolean otherArea =
                !product.areas().isEmpty() && product.areas().stream().noneMatch(area -> area.contains("nail"));
        return otherArea || otherKind && product.areas().isEmpty();
    }

    private static boolean isSurelyNoHairDye(Product product) {
        boolean otherKind = !product.kinds().isEmpty() && !isHairDye(product);
        boolean otherArea =
                !product.areas().isEmpty() && product.areas().stream().noneMatch(HAIRY::contains);
        return otherKind || otherArea;
    }
}
