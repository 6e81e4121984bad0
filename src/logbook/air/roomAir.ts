import type { DryStep } from "../../physics/drying/dryStep.ts";
import { dryStep } from "../../physics/drying/dryStep.ts";
import { airClasses } from "../../trade/airClasses.ts";
import type { AirLine, Cut } from "./airLine.ts";
import { airLine, countUpTo } from "./airLine.ts";
import type { Memo } from "../log/memo.ts";
import { remembered } from "../log/memo.ts";
import type { AirReading } from "../piece/piece.ts";

/** A stretch of steady air, epoch ms; the last one of a room has no end. */
export type AirStretch = { readonly from: number; readonly to: number; readonly step: DryStep };

/** A room's air as one line of stretches, from half a day before its first reading to the end of time. */
export type RoomAir = Pick<AirLine, "readings" | "pressurePa" | "startsAt" | "forecast"> & {
  readonly pocketSM: number;
  /** The index of the stretch that holds this time; 0 before the start. */
  readonly indexAt: (at: number) => number;
  readonly stretch: (index: number) => AirStretch | null;
  /** What a stretch is known by: shared by all lines of the room that are the same there. */
  readonly cutAt: (index: number) => Cut | null;
  /** The reading in force at this time: the last one before it, else the first. */
  readonly readingAt: (at: number) => AirReading;
};

export type AirOptions = {
  readonly altitudeM: number;
  readonly pocketSM: number;
  /**
   * Where the room's last line is kept, with what the readings are known by; without it a new list of readings is read
   * from its first to its last.
   */
  readonly kept?: { readonly roomId: string; readonly memo: Memo; readonly mark: unknown } | undefined;
};

type OfReadings = {
  readonly lines: Map<number, AirLine | null>;
  readonly airs: Map<string, RoomAir | null>;
};

/** A list of readings never changes, so the list itself is the key. */
const known = new WeakMap<readonly AirReading[], OfReadings>();

/**
 * The air of a room for pieces with this pocket; null where it has no reading that can be used. Kept as long as
 * the same list of readings comes back, so that two hundred pieces read their room once.
 *
 * Past the last reading the forecast starts from that reading, not from now: as long as nothing new is read, a
 * ready time stands still while the clock goes on.
 */
export function roomAir(
  readings: readonly AirReading[],
  { altitudeM, pocketSM, kept }: AirOptions,
): RoomAir | null {
  const ofReadings = known.get(readings) ?? { lines: new Map(), airs: new Map() };
  known.set(readings, ofReadings);
  const key = `${altitudeM} ${pocketSM}`;
  const air = ofReadings.airs.get(key);
  if (air !== undefined) return air;
  const line = lineOf(readings, ofReadings, { altitudeM, kept });
  const made = line && airOfLine(line, pocketSM);
  ofReadings.airs.set(key, made);
  return made;
}

function lineOf(
  readings: readonly AirReading[],
  { lines }: OfReadings,
  { altitudeM, kept }: Omit<AirOptions, "pocketSM">,
): AirLine | null {
  const ready = lines.get(altitudeM);
  if (ready !== undefined) return ready;
  const make = (before: AirLine | null): { readonly line: AirLine | null } => ({
    line: airLine(readings, { altitudeM, before }),
  });
  const { line } = kept
    ? remembered<ReturnType<typeof make>>(
        { memo: kept.memo, kind: "line", id: `${kept.roomId} ${altitudeM}` },
        [kept.mark],
        (before) => make(before?.line ?? null),
      )
    : make(null);
  lines.set(altitudeM, line);
  return line;
}

/** Stretches are read when a coat first walks through them: most of a forecast never is. */
function airOfLine(line: AirLine, pocketSM: number): RoomAir {
  const { readings, cuts } = line;
  const [first] = readings;
  if (first === undefined) throw new RangeError("a line of air must have a reading, found none");
  const made: (AirStretch | undefined)[] = [];
  const stretch = (index: number): AirStretch | null => {
    const ready = made[index];
    if (ready) return ready;
    const cut = cuts[index];
    if (cut === undefined) return null;
    const fresh = { from: cut.at, to: cuts[index + 1]?.at ?? Infinity, step: stepOf(cut, pocketSM) };
    made[index] = fresh;
    return fresh;
  };
  return {
    readings,
    pressurePa: line.pressurePa,
    startsAt: line.startsAt,
    forecast: line.forecast,
    pocketSM,
    stretch,
    indexAt: (time) => Math.max(0, countUpTo(cuts, time) - 1),
    cutAt: (index) => cuts[index] ?? null,
    readingAt: (at) => readings[Math.max(0, countUpTo(readings, at) - 1)] ?? first,
  };
}

function stepOf({ interval, steps }: Cut, pocketSM: number): DryStep {
  const ready = steps.get(pocketSM);
  if (ready) return ready;
  const filmWM2K = interval.filmWM2K ?? airClasses.still.filmWM2K;
  const step = dryStep(interval, { filmWM2K, pocketSM });
  steps.set(pocketSM, step);
  return step;
}
