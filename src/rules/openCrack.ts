import type { CrackState } from "../logbook/piece/crackStates.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import { figure } from "./finding.ts";
import { hoursBetween } from "./stage.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"open-crack">;

/** A crack holds the piece until it is patched, and the patch until it is dry. In a part that is trimmed off it is a note. */
export const openCrack = ({ cracks, now }: Standing): readonly Found[] =>
  cracks.flatMap((one) => (one.state === "patch-dry" ? [] : [finding(one, now)]));

function finding({ crack, isTrimmedOff }: CrackState, now: number): Found {
  const { id, at, kind, where, patched } = crack;
  const variant = patched === null ? "open" : "patch-not-dry";
  return {
    rule: "open-crack",
    variant: isTrimmedOff ? "trimmed-off" : variant,
    level: isTrimmedOff ? "note" : "hold",
    figures: { ageH: figure(hoursBetween(patched?.at ?? at, now), "h") },
    texts: { where, kind },
    entries: patched === null ? [id] : [id, patched.id],
    source: "common practice, no source",
  };
}
