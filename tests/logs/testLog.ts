import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { Command, Decision, Moment } from "../../src/logbook/log/command.ts";
import { decide } from "../../src/logbook/log/decide.ts";
import type { Entry, EntryBodies, EntryType } from "../../src/logbook/entries/entry.ts";
import type { PiecePlan } from "../../src/logbook/entries/pieceBodies.ts";
import { foldPiece } from "../../src/logbook/log/fold.ts";
import type { AirReading, Piece, Recipe, Room } from "../../src/logbook/piece/piece.ts";
import { builtInRecipe, builtInRoom, builtInShop } from "../../src/logbook/piece/builtIns.ts";
import type { Surroundings } from "../../src/logbook/piece/surroundings.ts";

/** For tests only: an invented piece, told entry by entry through the same door as the app. */
/** A Monday morning in June. */
export const monday = Date.UTC(2025, 5, 2, 8);

export const testStream = "piece/heron";

export type TestLog = {
  readonly entries: () => readonly Entry[];
  readonly piece: () => Piece;
  /** Logs it at that time, as if tapped then; throws where it is refused. */
  readonly tell: <T extends EntryType>(type: T, body: EntryBodies[T], at: number) => string;
  readonly coat: (at: number, body?: Partial<EntryBodies["coat-dipped"]>) => string;
  readonly ask: (command: Command, now: number) => Decision;
  readonly run: (command: Command, now: number) => readonly Entry[];
};

export function testLog(plan: Partial<PiecePlan> = {}, start: number = monday): TestLog {
  let entries: readonly Entry[] = [];
  let count = 0;
  const moment = (now: number): Moment => ({
    now,
    zone: "Europe/Lisbon",
    device: "phone",
    newId: () => `e${String((count += 1)).padStart(4, "0")}`,
  });
  const piece = (): Piece => {
    const folded = foldPiece("heron", entries);
    if (folded === null) throw new Error("the test's piece was never started");
    return folded;
  };
  const ask = (command: Command, now: number): Decision => decide(entries, command, moment(now));
  const run = (command: Command, now: number): readonly Entry[] => {
    const decision = ask(command, now);
    if (!decision.ok) throw new Error(`refused: ${JSON.stringify(decision.refusal)}`);
    entries = [...entries, ...decision.entries];
    return decision.entries;
  };
  const tell: TestLog["tell"] = (type, body, at) => {
    const command = { do: "log", stream: testStream, type, body, at } as unknown as Command;
    return run(command, at)[0]?.id ?? "";
  };
  const coat: TestLog["coat"] = (at, body = {}) => {
    const number = piece().coats.length + 1;
    return tell("coat-dipped", { ...backup, number, step: number - 1, ...body }, at);
  };
  tell("piece-started", { plan: { name: "Heron", ...plan }, roomId: "first" }, start);
  return { entries: () => entries, piece, tell, coat, ask, run };
}

export const backup: EntryBodies["coat-dipped"] = {
  number: 1,
  step: null,
  kind: "backup",
  stuccoId: "16-30",
  bucketId: "first-backup",
  roomId: "first",
  prewet: false,
};

/** Readings of steady air, every `everyH` hours from `from` on. */
export function steadyAir(
  { from, hours, everyH = 2 }: { from: number; hours: number; everyH?: number },
  air: Partial<AirReading> = {},
): readonly AirReading[] {
  return Array.from({ length: Math.floor(hours / everyH) + 1 }, (_, i) => ({
    id: `r${i}`,
    at: from + i * everyH * hourMs,
    airC: 22,
    rh: 0.5,
    air: "rack-fan",
    ...air,
  }));
}

/** The built-in shop, its first room with these readings. */
export function testShop(
  readings: readonly AirReading[],
  more: { shop?: Surroundings["shop"]; recipes?: readonly Recipe[]; rooms?: readonly Room[] } = {},
): Surroundings {
  const room = builtInRoom("first");
  const recipe = builtInRecipe("start-general");
  const recipes = [...(recipe ? [recipe] : []), ...(more.recipes ?? [])];
  const rooms = [...(room ? [room] : []), ...(more.rooms ?? [])];
  return {
    rooms: new Map(rooms.map((one) => [one.id, one])),
    readings: new Map([["first", readings]]),
    recipes: new Map(recipes.map((one) => [one.id, one])),
    buckets: new Map(),
    shop: more.shop ?? builtInShop,
  };
}
