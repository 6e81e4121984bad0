import type { Format } from "../../base/format/units.ts";

/** A volume of mm³ as a maker would say it: small ones in cm³. */
export const litreWords = (mm3: number, format: Format): string =>
  mm3 < 1e5 ? format.show("cm3", mm3 / 1000) : format.show("litre", mm3 / 1e6);
