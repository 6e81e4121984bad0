import type { CoatKind } from "../trade/coats.ts";
import { sealMm, stuccoOf } from "../trade/stuccos.ts";

/** Wall a coat gives by the table of stuccos, mm; slurry alone for a coat without stucco, or with an unknown one. */
export function tableMm({ stuccoId }: { readonly kind: CoatKind; readonly stuccoId: string | null }): number {
  const stucco = stuccoId === null ? null : stuccoOf(stuccoId);
  return stucco?.mmPerCoat.value ?? sealMm.value;
}
