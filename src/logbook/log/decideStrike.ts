import type { Decision, Moment, StrikeCommand } from "./command.ts";
import type { Entry } from "../entries/entry.ts";
import { isStart, parseStream } from "../entries/entryKinds.ts";
import { isSetGoing } from "./fireGuard.ts";
import { newEntry } from "./newEntry.ts";
import type { SettledLog } from "./settledLog.ts";

type Asked = Pick<StrikeCommand, "stream" | "entryId" | "reason">;

/**
 * Strikes an entry. Striking a strike brings its mark back, and takes out the replacement that came with it, so
 * that undoing a correction leaves one entry, not two.
 */
export function decideStrike(
  { entries, settled: { standing, strikes } }: SettledLog,
  { stream, entryId, reason }: Asked,
  moment: Moment,
): Decision {
  const entry = entries.find(({ id }) => id === entryId);
  if (entry === undefined) return { ok: false, refusal: { code: "not-found", entryId } };
  const counts = entry.type === "entry-struck" ? strikes.get(entry.body.struckId) === entry : null;
  if (strikes.has(entryId) || counts === false)
    return { ok: false, refusal: { code: "already-struck", entryId } };
  const count = carriedBy(entry, standing);
  const { kind } = parseStream(stream) ?? {};
  if (kind !== undefined && count > 0)
    return { ok: false, refusal: { code: "start-carries-entries", kind, entryId, count } };
  const replacement = entry.type === "entry-struck" ? entry.body.replacedBy : undefined;
  const taken = [entryId, ...standing.map(({ id }) => id).filter((id) => id === replacement)];
  return {
    ok: true,
    entries: taken.map((struckId) =>
      newEntry({ stream, type: "entry-struck", body: { struckId, reason }, at: moment.now }, moment),
    ),
  };
}

/** How many entries stand on this one: all others on a start, and on the start of a run or melt all after its plan. */
function carriedBy({ type }: Entry, standing: readonly Entry[]): number {
  if (isStart(type)) return standing.length - 1;
  if (!isSetGoing(type)) return 0;
  return standing.filter(
    (other) => !isStart(other.type) && other.type !== type && other.type !== "run-changed",
  ).length;
}
