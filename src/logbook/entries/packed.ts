import type { EntryBodies, EntryType } from "./entry.ts";

/** When the last thing an entry tells of happened: its own time, or the last reading of a logger's block. */
export const untilOf = ({
  at,
  body,
}: {
  readonly at: number;
  readonly body: EntryBodies[EntryType];
}): number => ("afterS" in body ? at + (body.afterS.at(-1) ?? 0) * 1000 : at);
