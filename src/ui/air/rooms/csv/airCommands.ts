import { secondsInDay as dayS } from "date-fns/constants";
import type { LogCommand } from "../../../../logbook/log/command.ts";
import { streamOf } from "../../../../logbook/entries/entry.ts";
import { ranges } from "../../../../logbook/entries/ranges.ts";
import type { AirClass } from "../../../../trade/airClasses.ts";
import type { PackedAir } from "../../../../workers/airCsv/packAir.ts";

/**
 * Readings of a file as lines of the log, at most one UTC day each, without those whose second is in `stored`.
 *
 * Pressure is kept where a whole block tells it: a block holds as many of each value as it has times.
 */
export function airCommands(
  air: PackedAir,
  options: {
    readonly roomId: string;
    readonly source: string;
    readonly moves: AirClass | null;
    readonly stored: ReadonlySet<number>;
  },
): readonly LogCommand<"air-logged">[] {
  const { roomId, source, moves, stored } = options;
  return blocksOf(air, stored).map((places) => {
    const atS = places.map((place) => air.atS[place] ?? 0);
    const [firstS = 0] = atS;
    const told = (column: Float64Array, decimals: number): readonly number[] =>
      places.map((place) => Number((column[place] ?? 0).toFixed(decimals)));
    const { pressurePa, hasPressure } = air;
    const isPressed = pressurePa !== null && places.every((place) => hasPressure?.[place] === 1);
    const body = {
      source,
      air: moves,
      afterS: atS.map((second) => second - firstS),
      // No logger tells a thousandth of a degree; a °F taken as °C would fill the log with digits.
      airC: told(air.airC, 3),
      rh: told(air.rh, 5),
    };
    return {
      do: "log",
      stream: streamOf("room", roomId),
      type: "air-logged",
      body: isPressed ? { ...body, pressurePa: told(pressurePa, 1) } : body,
      at: firstS * 1000,
    };
  });
}

export const readingCount = (commands: readonly LogCommand<"air-logged">[]): number =>
  commands.reduce((sum, { body }) => sum + body.afterS.length, 0);

/** Places of the readings of each block, in order of time. */
function blocksOf({ atS }: PackedAir, stored: ReadonlySet<number>): readonly (readonly number[])[] {
  const blocks: number[][] = [];
  let day = NaN;
  for (const [place, second] of atS.entries()) {
    if (stored.has(second)) continue;
    const open = blocks.at(-1);
    const isFull = open !== undefined && open.length >= ranges.blockReadings.high;
    if (open === undefined || isFull || Math.floor(second / dayS) !== day) blocks.push([place]);
    else open.push(place);
    day = Math.floor(second / dayS);
  }
  return blocks;
}
