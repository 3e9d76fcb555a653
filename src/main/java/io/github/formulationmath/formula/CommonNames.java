package io.github.formulationmath.formula;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What common names in English, German and French may stand for. Common trade knowledge without a published source: it only
 * suggests, nothing is ever taken for the same because of it.
 */
final class CommonNames {

    private static final String OILS =
            """
            LAVANDULA ANGUSTIFOLIA OIL = LAVENDER, LAVENDEL, LAVANDE
            LAVANDULA HYBRIDA OIL = LAVANDIN
            MENTHA PIPERITA OIL = PEPPERMINT, PFEFFERMINZ, MENTHE POIVREE
            MENTHA VIRIDIS LEAF OIL = SPEARMINT, KRAUSEMINZ, MENTHE VERTE
            PELARGONIUM GRAVEOLENS FLOWER OIL = GERANIUM, ROSE GERANIUM, ROSENGERANIE, ROSENGERANIUM
            POGOSTEMON CABLIN OIL = PATCHOULI, PATSCHULI
            SANTALUM ALBUM OIL = SANDALWOOD, SANDELHOLZ, BOIS DE SANTAL, SANTAL
            CITRUS LIMON PEEL OIL = LEMON, ZITRONEN, ZITRONE, CITRON
            CITRUS AURANTIUM DULCIS PEEL OIL = ORANGE, SWEET ORANGE, ORANGEN, ORANGE DOUCE
            CITRUS AURANTIUM AMARA FLOWER OIL = NEROLI, ORANGE BLOSSOM
            CITRUS AURANTIUM BERGAMIA PEEL OIL = BERGAMOT, BERGAMOTT, BERGAMOTTE
            CANANGA ODORATA FLOWER OIL = YLANG YLANG, CANANGA
            EUCALYPTUS GLOBULUS LEAF OIL = EUCALYPTUS, EUKALYPTUS
            EUGENIA CARYOPHYLLUS BUD OIL = CLOVE, CLOVE BUD, NELKEN, GIROFLE
            CINNAMOMUM ZEYLANICUM BARK OIL = CINNAMON, CINNAMON BARK, ZIMT, ZIMTRINDEN, CANNELLE
            CYMBOPOGON CITRATUS LEAF OIL = LEMONGRASS, LEMON GRASS, ZITRONENGRAS, LEMONGRAS
            JUNIPERUS VIRGINIANA WOOD OIL = CEDARWOOD, ZEDERNHOLZ, VIRGINIAN CEDARWOOD
            CEDRUS ATLANTICA WOOD OIL = CEDARWOOD, ATLAS CEDAR, ATLAS CEDARWOOD, ATLASZEDERN, CEDRE DE L'ATLAS
            LAURUS NOBILIS LEAF OIL = LAUREL, BAY LAUREL, LORBEER, LAURIER
            JASMINUM OFFICINALE OIL = JASMINE, JASMIN
            ROSA DAMASCENA FLOWER OIL = ROSE, ROSE OTTO, DAMASK ROSE, ROSEN
            MYROXYLON PEREIRAE OIL = PERU BALSAM, PERUBALSAM, BALSAM OF PERU
            CUMINUM CYMINUM FRUIT OIL = CUMIN, KREUZKUMMEL
            TURPENTINE = TERPENTIN, TEREBENTHINE
            """;

    private static final Map<String, List<String>> MEANT = meant();
    private static final Map<String, String> WORDS = words();

    private CommonNames() {}

    private static Map<String, List<String>> meant() {
        Map<String, List<String>> meant = new HashMap<>();
        for (String line : OILS.strip().split("\n", -1)) {
            String[] sides = line.strip().split(" = ", -1);
            for (String name : sides[1].split(", ", -1)) {
                meant.computeIfAbsent(WrittenName.looseKey(name), k -> new ArrayList<>(1))
                        .add(sides[0]);
            }
        }
        return meant;
    }

    /** German and French words and endings; applied one after another. */
    private static Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("NATRIUM", "SODIUM");
        words.put("KALIUM", "POTASSIUM");
        words.put("SAURE", "IC ACID");
        words.put("ACIDE ", "");
        words.put("ALKOHOL", "ALCOHOL");
        words.put("ALCOOL", "ALCOHOL");
        words.put("CHLORID", "CHLORIDE");
        words.put("CHLORIDEE", "CHLORIDE");
        words.put("TITANDIOXID", "TITANIUM DIOXIDE");
        words.put("ZINKOXID", "ZINC OXIDE");
        words.put("OXYDE DE ZINC", "ZINC OXIDE");
        words.put("ZINK", "ZINC");
        words.put("PARABENE", "PARABEN");
        return words;
    }

    /** Oils that a common name may mean, with or without the word oil: "lavender oil", "Lavendelöl", "huile essentielle de lavande". */
    static List<String> of(String normal) {
        String key = WrittenName.looseKey(withoutAccents(normal))
                .replaceFirst("^(?:HUILEESSENTIELLEDE|HUILEDE|ESSENCEDE|OILOF)", "")
                .replaceFirst("(?:ESSENTIALOIL|OIL|ATHERISCHESOL|OEL|OL)$", "");
        return MEANT.getOrDefault(key, List.of());
    }

    private static String withoutAccents(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{Mn}", "");
    }

    /** A chemical name with its German or French words put into English. */
    static String inEnglish(String normal) {
        String plain = withoutAccents(normal);
        String english = plain;
        for (Map.Entry<String, String> word : WORDS.entrySet()) {
            english = english.replace(word.getKey(), word.getValue());
        }
        return english.equals(plain) ? normal : english;
    }
}
