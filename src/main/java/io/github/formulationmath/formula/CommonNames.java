package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What common names in English, German and French stand for, abbreviations, and older botanical names. Common trade knowledge
 * without a published source: whoever takes a name for another because of it says so ({@link NameBook.How#COMMON_NAME}).
 */
final class CommonNames {

    /** Sure where the name says oil, absolute or the like; only a suggestion where it names the plant alone. */
    private static final String OILS = """
            LAVANDULA ANGUSTIFOLIA OIL = LAVENDER, TRUE LAVENDER, FINE LAVENDER, LAVENDEL, LAVANDE, LAVANDE VRAIE
            LAVANDULA HYBRIDA OIL = LAVANDIN, LAVANDIN GROSSO
            MENTHA PIPERITA OIL = PEPPERMINT, PFEFFERMINZ, PFEFFERMINZE, MENTHE POIVREE
            MENTHA VIRIDIS LEAF OIL = SPEARMINT, KRAUSEMINZ, KRAUSEMINZE, MENTHE VERTE
            PELARGONIUM GRAVEOLENS FLOWER OIL = GERANIUM, ROSE GERANIUM, GERANIUM BOURBON, ROSENGERANIE, ROSENGERANIEN, ROSENGERANIUM
            POGOSTEMON CABLIN OIL = PATCHOULI, PATCHOULY, PATSCHULI
            SANTALUM ALBUM OIL = SANDALWOOD, EAST INDIAN SANDALWOOD, SANDELHOLZ, BOIS DE SANTAL, SANTAL
            CITRUS LIMON PEEL OIL = LEMON, LEMON PEEL, ZITRONEN, ZITRONE, CITRON
            CITRUS AURANTIUM DULCIS PEEL OIL = ORANGE, SWEET ORANGE, ORANGE PEEL, ORANGEN, SUSSORANGEN, ORANGE DOUCE
            CITRUS AURANTIUM AMARA FLOWER OIL = NEROLI, ORANGE BLOSSOM, ORANGENBLUTEN
            CITRUS AURANTIUM AMARA PEEL OIL = BITTER ORANGE, BITTERORANGEN, POMERANZEN, ORANGE AMERE
            CITRUS AURANTIUM BERGAMIA PEEL OIL = BERGAMOT, BERGAMOTT, BERGAMOTTE, BERGAMOT FCF
            CANANGA ODORATA FLOWER OIL = YLANG YLANG, YLANG, CANANGA
            EUCALYPTUS GLOBULUS LEAF OIL = EUCALYPTUS, EUKALYPTUS, BLUE GUM
            EUGENIA CARYOPHYLLUS BUD OIL = CLOVE, CLOVE BUD, NELKEN, NELKENKNOSPEN, GIROFLE, CLOU DE GIROFLE
            EUGENIA CARYOPHYLLUS LEAF OIL = CLOVE LEAF, NELKENBLATT, NELKENBLATTER
            EUGENIA CARYOPHYLLUS STEM OIL = CLOVE STEM
            CINNAMOMUM ZEYLANICUM BARK OIL = CINNAMON, CINNAMON BARK, ZIMT, ZIMTRINDEN, CANNELLE, CANNELLE DE CEYLAN
            CINNAMOMUM CASSIA LEAF OIL = CASSIA, CHINESE CINNAMON, CASSIAZIMT
            CYMBOPOGON CITRATUS LEAF OIL = LEMONGRASS, LEMON GRASS, ZITRONENGRAS, LEMONGRAS
            JUNIPERUS VIRGINIANA WOOD OIL = CEDARWOOD, ZEDERNHOLZ, VIRGINIAN CEDARWOOD, VIRGINIA CEDARWOOD, CEDARWOOD VIRGINIA, RED CEDAR
            CEDRUS ATLANTICA WOOD OIL = CEDARWOOD, ATLAS CEDAR, ATLAS CEDARWOOD, CEDARWOOD ATLAS, ZEDERNHOLZ, ATLASZEDERN, CEDRE DE L'ATLAS
            LAURUS NOBILIS LEAF OIL = LAUREL, LAUREL LEAF, BAY LAUREL, LORBEER, LORBEERBLATT, LAURIER, LAURIER NOBLE
            JASMINUM OFFICINALE OIL = JASMINE, JASMIN
            ROSA DAMASCENA FLOWER OIL = ROSE, DAMASK ROSE, DAMASCENA ROSE, ROSEN, DAMASZENERROSEN
            MYROXYLON PEREIRAE OIL = PERU BALSAM, PERUBALSAM, BALSAM OF PERU, BAUME DU PEROU
            CUMINUM CYMINUM FRUIT OIL = CUMIN, KREUZKUMMEL
            TAGETES MINUTA FLOWER OIL = TAGETES
            OPOPONAX OIL = OPOPONAX, OPOPANAX
            """;

    /** Other names of chemicals and of whole materials, abbreviations that stand for one thing, numbers of food additives. */
    private static final String CHEMICALS = """
            SODIUM HYDROXIDE = NAOH, CAUSTIC SODA, SODA LYE, ATZNATRON, NATRONLAUGE, SOUDE CAUSTIQUE, E524
            POTASSIUM HYDROXIDE = KOH, CAUSTIC POTASH, POTASH LYE, ATZKALI, KALILAUGE, POTASSE CAUSTIQUE, E525
            ARSENIC = ARSEN
            BENZENE = BENZOL
            TOLUENE = TOLUOL
            TRICHLOROACETIC ACID = TCA, TRICHLORESSIGSAURE, ACIDE TRICHLORACETIQUE
            CALCIUM HYDROXIDE = SLAKED LIME, HYDRATED LIME, LOSCHKALK, E526
            AMMONIA = AMMONIAK, AMMONIAQUE, AMMONIA WATER, SALMIAKGEIST
            HYDROGEN PEROXIDE = H2O2, WASSERSTOFFPEROXID, WASSERSTOFFSUPEROXID, EAU OXYGENEE, PEROXYDE D'HYDROGENE
            SODIUM CARBONATE PEROXIDE = SODIUM PERCARBONATE, NATRIUMPERCARBONAT, PERCARBONATE DE SODIUM
            UREA PEROXIDE = CARBAMIDPEROXID, HYDROGEN PEROXIDE UREA
            SALICYLIC ACID = 2-HYDROXYBENZOIC ACID, O-HYDROXYBENZOIC ACID, ORTHO-HYDROXYBENZOIC ACID
            BENZOIC ACID = E210, BENZOESAURE
            SODIUM BENZOATE = E211, NA-BENZOATE
            POTASSIUM BENZOATE = E212, K-BENZOATE
            CALCIUM BENZOATE = E213
            SORBIC ACID = E200, SORBINSAURE
            POTASSIUM SORBATE = E202, K-SORBATE
            CALCIUM SORBATE = E203
            DEHYDROACETIC ACID = DEHYDRACETIC ACID, DEHYDRACETSAURE
            SODIUM DEHYDROACETATE = SODIUM DEHYDRACETATE, E266
            METHYLPARABEN = E218, METHYL P-HYDROXYBENZOATE, METHYL PARA-HYDROXYBENZOATE, METHYL 4-HYDROXYBENZOATE, P-HYDROXYBENZOIC ACID METHYL ESTER, 4-HYDROXYBENZOIC ACID METHYL ESTER
            ETHYLPARABEN = E214, ETHYL P-HYDROXYBENZOATE, ETHYL PARA-HYDROXYBENZOATE, ETHYL 4-HYDROXYBENZOATE, P-HYDROXYBENZOIC ACID ETHYL ESTER
            PROPYLPARABEN = E216, PROPYL P-HYDROXYBENZOATE, PROPYL PARA-HYDROXYBENZOATE, PROPYL 4-HYDROXYBENZOATE, P-HYDROXYBENZOIC ACID PROPYL ESTER
            BUTYLPARABEN = BUTYL P-HYDROXYBENZOATE, BUTYL 4-HYDROXYBENZOATE
            SODIUM SULFITE = E221
            SODIUM BISULFITE = E222, SODIUM HYDROGEN SULFITE
            SODIUM METABISULFITE = E223, SODIUM DISULFITE, NATRIUMDISULFIT, SODIUM PYROSULFITE
            POTASSIUM METABISULFITE = E224
            FORMIC ACID = E236, AMEISENSAURE
            SODIUM FORMATE = E237
            METHENAMINE = E239, HEXAMINE, UROTROPIN
            SODIUM NITRITE = E250
            PROPIONIC ACID = E280
            SODIUM PROPIONATE = E281
            CALCIUM PROPIONATE = E282
            BHT = E321, BUTYL HYDROXYTOLUENE, BUTYLHYDROXYTOLUOL
            OXALIC ACID = OXALSAURE
            THIOGLYCOLIC ACID = MERCAPTOACETIC ACID, THIOGLYKOLSAURE
            TITANIUM DIOXIDE = TIO2, TITANDIOXID, DIOXYDE DE TITANE
            ZINC OXIDE = ZNO, ZINC WHITE, ZINKWEISS, ZINCI OXIDUM, ZINCUM OXYDATUM, ZINCUM OXIDATUM
            RESORCINOL = RESORCIN, RESORZIN, 1,3-DIHYDROXYBENZENE, M-DIHYDROXYBENZENE
            EVERNIA PRUNASTRI EXTRACT = OAKMOSS, OAK MOSS, EICHENMOOS, MOUSSE DE CHENE
            EVERNIA FURFURACEA EXTRACT = TREEMOSS, TREE MOSS, BAUMMOOS, MOUSSE D'ARBRE
            TURPENTINE = TERPENTIN, TEREBENTHINE, GUM TURPENTINE
            TURPENTINE = TERPENTINOL
            MYROXYLON PEREIRAE RESIN = PERU BALSAM, PERUBALSAM, BALSAM PERU, BALSAM OF PERU, BAUME DU PEROU
            ROSA DAMASCENA FLOWER OIL = ROSE OTTO
            CANANGA ODORATA FLOWER OIL = YLANG YLANG COMPLETE
            QUININE = CHININ
            SELENIUM SULFIDE = SELENDISULFID
            CAMPHOR = KAMPFER, CAMPHRE
            MENTHOL = LEVOMENTHOL
            COUMARIN = CUMARIN, KUMARIN, COUMARINE
            CITRAL = ZITRAL
            LINALOOL = LINALOL
            CINNAMAL = CINNAMALDEHYDE, CINNAMIC ALDEHYDE, ZIMTALDEHYD, ALDEHYDE CINNAMIQUE
            CINNAMYL ALCOHOL = CINNAMIC ALCOHOL, ZIMTALKOHOL
            HEXYL CINNAMAL = HEXYL CINNAMALDEHYDE, ALPHA-HEXYLCINNAMALDEHYDE, HEXYL CINNAMIC ALDEHYDE, ALPHA-HEXYLCINNAMIC ALDEHYDE, HEXYLZIMTALDEHYD
            AMYL CINNAMAL = AMYL CINNAMALDEHYDE, ALPHA-AMYLCINNAMALDEHYDE, AMYL CINNAMIC ALDEHYDE, ALPHA-AMYLCINNAMIC ALDEHYDE, AMYLZIMTALDEHYD
            ANISE ALCOHOL = ANISYL ALCOHOL, P-ANISYL ALCOHOL, ANISALKOHOL
            ALPHA-ISOMETHYL IONONE = ISOMETHYL IONONE, ISO-METHYL IONONE
            METHYL EUGENOL = EUGENOL METHYL ETHER
            PHENOXYETHANOL = ETHYLENE GLYCOL MONOPHENYL ETHER, ETHYLENE GLYCOL PHENYL ETHER
            BENZYL ALCOHOL = PHENYLMETHANOL, PHENYLCARBINOL
            DICHLOROBENZYL ALCOHOL = DCBA
            IODOPROPYNYL BUTYLCARBAMATE = IPBC
            METHYLISOTHIAZOLINONE = MIT
            METHYLCHLOROISOTHIAZOLINONE AND METHYLISOTHIAZOLINONE = MCI/MI, CMIT/MIT, MCIT/MIT
            P-CHLORO-M-CRESOL = PCMC
            CHLOROXYLENOL = PCMX
            O-CYMEN-5-OL = ISOPROPYL METHYLPHENOL, IPMP
            POLYAMINOPROPYL BIGUANIDE = PHMB, POLYHEXANIDE, POLYHEXANID
            CETRIMONIUM BROMIDE = CETYLTRIMETHYLAMMONIUM BROMIDE, CTAB
            CETRIMONIUM CHLORIDE = CETYLTRIMETHYLAMMONIUM CHLORIDE, CTAC
            BEHENTRIMONIUM CHLORIDE = BEHENYL TRIMETHYL AMMONIUM CHLORIDE, BTAC
            STEARTRIMONIUM CHLORIDE = STEARYL TRIMETHYL AMMONIUM CHLORIDE
            TRIETHANOLAMINE = TROLAMINE
            ETHOXYDIGLYCOL = DEGEE, DIETHYLENE GLYCOL ETHYL ETHER
            ETIDRONIC ACID = HEDP
            TETRASODIUM ETIDRONATE = TETRASODIUM HEDP
            LAURETH-9 = POLIDOCANOL
            DIETHYLAMINO HYDROXYBENZOYL HEXYL BENZOATE = DHHB
            ETHYLHEXYL METHOXYCINNAMATE = OCTYL METHOXYCINNAMATE, OMC
            ETHYLHEXYL SALICYLATE = OCTYL SALICYLATE
            ETHYLHEXYL DIMETHYL PABA = OCTYL DIMETHYL PABA
            ETHYLHEXYL TRIAZONE = OCTYL TRIAZONE
            HOMOSALATE = HOMOMENTHYL SALICYLATE
            BENZOPHENONE-3 = BP-3
            4-METHYLBENZYLIDENE CAMPHOR = 4-MBC
            CHLORHEXIDINE DIGLUCONATE = CHLORHEXIDINDIGLUCONAT, CHLORHEXIDINE GLUCONATE
            CHLORHEXIDINE = CHLORHEXIDIN
            HEXETIDINE = HEXETIDIN
            HEXAMIDINE DIISETHIONATE = HEXAMIDINDIISETHIONAT
            CHLORAMINE T = CHLORAMIN T
            HYDROQUINONE = HYDROCHINON
            TALC = TALKUM
            ARACHIS HYPOGAEA OIL = PEANUT OIL, GROUNDNUT OIL, ARACHIS OIL, ERDNUSSOL, HUILE D'ARACHIDE
            """;

    /** The same of what Annexes II and IV name, the colorants by their colour index numbers. */
    private static final String OF_ANNEXES = """
            MERCURY = QUECKSILBER, MERCURE
            LEAD = BLEI, PLOMB
            LEAD ACETATE = BLEIACETAT, BLEI(II)-ACETAT, LEAD(II) ACETATE, ACETATE DE PLOMB
            ARSENIC = ARSEN
            IODINE = IOD, JOD, IODE
            FORMALDEHYDE = FORMALIN, FORMOL, METHANAL
            PHENOL = CARBOLIC ACID, KARBOLSAURE
            NICOTINE = NIKOTIN
            COAL TAR = STEINKOHLENTEER, GOUDRON DE HOUILLE
            ETHYL PABA = BENZOCAINE, BENZOCAIN, ETHYL 4-AMINOBENZOATE, ETHYL P-AMINOBENZOATE
            ZINC PYRITHIONE = ZPT, ZNPT, ZINKPYRITHION
            BUTYLPHENYL METHYLPROPIONAL = BMHCA
            DIETHYLHEXYL PHTHALATE = DEHP
            DIBUTYL PHTHALATE = DBP
            LAURUS NOBILIS SEED OIL = LAUREL BERRY OIL, BAY LAUREL BERRY OIL, HUILE DE BAIES DE LAURIER
            CI 14720 = AZORUBINE, AZORUBIN, CARMOISINE
            CI 15985 = SUNSET YELLOW, SUNSET YELLOW FCF
            CI 16035 = ALLURA RED, ALLURA RED AC, ALLURAROT
            CI 16255 = PONCEAU 4R
            CI 19140 = TARTRAZINE, TARTRAZIN
            CI 42090 = BRILLIANT BLUE, BRILLIANT BLUE FCF, BRILLANTBLAU
            CI 45380 = EOSIN, EOSINE, EOSIN Y
            CI 45410 = PHLOXINE B, PHLOXIN B
            CI 45430 = ERYTHROSINE, ERYTHROSIN
            CI 47005 = QUINOLINE YELLOW, CHINOLINGELB, JAUNE DE QUINOLEINE
            CI 58000 = ALIZARIN
            CI 73015 = INDIGO CARMINE, INDIGOTINE, INDIGOTIN
            CI 75470 = CARMINE, KARMIN, CARMIN
            CI 77007 = ULTRAMARINE, ULTRAMARINE BLUE, ULTRAMARIN
            CI 77288 = CHROMIUM OXIDE GREEN, CHROMIUM OXIDE GREENS
            CI 77289 = CHROMIUM HYDROXIDE GREEN
            CI 77491 = RED IRON OXIDE, EISENOXID ROT, OXYDE DE FER ROUGE
            CI 77492 = YELLOW IRON OXIDE, EISENOXID GELB, OXYDE DE FER JAUNE
            CI 77499 = BLACK IRON OXIDE, EISENOXID SCHWARZ, OXYDE DE FER NOIR
            CI 77510 = PRUSSIAN BLUE, BERLINER BLAU, BLEU DE PRUSSE
            CI 77742 = MANGANESE VIOLET
            """;

    /** Abbreviations and names that stand for several things: suggested, never taken. */
    private static final String HINTS = """
            TRIETHANOLAMINE = TEA
            DIHYDROXYACETONE = DHA
            SALICYLIC ACID = BHA
            SODIUM HYDROXIDE = LYE, LAUGE, SOUDE
            POTASSIUM HYDROXIDE = LYE, LAUGE
            LIPPIA CITRIODORA ABSOLUTE = LEMON VERBENA, VERBENA, VERVEINE, ZITRONENVERBENE
            METHYL SALICYLATE = WINTERGREEN, WINTERGRUN, GAULTHERIE
            LIQUIDAMBAR ORIENTALIS RESIN EXTRACT = STYRAX, STORAX
            LIQUIDAMBAR STYRACIFLUA BALSAM EXTRACT = STYRAX, STORAX
            """;

    /** Names of one plant, the one that the annexes use last. */
    private static final Map<String, String> PLANTS = Map.ofEntries(
            Map.entry("SYZYGIUM AROMATICUM", "EUGENIA CARYOPHYLLUS"),
            Map.entry("EUGENIA CARYOPHYLLATA", "EUGENIA CARYOPHYLLUS"),
            Map.entry("CITRUS SINENSIS", "CITRUS AURANTIUM DULCIS"),
            Map.entry("CITRUS DULCIS", "CITRUS AURANTIUM DULCIS"),
            Map.entry("CITRUS BERGAMIA", "CITRUS AURANTIUM BERGAMIA"),
            Map.entry("CITRUS AMARA", "CITRUS AURANTIUM AMARA"),
            Map.entry("CITRUS MEDICA LIMONUM", "CITRUS LIMON"),
            Map.entry("CITRUS LIMONUM", "CITRUS LIMON"),
            Map.entry("CINNAMOMUM VERUM", "CINNAMOMUM ZEYLANICUM"),
            Map.entry("CINNAMOMUM AROMATICUM", "CINNAMOMUM CASSIA"),
            Map.entry("LAVANDULA OFFICINALIS", "LAVANDULA ANGUSTIFOLIA"),
            Map.entry("LAVANDULA VERA", "LAVANDULA ANGUSTIFOLIA"),
            Map.entry("MENTHA SPICATA", "MENTHA VIRIDIS"),
            Map.entry("ALOYSIA CITRODORA", "LIPPIA CITRIODORA"),
            Map.entry("ALOYSIA CITRIODORA", "LIPPIA CITRIODORA"),
            Map.entry("ALOYSIA TRIPHYLLA", "LIPPIA CITRIODORA"),
            Map.entry("PSEUDEVERNIA FURFURACEA", "EVERNIA FURFURACEA"),
            Map.entry("MYROXYLON BALSAMUM VAR. PEREIRAE", "MYROXYLON PEREIRAE"));

    /** Plants whose oils are volatile, and that the annexes do not name: only that they smell is of interest. */
    private static final Set<String> SMELLING = keys(
            "TEA TREE, ROSEMARY, WINTERGREEN, VETIVER, PETITGRAIN, GRAPEFRUIT, MANDARIN, TANGERINE, CLEMENTINE, LIME, SAGE, CLARY SAGE,"
                    + " CHAMOMILE, ROMAN CHAMOMILE, GERMAN CHAMOMILE, BLUE CHAMOMILE, THYME, OREGANO, MARJORAM, BASIL, FRANKINCENSE,"
                    + " MYRRH, GINGER, JUNIPER, JUNIPER BERRY, PINE, SCOTS PINE, FIR, FIR NEEDLE, SPRUCE, CYPRESS, FENNEL, ANISE, ANISEED,"
                    + " STAR ANISE, BAY, NUTMEG, CARDAMOM, CORIANDER, MAY CHANG, LITSEA, VERBENA, LEMON VERBENA, MELISSA, HELICHRYSUM,"
                    + " IMMORTELLE, AMYRIS, ROSEWOOD, PALMAROSA, CITRONELLA, CAJEPUT, NIAOULI, MANUKA, RAVINTSARA, HO WOOD, YARROW,"
                    + " HYSSOP, ELEMI, BENZOIN, LABDANUM, SPIKE LAVENDER, YUZU, BLACK PEPPER, CARROT SEED, DILL, CARAWAY, CELERY,"
                    + " TEEBAUM, ROSMARIN, WINTERGRUN, MANDARINEN, LIMETTEN, SALBEI, MUSKATELLERSALBEI, KAMILLEN, KAMILLE, THYMIAN,"
                    + " MAJORAN, BASILIKUM, WEIHRAUCH, MYRRHE, MYRRHEN, INGWER, WACHOLDER, WACHOLDERBEER, KIEFERN, KIEFERNNADEL,"
                    + " LATSCHENKIEFERN, FICHTENNADEL, ZYPRESSEN, FENCHEL, ANIS, STERNANIS, MUSKAT, KARDAMOM, KORIANDER, MELISSEN,"
                    + " ARBRE A THE, TEA TREE, ROMARIN, SAUGE, CAMOMILLE, THYM, ENCENS, PAMPLEMOUSSE, GENEVRIER, CYPRES");

    /** Genera of plants whose oils are volatile, unless they are pressed from seeds. */
    private static final Set<String> GENERA = Set.of(
            ("LAVANDULA MENTHA CITRUS PELARGONIUM POGOSTEMON SANTALUM CANANGA EUCALYPTUS EUGENIA SYZYGIUM CINNAMOMUM CYMBOPOGON"
                            + " JUNIPERUS CEDRUS LAURUS JASMINUM MYROXYLON CUMINUM MELALEUCA ROSMARINUS SALVIA THYMUS ORIGANUM OCIMUM"
                            + " VETIVERIA CHRYSOPOGON BOSWELLIA COMMIPHORA ZINGIBER PINUS ABIES PICEA CUPRESSUS FOENICULUM PIMPINELLA"
                            + " ILLICIUM ANTHEMIS CHAMOMILLA MATRICARIA CHAMAEMELUM GAULTHERIA PIMENTA MYRISTICA ELETTARIA CORIANDRUM"
                            + " LITSEA LIPPIA ALOYSIA MELISSA ARTEMISIA HELICHRYSUM CISTUS AMYRIS ANIBA ACHILLEA HYSSOPUS SATUREJA"
                            + " LEPTOSPERMUM RAVENSARA CANARIUM LIQUIDAMBAR OPOPANAX BACKHOUSIA TAGETES PIPER")
                    .split(" ", -1));

    private static final Set<String> NOT_VOLATILE = Set.of(
            "SEED",
            "KERNEL",
            "HIP",
            "HIPS",
            "INFUSED",
            "MACERATED",
            "MACERATE",
            "HYDROSOL",
            "HYDROLAT",
            "WATER",
            "HYDROLATE");

    /** Genera whose oils are macerates in fat, whatever the part. */
    private static final Set<String> MACERATED =
            Set.of("CALENDULA", "HYPERICUM", "ARNICA", "SYMPHYTUM", "PLANTAGO", "BELLIS");

    private static final List<String> BEFORE = List.of(
            "HUILEESSENTIELLEDELA",
            "HUILEESSENTIELLEDE",
            "HUILEESSENTIELLED",
            "HUILEESSENTIELLE",
            "HUILEDE",
            "HUILED",
            "HEDE",
            "HED",
            "HE",
            "ESSENCEDE",
            "ABSOLUEDE",
            "OILOF",
            "ATHERISCHES",
            "ATHEROL");

    private static final List<String> BEHIND =
            List.of("ESSENTIALOIL", "OIL", "ATHERISCHESOL", "OL", "OEL", "EO", "ABSOLUTE", "ABSOLUE");

    private static final Pattern JOINTS = Pattern.compile("[ ,-]+");
    private static final Map<String, List<String>> PLANT_NAMES = read(OILS);
    private static final Map<String, List<String>> CHEMICAL_NAMES = read(CHEMICALS + OF_ANNEXES);
    private static final Map<String, List<String>> HINTED = read(HINTS);
    private static final Map<Pattern, String> TRANSLATIONS = translations();

    private CommonNames() {}

    private static Map<String, List<String>> read(String lines) {
        Map<String, List<String>> meant = new HashMap<>();
        for (String line : lines.strip().split("\n", -1)) {
            int sign = line.indexOf(" = ");
            String meaning = line.substring(0, sign).strip();
            for (String name : listed(line.substring(sign + " = ".length()).strip())) {
                List<String> all = meant.computeIfAbsent(WrittenName.looseKeyOf(name), k -> new ArrayList<>(1));
                if (!all.contains(meaning)) {
                    all.add(meaning);
                }
            }
        }
        return meant;
    }

    /** Names parted by a comma and a space; a comma alone is part of a name. */
    private static List<String> listed(String names) {
        List<String> all = new ArrayList<>();
        int from = 0;
        for (int to = names.indexOf(", "); to >= 0; to = names.indexOf(", ", from)) {
            all.add(names.substring(from, to));
            from = to + ", ".length();
        }
        all.add(names.substring(from));
        return all;
    }

    private static Set<String> keys(String names) {
        Set<String> all = new HashSet<>();
        for (String name : listed(names)) {
            all.add(WrittenName.looseKeyOf(name));
        }
        return Set.copyOf(all);
    }

    /** German and French into English, in this order; what comes out is looked for, nothing else. */
    private static Map<Pattern, String> translations() {
        Map<Pattern, String> all = new LinkedHashMap<>();
        String lines = """
                ^ACIDE (.*)IQUE$ -> $1IC ACID
                ^ALCOOL (.*YL)IQUE$ -> $1 ALCOHOL
                ^(CHLORURE|BROMURE|SULFURE|[A-Z]*OXYDE|[A-Z]*ATE|[A-Z]*ITE) (?:DE |D')(.*)$ -> $2 $1
                YLE(?= |$) -> YL
                (CHLOR|BROM|SULF)URE$ -> $1IDE
                OXYDE$ -> OXIDE
                ^NATRIUM -> SODIUM
                ^KALIUM -> POTASSIUM
                ^ZINK -> ZINC
                WASSERSTOFF -> HYDROGEN
                HARNSTOFF$ -> UREA
                SAURE$ -> IC ACID
                ALKOHOL$ -> ALCOHOL
                ALDEHYD$ -> ALDEHYDE
                ([AI])T$ -> $1TE
                (?<!AC)ID$ -> IDE
                AMIN$ -> AMINE
                NITRIL$ -> NITRILE
                (IS|AS)ON$ -> $1ONE
                (NON|ENON|RON|TON)(?=$|-) -> $1E
                (LEN|NEN)$ -> $1E
                PARABENE?$ -> PARABEN
                """;
        for (String line : lines.strip().split("\n", -1)) {
            String[] sides = line.strip().split(" -> ", -1);
            all.put(Pattern.compile(sides[0]), sides[1]);
        }
        return all;
    }

    /** What a name stands for; several names if it stands for several. */
    static List<String> meantBy(String normal) {
        String key = key(normal);
        List<String> chemicals = CHEMICAL_NAMES.getOrDefault(key, List.of());
        return chemicals.isEmpty() ? List.copyOf(all(PLANT_NAMES, plants(key))) : chemicals;
    }

    /** What a name may stand for: the plant alone, an abbreviation of several things, a common name among other words. */
    static Set<String> of(String normal) {
        String key = key(normal);
        Set<String> plants = plants(key);
        Set<String> found = new LinkedHashSet<>(CHEMICAL_NAMES.getOrDefault(key, List.of()));
        found.addAll(HINTED.getOrDefault(key, List.of()));
        found.addAll(PLANT_NAMES.getOrDefault(key, List.of()));
        found.addAll(all(PLANT_NAMES, plants));
        found.addAll(all(HINTED, plants));
        if (found.isEmpty() && !plants.isEmpty()) {
            found.addAll(within(normal));
        }
        return found;
    }

    /** Whether it is the common name of a volatile oil, said to be one. */
    static boolean isNamedOil(String normal) {
        Set<String> plants = plants(key(normal));
        return !plants.isEmpty()
                && plants.stream().anyMatch(plant -> PLANT_NAMES.containsKey(plant) || SMELLING.contains(plant));
    }

    /** Whether it begins with the name of a plant whose oils are volatile. */
    static boolean isAromaticGenus(String normal) {
        return GENERA.contains(genus(normal));
    }

    /** Whether it begins with the name of a plant whose oils are macerates. */
    static boolean isMaceratedGenus(String normal) {
        return MACERATED.contains(genus(normal));
    }

    private static String genus(String normal) {
        int end = normal.indexOf(' ');
        return end > 0 ? normal.substring(0, end) : "";
    }

    private static Set<String> all(Map<String, List<String>> names, Set<String> keys) {
        Set<String> found = new LinkedHashSet<>();
        keys.forEach(key -> found.addAll(names.getOrDefault(key, List.of())));
        return found;
    }

    /** What is left of a loose key when a word for oil is taken from its beginning or its end; none if it has no such word. */
    static Set<String> plants(String key) {
        Set<String> left = new LinkedHashSet<>();
        for (String word : BEFORE) {
            if (key.startsWith(word)) {
                left.add(key.substring(word.length()));
            }
        }
        for (String word : BEHIND) {
            if (key.endsWith(word)) {
                left.add(key.substring(0, key.length() - word.length()));
            }
        }
        if (!left.isEmpty()) {
            for (String word : List.copyOf(left)) {
                BEHIND.stream()
                        .filter(word::endsWith)
                        .forEach(end -> left.add(word.substring(0, word.length() - end.length())));
            }
        }
        return left;
    }

    /** Common names that stand among other words: lavender in "spike lavender oil". */
    private static Set<String> within(String normal) {
        List<String> words = List.of(JOINTS.split(withoutAccents(normal), -1));
        Set<String> found = new LinkedHashSet<>();
        if (!Collections.disjoint(words, NOT_VOLATILE)) {
            return found;
        }
        for (int length = Math.min(words.size() - 1, 3); length > 0 && found.isEmpty(); length--) {
            for (int from = 0; from + length <= words.size(); from++) {
                String some = WrittenName.looseKey(String.join("", words.subList(from, from + length)));
                found.addAll(PLANT_NAMES.getOrDefault(some, List.of()));
            }
        }
        return found;
    }

    static String key(String normal) {
        return WrittenName.looseKeyOf(withoutAccents(normal));
    }

    private static String withoutAccents(String text) {
        return SubstanceName.withoutAccents(text);
    }

    /** A chemical name with its German or French words put into English, and without accents. */
    static String inEnglish(String normal) {
        String plain = withoutAccents(normal);
        String english = plain;
        for (Map.Entry<Pattern, String> word : TRANSLATIONS.entrySet()) {
            Matcher found = word.getKey().matcher(english);
            english = found.find() ? found.replaceAll(word.getValue()) : english;
        }
        return english;
    }

    /** The same preparation under the name that the annexes use for the plant; the name itself if it is no such plant. */
    static String underAcceptedName(String normal) {
        for (Map.Entry<String, String> plant : PLANTS.entrySet()) {
            if (normal.startsWith(plant.getKey() + " ")) {
                return plant.getValue() + normal.substring(plant.getKey().length());
            }
        }
        return normal;
    }

    /** Every name that another is said to stand for, so that a test can look for slips of the pen. */
    static Set<String> targets() {
        Set<String> all = new HashSet<>();
        for (Map<String, List<String>> names : List.of(PLANT_NAMES, CHEMICAL_NAMES)) {
            names.values().forEach(all::addAll);
        }
        return all;
    }
}
