import type { BucketLeft } from "../../../logbook/bucket/bucketLeft.ts";
import type { Format } from "../../base/format/units.ts";

/** "About 8 pieces left in it: 8 L above the minimum, 0.5 L a dip, 2 dips a piece." */
export function leftText({ pieces, spareL, dipL, dipsPerPiece }: BucketLeft, format: Format): string {
  const what =
    pieces === 0
      ? "Not enough left for a whole piece"
      : `About ${pieces} ${pieces === 1 ? "piece" : "pieces"} left in it`;
  return `${what}: ${format.show("litre", spareL)} above the minimum, ${format.show("litre", dipL)} per dip, ${format.number(dipsPerPiece, 1)} ${dipsPerPiece === 1 ? "dip" : "dips"} per piece.`;
}
