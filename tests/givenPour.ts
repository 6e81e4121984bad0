import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { readingsOf } from "../src/logbook/air/airLog.ts";
import { builtInShop, firstRoomId } from "../src/logbook/piece/builtIns.ts";
import type { Command } from "../src/logbook/log/command.ts";
import { decide } from "../src/logbook/log/decide.ts";
import { streamOf, type Entry, type EntryBodies, type EntryType } from "../src/logbook/entries/entry.ts";
import type { PiecePlan } from "../src/logbook/entries/pieceBodies.ts";
import { stepsOf } from "../src/logbook/pour/pourSteps.ts";
import { testShop } from "./logs/testLog.ts";
import { goBound, goHistory, goStanding, type GoStanding } from "../src/rules/pourGo.ts";
import { pourKnownAt, type PourLog } from "../src/rules/pourLog.ts";
import type { SheetLine } from "../src/logbook/pour/pourSheet.ts";
import { dayOne, givenCoated } from "./givenPiece.ts";

/** The pour of the tests is planned for minute 240 of this day. */
export const pourMin = 240;
export const pourDayOne = dayOne + 140 * 60 * minuteMs;
export const minute = (min: number): number => pourDayOne + Math.round(min * minuteMs);

export const pieceId = "piece-of-the-test";
export const pieceStream = streamOf("piece", pieceId);
export const pourStream = streamOf("pour", "p");
export const runStream = streamOf("run", "r");
export const meltStream = streamOf("melt", "m");

/** Ticked by hand for a go; the rest ticks itself in `givenReady`. */
export const ticked = [
  "shell-sound",
  "vents-noted",
  "crucible-fill",
  "vents-open",
  "face-shield",
  "leathers-gloves-boots",
  "ingot-mould-hot-dry",
  "tools-hot-dry",
  "path-clear",
  "second-person",
  "sand-and-extinguisher",
  "no-water",
  "ventilation",
] as const;

export type GivenPour = {
  /** A line that happened at that minute of the day, and was written down then or at `written`. */
  readonly tell: <T extends EntryType>(
    stream: string,
    min: number,
    type: T,
    body: EntryBodies[T],
    written?: number,
  ) => string;
  readonly run: (command: Command, min: number) => readonly Entry[];
  readonly log: () => PourLog;
  readonly go: (min: number) => GoStanding;
  readonly line: (id: string, min: number) => SheetLine | undefined;
  /** A go as the sheet logs it, bound to what is known then. */
  readonly giveGo: (min: number, name?: string) => string;
  readonly because: (min: number) => readonly string[];
};

/** A fired and reviewed shell, and a pour of it with a planned kiln run and a planned melt: nothing measured yet. */
export function givenPour(
  plan: Partial<EntryBodies["pour-planned"]> = {},
  piecePlan: Partial<PiecePlan> = {},
): GivenPour {
  const piece = givenCoated({ name: "Gate finial", metalKg: 4, ...piecePlan });
  const review = { name: "Ada", verdict: "clear" as const, passed: [], safety: 3 };
  piece.log(121, "review-signed", review);
  piece.log(122, "burnout-started", {});
  piece.log(130, "burnout-ended", { result: "clean" });
  piece.log(131, "shell-fired", { peakC: 880, holdMin: 60 });
  const entries: Entry[] = [...piece.entries()];
  let made = 0;
  const run = (command: Command, min: number): readonly Entry[] => {
    const own = entries.filter(({ stream }) => stream === command.stream);
    const decision = decide(own, command, {
      now: minute(min),
      zone: "Europe/Rome",
      device: "d-test",
      newId: () => `p${String(++made).padStart(4, "0")}`,
    });
    if (!decision.ok) throw new Error(`refused: ${JSON.stringify(decision.refusal)}`);
    entries.push(...decision.entries);
    return decision.entries;
  };
  const tell: GivenPour["tell"] = (stream, min, type, body, written = min) => {
    const command = { do: "log", stream, type, body, at: minute(min) } as unknown as Command;
    return run(command, written).at(-1)?.id ?? "";
  };
  const room = entries.filter(({ stream }) => stream === streamOf("room", firstRoomId));
  const around = testShop(readingsOf(room), { shop: builtInShop });
  const log = (): PourLog => ({ id: "p", entries: [...entries], around });
  const go = (min: number): GoStanding => {
    const standing = goStanding(log(), minute(min));
    if (standing === null) throw new Error("the pour was never planned");
    return standing;
  };
  const day: EntryBodies["pour-planned"] = {
    pourAt: minute(pourMin),
    pieceIds: [pieceId],
    runId: "r",
    meltId: "m",
    bed: "air",
    shellC: 650,
    metalC: 1150,
    steps: stepsOf({ kilnMin: 120, sandMin: null, crucibleMin: 20, meltMin: 30 }),
    ...plan,
  };
  tell(runStream, 0, "run-planned", {
    kilnId: null,
    purpose: "preheat",
    pieceIds: [pieceId],
    startC: 20,
    segments: [
      { kind: "ramp", toC: 650, rateKPerH: 600 },
      { kind: "hold", atC: 650, minutes: 60 },
    ],
  });
  tell(meltStream, 0, "melt-planned", {
    furnaceId: null,
    alloyId: "c87300",
    pieceIds: [pieceId],
    items: [{ name: "ingot", massKg: 6, alloyId: "c87300" }],
    pourC: 1150,
  });
  tell(pourStream, 0, "pour-planned", day);
  return {
    tell,
    run,
    log,
    go,
    line: (id, min) => go(min).known.lines.find((line) => line.id === id),
    giveGo: (min, name = "Ada") => {
      const known = pourKnownAt(log(), minute(min));
      if (known === null) throw new Error("the pour was never planned");
      return tell(pourStream, min, "pour-decided", { go: true, name, passed: [], bound: goBound(known) });
    },
    because: (min) => {
      const past = goHistory(log(), minute(min)).at(-1);
      return (past?.lapse?.because ?? []).map((one) =>
        one.kind === "stop-warning"
          ? `stop-warning ${one.finding.rule}`
          : one.kind === "line"
            ? `line ${one.item} ${one.why.map(({ code }) => code).join()}`
            : one.kind === "plan-moved"
              ? `plan-moved ${one.part}`
              : one.kind === "tick-withdrawn"
                ? `tick-withdrawn ${one.item}`
                : one.kind,
      );
    },
  };
}

/** The kiln lit and read at its heat for over an hour, the charge weighed, the metal read. Every line is OK at minute 210. */
export function givenReady(
  plan: Partial<EntryBodies["pour-planned"]> = {},
  piecePlan: Partial<PiecePlan> = {},
): GivenPour {
  const day = givenPour(plan, piecePlan);
  day.tell(runStream, 60, "run-started", { kilnC: 20 });
  for (const min of [130, 160, 190, 209]) day.tell(runStream, min, "run-read", { kilnC: 650 });
  day.tell(meltStream, 170, "melt-started", { hotFurnace: false, weighedKg: 6 });
  day.tell(meltStream, 208, "melt-read", { metalC: 1150 });
  for (const item of ticked) day.tell(pourStream, 205, "pour-item-checked", { item, ok: true });
  return day;
}
