import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { Pour } from "../../../logbook/fire/fireStates.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import { castingTimesOf, type PourShell } from "../../../logbook/pour/pourShells.ts";
import { faceAt, shellCooling, type ShellBed } from "../../../logbook/fire/shellOut.ts";
import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import type { PourParts } from "./pourParts.ts";

export type KnockoutTimes = {
  readonly pieceId: string;
  readonly fullAt: number;
  readonly frozenAt: number | null;
  /** Earliest to break it out. */
  readonly outAt: number;
  /** `at-least`: by the thinnest section alone, and not before what is usual. */
  readonly from: "reckoned" | "at-least" | "usual";
};

type Asked = {
  readonly course: ShellCourse;
  readonly shell: PourShell | undefined;
  readonly parts: PourParts;
  readonly plan: Pick<Pour["plan"], "shellC" | "metalC">;
  readonly place: ShellBed;
};

/** The sums take some milliseconds, and the screen asks every second. */
const kept = new Map<string, KnockoutTimes>();

/** When a full shell is frozen and may be broken out; null until it is full. */
export function knockoutOf({ course, shell, parts, plan, place }: Asked): KnockoutTimes | null {
  const { full, begun, out, pieceId } = course;
  if (full === null) return null;
  const { alloy, figures } = parts;
  const key = JSON.stringify([course, shell, alloy?.id, plan.shellC, plan.metalC, place]);
  const known = kept.get(key);
  if (known !== undefined) return known;
  const metalC = full.metalC ?? begun?.metalC ?? plan.metalC;
  const startC = out?.shellC ?? plan.shellC;
  const rows = shell === undefined ? [] : shellCooling({ ...place, wallMm: shell.wallMm, startC });
  const faceC = faceAt(rows, full.outOfKilnMin ?? 0)?.likelyC ?? full.shellC ?? startC;
  const times =
    shell === undefined || alloy === null || figures === null
      ? null
      : castingTimesOf({ shell, alloy, figures, metalC, faceC, place });
  const usualMs = usualKnockoutMin.value * minuteMs;
  const reckonedMs = times?.knockoutS == null ? null : times.knockoutS * 1000;
  const isLeast = shell?.modulusFrom === "thinnest";
  const found: KnockoutTimes = {
    pieceId,
    fullAt: full.at,
    frozenAt: times?.solidusS == null ? null : full.at + times.solidusS * 1000,
    outAt: full.at + (reckonedMs === null ? usualMs : isLeast ? Math.max(usualMs, reckonedMs) : reckonedMs),
    from: reckonedMs === null ? "usual" : isLeast ? "at-least" : "reckoned",
  };
  if (kept.size > 50) kept.clear();
  kept.set(key, found);
  return found;
}
