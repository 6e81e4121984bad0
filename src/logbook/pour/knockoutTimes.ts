import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { usualKnockoutMin } from "../../trade/knockoutTime.ts";
import type { Pour } from "../fire/fireStates.ts";
import { faceAt, shellCooling, type ShellBed } from "../fire/shellOut.ts";
import { remembered, type Memo } from "../log/memo.ts";
import type { ShellCourse } from "./pourCourse.ts";
import { castingTimesOf, type PourShell } from "./pourShells.ts";
import type { PourSupply } from "./pourSupply.ts";

export type KnockoutTimes = {
  readonly pieceId: string;
  readonly fullAt: number;
  readonly frozenAt: number | null;
  /** Earliest to break it out. */
  readonly outAt: number;
  /** `mean` and `at-least`: by the mean or the thinnest section alone, and not before what is usual. */
  readonly from: "reckoned" | "mean" | "at-least" | "usual";
};

type Asked = {
  readonly course: ShellCourse;
  readonly shell: PourShell | undefined;
  readonly parts: Pick<PourSupply, "alloy" | "figures">;
  readonly plan: Pick<Pour["plan"], "shellC" | "metalC">;
  readonly place: ShellBed;
};

/** When a poured shell is frozen and may be broken out, epoch ms, full or not; null until metal is in it. Kept: a screen asks each second. */
export function knockoutOf({ course, shell, parts, plan, place }: Asked, memo: Memo): KnockoutTimes | null {
  const { poured, begun, out, pieceId } = course;
  if (poured === null) return null;
  const { alloy, figures } = parts;
  const metalC = poured.metalC ?? begun?.metalC ?? plan.metalC;
  const startC = out?.shellC ?? plan.shellC;
  const ofPour = [poured.at, poured.outOfKilnMin, poured.shellC, metalC, startC, alloy, figures];
  const ofShell = [shell?.wallMm, shell?.thinnestMm, shell?.modulusMm, shell?.modulusFrom, shell?.metalKg];
  const ofPlace = [place.bed, place.sandC, place.airC, place.family];
  const grounds = [...ofPour, ...ofShell, ...ofPlace];
  return remembered({ memo, kind: "knockout", id: pieceId }, grounds, (): KnockoutTimes => {
    const rows = shell === undefined ? [] : shellCooling({ ...place, wallMm: shell.wallMm, startC });
    const faceC = faceAt(rows, poured.outOfKilnMin ?? 0)?.likelyC ?? poured.shellC ?? startC;
    const times =
      shell === undefined || alloy === null || figures === null
        ? null
        : castingTimesOf({ shell, alloy, figures, metalC, faceC, place });
    const usualMs = usualKnockoutMin.value * minuteMs;
    const reckonedMs = times?.knockoutS == null ? null : times.knockoutS * 1000;
    // Only where the thickest place was measured may it be sooner than what is usual.
    const by =
      shell?.modulusFrom === "mesh" ? "reckoned" : shell?.modulusFrom === "volume" ? "mean" : "at-least";
    const frozenAt = times?.solidusS == null ? null : poured.at + times.solidusS * 1000;
    const base = { pieceId, fullAt: poured.at, frozenAt };
    if (reckonedMs === null) return { ...base, outAt: poured.at + usualMs, from: "usual" };
    const waitMs = by === "reckoned" ? reckonedMs : Math.max(usualMs, reckonedMs);
    return { ...base, outAt: poured.at + waitMs, from: by };
  });
}
