import type { Feed } from "../../../geometry/hotSpots.ts";
import type { PatternStudy } from "./patternStudy.ts";

/** Where hot metal stays in reach of the piece: its gates and feeders. */
export const feedsOf = ({ marks }: Pick<PatternStudy, "marks">): readonly Feed[] =>
  marks
    .filter(({ kind }) => kind === "gate" || kind === "feeder")
    .map(({ point, diameterMm }) => ({ point, radius: diameterMm / 2 }));

/** What the order of freezing hangs on beside the shape. */
export const feedsKey = (study: Pick<PatternStudy, "marks" | "hollowsAre">, mmPerUnit: number): string =>
  JSON.stringify([feedsOf(study), mmPerUnit, ...(study.hollowsAre === undefined ? [] : [study.hollowsAre])]);
