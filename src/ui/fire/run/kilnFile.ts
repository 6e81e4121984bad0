import { secondsInDay as daySeconds } from "date-fns/constants";
import type { LogCommand } from "../../../logbook/log/command.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { KilnCsv } from "../../../workers/kilnCsv.ts";
import type { KilnCsvAnswer } from "../../../workers/kilnCsvClient.ts";

type Read = Extract<KilnCsv, { ok: true }>;

export const fileFaultWords: Readonly<Record<Extract<KilnCsvAnswer, { ok: false }>["why"], string>> = {
  "no-rows": "No rows of readings were found. The file needs one column of times and one of temperatures.",
  "no-time": "No column of times was found: dates, times of day, or minutes or seconds from the start.",
  "no-temperature": "No column of temperatures was found.",
  aborted: "Import cancelled.",
  failed: "The file could not be read.",
  "no-worker": "The file could not be read on this device: close other pages and try again.",
  "none-in-run": "None of its readings falls within this run. Is the logger’s clock right?",
};

/** A file's readings as lines of the log, a day at most each, without the moments that are in the log already. */
export function loggedCommands(
  { atS, kilnC }: Pick<Read, "atS" | "kilnC">,
  {
    runId,
    source,
    stored,
  }: { readonly runId: string; readonly source: string; readonly stored: ReadonlySet<number> },
): readonly LogCommand<"run-logged">[] {
  const blocks: { readonly startS: number; readonly places: number[] }[] = [];
  for (const [place, second] of atS.entries()) {
    if (stored.has(second * 1000)) continue;
    const open = blocks.at(-1);
    const isFull =
      open === undefined ||
      second - open.startS > daySeconds ||
      open.places.length >= ranges.blockReadings.high;
    if (isFull) blocks.push({ startS: second, places: [place] });
    else open.places.push(place);
  }
  return blocks.map(({ startS, places }) => ({
    do: "log",
    stream: streamOf("run", runId),
    type: "run-logged",
    at: startS * 1000,
    body: {
      source: source.slice(0, 200) || "file",
      afterS: places.map((place) => (atS[place] ?? 0) - startS),
      kilnC: places.map((place) => kilnC[place] ?? 0),
    },
  }));
}
