import type { Alloy } from "./alloy.ts";
import { aluminiumBronzes } from "./aluminiumBronzes.ts";
import { aluminiums } from "./aluminiums.ts";
import { brasses } from "./brasses.ts";
import { highTinBronzes } from "./highTinBronzes.ts";
import { otherMetals } from "./otherMetals.ts";
import { siliconBronzes } from "./siliconBronzes.ts";
import { tinBronzes } from "./tinBronzes.ts";

/** Every metal of the table; a new one is a row in its family's file. */
export const alloys: readonly Alloy[] = [
  ...siliconBronzes,
  ...tinBronzes,
  ...highTinBronzes,
  ...brasses,
  ...aluminiumBronzes,
  ...aluminiums,
  ...otherMetals,
];

export function alloyOf(id: string): Alloy | null {
  return alloys.find((alloy) => alloy.id === id) ?? null;
}
