namespace JarLabel.Tests;

/// <summary>Every outside source that a check or a catalog row stands on, once. The id is also what a data file's <c>source</c> says
/// before its first comma.</summary>
public static class References
{
    public const string AstmD360 = "ASTM D360";
    public const string FineWoodworking = "Fine Woodworking";
    public const string OimlR22 = "OIML R 22";
    public const string Cfr27 = "27 CFR";
    public const string NioshPocketGuide = "NIOSH Pocket Guide";
    public const string NioshIdlh = "NIOSH IDLH";
    public const string PrudentPractices = "Prudent Practices";
    public const string EchaInventory = "ECHA C&L inventory";
    public const string GisChem = "GisChem";
    public const string Clp = "CLP";
    public const string Osha1200 = "29 CFR 1910.1200";
    public const string Osha1000 = "29 CFR 1910.1000";
    public const string Osha106 = "29 CFR 1910.106";
    public const string UnGhsPaper = "ST/SG/AC.10/C.4/2008/23";
    public const string NistHandbook44 = "NIST Handbook 44";
    public const string SupplierSheet2001 = "Supplier mixing sheet, 2001";
    public const string MixingChart2013 = "Shellac Mixing Chart";
    public const string Iso18004 = "ISO/IEC 18004";
    public const string Iso7064 = "ISO/IEC 7064";
    public const string Fips180 = "FIPS 180-4";
    public const string NiteGhs = "NITE GHS results";
    public const string EngineeringToolBox = "Engineering ToolBox";
    public const string Trgs510 = "TRGS 510";
    public const string HseL138 = "HSE L138";
    public const string Osha1926 = "29 CFR 1926.152";
    public const string Usp = "USP";
    public const string Lebo = "Lebo 1921";
    public const string SolventsHandbook = "Industrial Solvents Handbook";
    public const string NistWebBook = "NIST WebBook";
    public const string SupplierSheet = "Supplier sheet";
    public const string Atsdr = "ATSDR";
    public const string AcgihVentilation = "ACGIH Industrial Ventilation";
    public const string CdcTable = "CDC Table B.1";
    public const string MixtureExposure = "Occupational mixture example";
    public const string IupacWeights = "IUPAC atomic weights";
    public const string LeChatelier = "Le Chatelier";
    public const string Iso3864 = "ISO 3864";
    public const string NistStatistics = "NIST/SEMATECH e-Handbook";
    public const string Rfc5545 = "RFC 5545";
    public const string WeibullInformation = "Weibull information";
    public const string Arrhenius = "Arrhenius";
    public const string AstmD1640 = "ASTM D1640";
    public const string AnsiZ535 = "ANSI Z535";
    public const string Rfc8010 = "RFC 8010";
    public const string Rfc8011 = "RFC 8011";
    public const string Pwg5101 = "PWG 5101.1";
    public const string Rfc1035 = "RFC 1035";

    public static IReadOnlyDictionary<string, Reference> All { get; } = new Dictionary<string, Reference>(StringComparer.Ordinal)
    {
        [AstmD360] = new("Standard Specification for Shellac Varnishes", "ASTM International", "D360-89", "read"),
        [FineWoodworking] = new("Shellac Conversion Ratios, and articles", "Fine Woodworking magazine", "as reprinted", "read"),
        [OimlR22] = new("International Alcoholometric Tables, general formula", "OIML; Directive 76/766/EEC annex", "1975", "read"),
        [Cfr27] = new("Code of Federal Regulations, title 27 (parts 19, 20, 21, 30)", "US Alcohol and Tobacco Tax and Trade Bureau", "as codified", "read"),
        [NioshPocketGuide] = new("Pocket Guide to Chemical Hazards", "NIOSH", "online edition", "read"),
        [NioshIdlh] = new("Documentation for Immediately Dangerous to Life or Health Concentrations", "NIOSH", "1994", "read"),
        [PrudentPractices] = new("Prudent Practices in the Laboratory, LCSS sheets", "US National Research Council", "1995", "read"),
        [EchaInventory] = new("Classification and Labelling Inventory", "European Chemicals Agency", "online", "read"),
        [GisChem] = new("Hazardous substance sheets", "BG RCI and BGHM", "online", "read"),
        [Clp] = new("Regulation (EC) No 1272/2008 on classification, labelling and packaging, Annex I", "European Union", "consolidated", "read"),
        [Osha1200] = new("Hazard Communication, 29 CFR 1910.1200 with Appendix A and C", "US OSHA", "2024", "read"),
        [Osha1000] = new("Air contaminants, 29 CFR 1910.1000", "US OSHA", "as codified", "read"),
        [Osha106] = new("Flammable liquids, 29 CFR 1910.106", "US OSHA", "as codified", "read"),
        [UnGhsPaper] = new("Worked examples of the additivity formula, ST/SG/AC.10/C.4/2008/23, annex 2", "UN Sub-Committee of Experts on the GHS", "2008", "read"),
        [NistHandbook44] = new("Specifications, Tolerances, and Other Technical Requirements for Weighing and Measuring Devices, appendix C", "NIST", "2024", "memory"),
        [SupplierSheet2001] = new("Mixing sheet for dry shellac", "a woodworking supplier", "2001", "read"),
        [MixingChart2013] = new("Shellac Mixing Chart", "a flake supplier", "rev. 11/13", "read"),
        [Iso18004] = new("QR code bar code symbology specification", "ISO/IEC", "2015", "read"),
        [Iso7064] = new("Check character systems", "ISO/IEC", "2003", "memory"),
        [Fips180] = new("Secure Hash Standard", "National Institute of Standards and Technology", "2015", "memory"),
        [NiteGhs] = new("GHS classification results", "National Institute of Technology and Evaluation, Japan", "online", "read"),
        [EngineeringToolBox] = new("Flash points of ethanol based water solutions", "The Engineering ToolBox", "online", "read"),
        [Trgs510] = new("Technical rules for hazardous substances: storage in non-stationary containers", "German Committee on Hazardous Substances", "as published", "read"),
        [HseL138] = new("Dangerous substances and explosive atmospheres, approved code of practice", "UK Health and Safety Executive", "as published", "read"),
        [Osha1926] = new("Flammable liquids on construction sites, 29 CFR 1926.152", "US OSHA", "as codified", "read"),
        [Usp] = new("Monographs Shellac; Pharmaceutical Glaze; Isopropyl Rubbing Alcohol", "United States Pharmacopeia", "USP28-NF23; USP32", "read"),
        [Lebo] = new("Properties of mixtures of isopropyl alcohol and water, J. Am. Chem. Soc. 43", "R. B. Lebo", "1921, points as an open-source program reprints them", "read"),
        [SolventsHandbook] = new("Industrial Solvents Handbook", "Noyes / Marcel Dekker", "as reprinted", "read"),
        [NistWebBook] = new("NIST Chemistry WebBook, SRD 69, Antoine parameters", "NIST", "online", "read"),
        [SupplierSheet] = new("Safety data sheets and product pages of solvent makers", "various", "as stored", "read"),
        [Atsdr] = new("Toxicological profile for acetone", "US Agency for Toxic Substances and Disease Registry", "draft for public comment", "read"),
        [AcgihVentilation] = new("Industrial Ventilation, a manual of recommended practice: dilution ventilation", "American Conference of Governmental Industrial Hygienists", "formula read; examples from memory", "memory"),
        [CdcTable] = new("Guidelines for Environmental Infection Control, appendix B table B.1; MMWR 1994 table S3-1", "US Centers for Disease Control and Prevention", "2003; 1994", "read"),
        [MixtureExposure] = new("Blog article on mixtures of methanol and ethyl acetate", "Affygility Solutions", "2011", "read"),
        [IupacWeights] = new("Standard atomic weights (C 12.011, H 1.008, N 14.007, O 15.999)", "IUPAC", "abridged", "memory"),
        [Iso3864] = new("Safety colours and safety signs, ISO 3864-1 annex A and ISO 3864-3 templates", "ISO", "as sign makers and a draft reprint them, seen in excerpts", "memory"),
        [Rfc5545] = new("Internet Calendaring and Scheduling Core Object Specification (iCalendar)", "IETF", "2009", "memory"),
        [WeibullInformation] = new("Asymptotic covariance of the two parameters of a Weibull distribution (1.109, 0.608 and 0.257), as books on reliability print it", "various", "-", "memory"),
        [Arrhenius] = new("Arrhenius equation, molar gas constant 8.314462618 J/(mol K) (CODATA 2018); 50 to 80 kJ/mol for acids with alcohols", "textbooks", "-", "memory"),
        [AstmD1640] = new("Drying, Curing, or Film Formation of Organic Coatings: the order of its stages (tack-free, print-free)", "ASTM", "terms from memory; first page seen in a reprint", "memory"),
        [NistStatistics] = new("e-Handbook of Statistical Methods, 8.4.1.3 and 8.2.2.1: Weibull life data, ten failures and ten units stopped at 500 h", "NIST/SEMATECH", "data and fit as public programs that cite it reprint them; the page itself from memory", "read"),
        [AnsiZ535] = new("Safety signs; letter heights as a sign maker's guide reprints ANSI Z535.2 annex, panel colours", "ANSI / NEMA", "colours from memory", "memory"),
        [Rfc8010] = new("Internet Printing Protocol/1.1: Encoding and Transport; the examples of appendix A as open-source test suites reprint them", "IETF", "2017", "read"),
        [Rfc8011] = new("Internet Printing Protocol/1.1: Model and Semantics", "IETF", "2017", "memory"),
        [Pwg5101] = new("Media Standardized Names: self-describing names and the common sheet sizes", "Printer Working Group", "5101.1", "memory"),
        [Rfc1035] = new("Domain names: message format and name compression; RFC 6762 and 6763 for browsing", "IETF", "1987; 2013", "memory"),
        [LeChatelier] = new("Le Chatelier's mixing rule for the lower flammable limit, as textbooks print it", "various", "as stored", "read"),
    };
}
