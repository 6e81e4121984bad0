import type { Run } from "../fire/fireStates.ts";
import type { Stamps } from "../log/memo.ts";
import type { LearnedDrying } from "../drying/learnedDrying.ts";
import type { AirReading, Bucket, Recipe, Room, Shop } from "./piece.ts";

/** All that the sums need beside the piece itself. */
export type Surroundings = {
  readonly rooms: ReadonlyMap<string, Room>;
  /** Readings of each room, oldest first: those of the time any piece asked about hung, from two days before its first coat, and the last one. */
  readonly readings: ReadonlyMap<string, readonly AirReading[]>;
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly buckets: ReadonlyMap<string, Bucket>;
  /** Kiln runs the pieces asked about were in, and those that are lit; left out where nobody looked. */
  readonly runs?: ReadonlyMap<string, Run> | undefined;
  readonly shop: Shop;
  /** What the shop has learned of its drying from coats it saw dry; left out or null while it has learned nothing. */
  readonly learned?: LearnedDrying | null | undefined;
  /** The stamps of all streams above and of the pieces asked about, and of what was learned (`learningStamp`); left out where nothing was read from a store. */
  readonly stamps?: Stamps | undefined;
};
