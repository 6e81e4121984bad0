import type { Command, Decision, Refusal } from "../../src/logbook/log/command.ts";
import { decide } from "../../src/logbook/log/decide.ts";
import type { Entry, EntryBodies, EntryType } from "../../src/logbook/entries/entry.ts";

/** For tests only: one stream of any kind, told entry by entry through the same door as the app. */
export type StreamLog = {
  readonly entries: () => readonly Entry[];
  /** Logs it at that time, as if tapped then; throws where it is refused. Gives the entry's id. */
  readonly tell: <T extends EntryType>(type: T, body: EntryBodies[T], at: number) => string;
  /** Why it is refused at that time; null when it is taken. `now` when it is told later than it happened. */
  readonly refusal: <T extends EntryType>(
    type: T,
    body: EntryBodies[T],
    at: number,
    now?: number,
  ) => Refusal | null;
  readonly run: (command: Command, now: number) => Decision;
};

export function streamLog(stream: string): StreamLog {
  let entries: readonly Entry[] = [];
  let count = 0;
  const ask = (command: Command, now: number): Decision =>
    decide(entries, command, { now, zone: "UTC", device: "d", newId: () => `${stream}-${(count += 1)}` });
  const logged = (type: EntryType, body: object, at: number): Command =>
    ({ do: "log", stream, type, body, at }) as unknown as Command;
  return {
    entries: () => entries,
    run: (command, now) => {
      const decision = ask(command, now);
      if (decision.ok) entries = [...entries, ...decision.entries];
      return decision;
    },
    tell: (type, body, at) => {
      const decision = ask(logged(type, body, at), at);
      if (!decision.ok) throw new Error(`refused: ${JSON.stringify(decision.refusal)}`);
      entries = [...entries, ...decision.entries];
      return decision.entries[0]?.id ?? "";
    },
    refusal: (type, body, at, now = at) => {
      const decision = ask(logged(type, body, at), now);
      return decision.ok ? null : decision.refusal;
    },
  };
}
