import { airClasses } from "../../../trade/airClasses.ts";
import { ordinaryRoom } from "../../../trade/ordinaryRoom.ts";
import type { Format } from "./units.ts";

/** "20 °C, 55%, still room": the air taken for a room that nobody has read. */
export function assumedAir(format: Format): string {
  const { airC, rh, air } = ordinaryRoom.value;
  return `${format.show("temp", airC)}, ${format.show("percent", rh)}, ${airClasses[air].label.toLowerCase()}`;
}

/** What is assumed for a coat whose air was not read, or not all of it. */
export const assumedWords = ({ readings }: { readonly readings: number }, format: Format): string =>
  readings === 0
    ? `No readings of this room: assumed ${assumedAir(format)}.`
    : `Part of its time has no room readings: assumed ${assumedAir(format)} there.`;
