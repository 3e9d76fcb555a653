package io.github.formulationmath.annex;

import io.github.formulationmath.formula.SubstanceName;

/** The form in which the names of the lists are compared: that of {@link SubstanceName}, with two orthographies made one. */
final class Spelling {

    private Spelling() {}

    static String of(String name) {
        return loose(SubstanceName.normalise(name));
    }

    /** From a name in normal form. */
    static String loose(String normal) {
        String key = normal;
        key = key.indexOf("SULPH") < 0 ? key : key.replace("SULPH", "SULF");
        key = key.indexOf("HYDROCHLORIDE") < 0 ? key : key.replace("HYDROCHLORIDE", "HCL");
        key = key.indexOf("ALUMINIUM") < 0 ? key : key.replace("ALUMINIUM", "ALUMINUM");
        key = key.indexOf("OESTR") < 0 ? key : key.replace("OESTR", "ESTR");
        return key.indexOf("NO. ") < 0 ? key : key.replace("NO. ", "NO ");
    }
}
