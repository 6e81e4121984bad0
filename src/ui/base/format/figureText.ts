import { metalOf } from "../../../logbook/piece/pieceMetal.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import type { Alloy } from "../../../trade/metals/alloy.ts";
import type { Format } from "./units.ts";

/** A head of metal, given in metres: in the unit of the lengths it is measured with. */
export const headText = (headM: number, format: Format): string => format.show("mm", headM * 1000);

/** A volume of metal or air, given in litres: by the cubic centimetre below a tenth of a litre. */
export const volumeText = (litre: number, format: Format): string =>
  litre < 0.1 ? format.show("cm3", litre * 1000) : format.show("litre", litre);

/** All the metal of a piece, casting and gating: by weight where the alloy is known, else by volume; null where no plan says. */
export function pieceMetalText(
  piece: Pick<Piece, "plan">,
  alloy: Alloy | null,
  format: Format,
): string | null {
  const kg = metalOf(piece, alloy);
  if (kg !== null) return format.show("kg", kg);
  return piece.plan.metalLitre === undefined ? null : volumeText(piece.plan.metalLitre, format);
}
