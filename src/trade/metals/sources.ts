/** Sources and notes that many rows share, so that each stands beside its figure in one word. */
export const mixedUp =
  "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass, rounded up";
export const mixedByMass =
  "estimate: from memory of Iida & Guthrie, The Physical Properties of Liquid Metals (1988), mixed by mass";
export const mixedHeat = "estimate: from memory of Iida & Guthrie, mixed by mass";
export const mixedLatent =
  "estimate: heats of fusion of the elements mixed by mass (from memory of CRC Handbook of Chemistry and Physics)";
export const copperEnthalpy =
  "estimate: from memory of NIST-JANAF enthalpies of copper, scaled by composition";
export const enthalpy = "estimate: from memory of NIST-JANAF enthalpies, scaled by composition";
export const pureMetals = "from memory of CRC Handbook of Chemistry and Physics and ASM Handbook vol. 2";
export const copperSheets = "from memory of copper-alloy data sheets";
export const asm15 = "from memory of ASM Handbook vol. 15";
export const asm2 = "from memory of ASM Handbook vol. 2";
export const kalpakjian =
  "from memory of Kalpakjian & Schmid, Manufacturing Engineering and Technology, table 10.1";
export const dooley = "W. H. Dooley, Applied Science for Metal Workers, ch. XXXI";
export const metalPractice = "common practice, no source";
export const sheet = "data sheet for UNS";

export const b584 = "trade magazine's table of ASTM B584-14 limits (September 2016, p. 36)";
export const inferred = "The table's columns were inferred: check lead against ASTM B584 itself.";

/** Names by other standards: near, never equal; each standard has limits of its own. */
export const copperNames = "from memory of EN 1982, BS 1400, DIN 1705 and SAE J461";
export const aluminiumNames =
  "a trade table of EN 1706, old BS 1490 and Aluminum Association designations, and from memory of EN 1706";

export const readsLow = "Mixing by mass reads low for silicon and aluminium; low is safe for a crucible.";
export const siliconContracts =
  "Silicon melts contract on mixing: the mixture rule gives 7200–7400, real melts are heavier; use the lower figure for a crucible's volume.";
export const aluminiumContracts =
  "The mixture rule gives 6400; melts of copper and aluminium contract on mixing by perhaps 3–6 %.";
