import { practice } from "../../trade/practice.ts";
import { touchesDry } from "./bareDrying.ts";
import { firedDryAt, firstOf, measuredDry } from "./coverAnswer.ts";
import { wettedAt } from "./dryMinimum.ts";
import type { Stay } from "../air/hanging.ts";
import { airAt } from "../air/hanging.ts";
import type { Piece } from "../piece/piece.ts";
import type { CoatDrying, FinalDry, FireAnswer } from "../piece/standing.ts";

/**
 * May the shell go in the kiln, as far as its water goes? Review, rule, kiln plan and every screen read this answer.
 *
 * Dry from the least wait of its last drying (see `finalDry`: the cautious end for the slowest place and the hours,
 * in air no damper than 70 %), from the moment it was measured dry where that speaks for the whole shell, or by fire
 * since the last wetting. A weight that stands still in damper air only shows what that air leaves in the gel, so it
 * doesn't count. A touch never does. `now` decides the state alone; the times follow log and air.
 */
export function fireAnswer(
  piece: Piece,
  {
    outer,
    whole,
    stays,
    now,
  }: {
    /** Its drying with no touch in it: see `bareDrying`. */
    readonly outer: CoatDrying;
    /** Its last drying; null where fire is over. */
    readonly whole: FinalDry | null;
    readonly stays: readonly Stay[];
    readonly now: number;
  },
): FireAnswer {
  const { evidence } = outer;
  const speaksForAll = evidence?.says === "dry" && evidence.whole;
  const measured = measuredDry(outer).filter(
    ({ at, by }) =>
      speaksForAll && (by !== "steady" || (airAt(stays, at)?.reading.rh ?? 0) <= practice.rhFinalDry.value),
  );
  // An ordinary room, taken for granted where nobody read it, gives a coat its times and lets no shell into fire.
  const isUnread = outer.basis.readings === 0;
  const waited =
    whole === null || whole.least.at === null || isUnread
      ? []
      : [{ at: whole.least.at, by: byOf[whole.least.reason] }];
  const cold = firstOf<FireAnswer["by"]>([...measured, ...waited]);
  const first = firstOf<FireAnswer["by"]>([
    ...(cold === null ? [] : [cold]),
    { at: firedDryAt(piece, outer, now), by: "fire" },
  ]);
  const reason = first !== null ? null : isUnread ? "no-readings" : reasonOf(whole);
  const isDry = first !== null && first.at <= now;
  return {
    coat: outer.coat,
    state: isDry ? "dry" : reason === "no-readings" && evidence?.says !== "wet" ? "unknown" : "drying",
    dryAt: first?.at ?? null,
    by: first?.by ?? null,
    coldAt: cold?.at ?? null,
    airAt: whole?.sumAt ?? null,
    wettedAt: wettedAt(outer.coat),
    hours: whole?.practice ?? null,
    place: whole?.places[0]?.geometry ?? piece.plan.geometry ?? "open",
    touchedAt: touchesDry(piece, { coat: outer.coat, from: wettedAt(outer.coat) }).at(-1) ?? null,
    reason,
  };
}

const byOf = { sum: "air", practice: "hours", "damp-air": "damp-air" } as const;

const reasonOf = (whole: FinalDry | null): FireAnswer["reason"] =>
  whole === null || whole.least.at !== null ? null : whole.least.reason;
