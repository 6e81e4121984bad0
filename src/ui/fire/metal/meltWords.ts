import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { chargedKg } from "../../../logbook/fire/furnaceMemory.ts";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import type { Format } from "../../base/format/units.ts";

/** A melt by its charge: "5 kg of C90300 tin bronze". */
export const meltTitle = (
  melt: Melt,
  { shop, format }: { readonly shop: Pick<Shop, "alloys">; readonly format: Format },
): string => `${format.show("kg", chargedKg(melt))} of ${alloyName(melt.plan.alloyId, shop)}`;
