/** Acids and salts that are acid in water, as a founder writes them. */
const acids =
  /\bacid|\bvinegar|\b(?:ferric|iron|cupric|copper|silver|bismuth) (?:nitrate|chloride|sulphate|sulfate)|\bnitrate|\bbisulphate|\bbisulfate|\bsal ammoniac/i;
const sulphides = /\b(?:poly)?sul(?:ph|f)ides?\b|\bliver of sul(?:ph|f)ur\b|\bsul(?:ph|f)urated potash\b/i;

/** True where one text names both an acid and a sulphide: together they give hydrogen sulphide. */
export const mixesAcidAndSulphide = (text: string): boolean => acids.test(text) && sulphides.test(text);
