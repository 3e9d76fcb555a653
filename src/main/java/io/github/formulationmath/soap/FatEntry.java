package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.util.Objects;
import java.util.Optional;

/**
 * What one source says of one fat. Two sources for one fat are two entries: the range belongs to its source.
 *
 * @param inci the INCI name
 * @param name the common name, with what tells it from others of the same INCI name
 * @param nature what it is made of
 * @param basis whether a lot conforms to the range, or samples had it
 * @param range the least and the greatest saponification value
 * @param asPrinted the figure as the source prints it
 * @param iodine the range of the iodine value, if the source has it
 * @param unsaponifiable the range of the unsaponifiable matter, if the source has it; a saponification value counts it already
 * @param acidValue the range of the acid value, if the source has it
 * @param provenance where it stands and where it was read
 */
public record FatEntry(
        String inci,
        String name,
        Fat.Nature nature,
        Basis basis,
        Interval<AlkaliNumber> range,
        String asPrinted,
        Optional<Interval<IodineValue>> iodine,
        Optional<Interval<MassFraction>> unsaponifiable,
        Optional<Interval<AlkaliNumber>> acidValue,
        Provenance provenance) {

    /** What a range is. */
    public enum Basis {
        /** A standard, regulation or pharmacopoeia: a lot that conforms to it lies inside. */
        STANDARD("standard"),
        /** What samples had, as a book or paper reports them: another lot may lie outside. */
        SAMPLES("samples");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        /** The word in the table. */
        String word() {
            return word;
        }
    }

    /**
     * Checks that there is such a fat.
     *
     * @param inci the INCI name
     * @param name the common name
     * @param nature what it is made of
     * @param basis whether a lot conforms to the range, or samples had it
     * @param range the least and the greatest saponification value
     * @param asPrinted the figure as the source prints it
     * @param iodine the range of the iodine value
     * @param unsaponifiable the range of the unsaponifiable matter
     * @param acidValue the range of the acid value
     * @param provenance where it stands and where it was read
     * @throws IllegalArgumentException if no fat of this nature has such a value, or the acid value reaches above it
     */
    public FatEntry {
        Objects.requireNonNull(inci, "inci");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(nature, "nature");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(range, "range");
        Objects.requireNonNull(asPrinted, "asPrinted");
        Objects.requireNonNull(iodine, "iodine");
        Objects.requireNonNull(unsaponifiable, "unsaponifiable");
        Objects.requireNonNull(acidValue, "acidValue");
        Objects.requireNonNull(provenance, "provenance");
        // Whatever it rests on: what no fat has is refused before anybody asks for it.
        fat(inci, nature, conforming(range, provenance), acidValue, InertMatter.countedInTheValue());
    }

    /**
     * The value for a lot that is stated to conform to the source: asking for it is that statement.
     *
     * @return the range with its source
     * @throws IllegalStateException if the range is of samples, to which no lot conforms
     */
    public SaponificationValue ofConformingLot() {
        if (basis == Basis.SAMPLES) {
            throw new IllegalStateException("the range of " + Excerpt.of(name) + " in " + provenance.work()
                    + " is what samples had, and no lot conforms to samples: take an entry of a standard, or the"
                    + " certificate of the lot with SaponificationValue.ofCertificate(…)");
        }
        return conforming(range, provenance);
    }

    /**
     * The fat with this value, for a lot that is stated to conform to the source.
     *
     * @param inert what of it takes no part and is not counted in the value; there is no default
     * @return the fat under its INCI name
     * @throws IllegalStateException if the range is of samples, to which no lot conforms
     */
    public Fat fat(InertMatter inert) {
        return fat(inci, nature, ofConformingLot(), acidValue, Objects.requireNonNull(inert, "inert"));
    }

    private static SaponificationValue conforming(Interval<AlkaliNumber> range, Provenance provenance) {
        return SaponificationValue.ofStandard(
                range.least().toString(), range.greatest().toString(), provenance.source());
    }

    private static Fat fat(
            String inci,
            Fat.Nature nature,
            SaponificationValue value,
            Optional<Interval<AlkaliNumber>> acid,
            InertMatter inert) {
        Fat plain = switch (nature) {
            case TRIGLYCERIDES -> Fat.triglycerides(inci, value, inert);
            case FATTY_ACIDS -> Fat.fattyAcids(inci, value, inert);
            case WAX -> Fat.wax(inci, value, inert);
            case WAX_THAT_REACTS -> Fat.wax(inci, value, inert).whoseEstersReact();
        };
        return acid.map(ends -> plain.withAcidValue(
                        ends.least().toString(), ends.greatest().toString()))
                .orElse(plain);
    }

    /** One line to set side by side with other sources. */
    @Override
    public String toString() {
        return name + " (" + inci + "): " + range.least() + " to " + range.greatest() + ", " + basis.word() + ", "
                + provenance.source();
    }
}
