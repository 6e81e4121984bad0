import type { Alloy } from "../../trade/metals/alloy.ts";
import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { pourGo } from "../../trade/pourGo.ts";
import { fallsShort } from "../../physics/metal/pourOrder.ts";
import { soakMinutes } from "../../physics/heat/firingLimits.ts";
import type { Pour } from "../fire/fireStates.ts";
import { metalHeatOf } from "./pourChecks.ts";
import type { HeatRead, MeltHeatRead, ShellHeat } from "../fire/heatRead.ts";
import type { PourShell } from "./pourShells.ts";
import { coldShell, shellHeatOf } from "../fire/shellHeat.ts";
import type { MetalBar } from "../fire/metalReady.ts";
import type { PourSupply } from "./pourSupply.ts";
import { openCracks, wetPatches } from "../piece/crackStates.ts";
import type { Standing } from "../piece/standing.ts";

export type WhyCode =
  | "no-shells"
  | "shells-not-here"
  | "no-review"
  | "review-hold"
  | "coats-since-review"
  | "open-crack"
  | "patch-not-dry"
  | "look-for-cracks"
  | MetalBar["code"]
  | "stop-warning"
  | "not-fired"
  | "fired-too-little"
  | "damp"
  | "dry-by-estimate"
  | "wall-fails"
  | "wall-marginal"
  | "wall-not-judged"
  | "preheat-not-begun"
  | "heat-not-read"
  | "heat-read-old"
  | "heat-too-low"
  | "heat-under-plan"
  | "not-soaked"
  | "no-vent-noted"
  | "melt-not-begun"
  | "metal-not-known"
  | "metal-not-weighed"
  | "metal-short"
  | "crucible-not-known"
  | "crucible-too-full"
  | "no-alloy"
  | "metal-not-read"
  | "metal-read-old"
  | "metal-too-cold"
  | "metal-too-hot"
  | "metal-planned-cold"
  | "metal-planned-hot"
  | "not-looked-at"
  | "tick-old"
  | "said-no";

/** A finding as the sheet reads it, whatever rule it comes from. */
export type SheetFinding = {
  readonly rule: string;
  readonly variant: string;
  readonly level: "hold" | "watch" | "note";
  readonly entries: readonly string[];
};

export type SheetShell = { readonly standing: Standing; readonly findings: readonly SheetFinding[] };

/** One thing that keeps a line from being OK. Temperatures °C, masses kg, times epoch ms. */
export type Why = {
  /** The shell it is about, by name; null where it is about all. */
  readonly shell: string | null;
  readonly code: WhyCode;
  readonly c?: number | undefined;
  readonly lowC?: number | undefined;
  readonly highC?: number | undefined;
  readonly at?: number | undefined;
  readonly minutes?: number | undefined;
  readonly wantedMin?: number | undefined;
  readonly finding?: SheetFinding | undefined;
  readonly pieceId?: string | undefined;
};

/** What stands against a line; when the reading it is OK by grows old; from when on a tick by hand counts. */
export type Told = {
  readonly why: readonly Why[];
  readonly until: number | null;
  readonly from: number;
  /** The reading it is OK by. */
  readonly read?: HeatRead | undefined;
};

const fine: Told = { why: [], until: null, from: -Infinity };
const one = (code: WhyCode, figures: Partial<Why> = {}, from = -Infinity): Told => ({
  why: [{ shell: null, code, ...figures }],
  until: null,
  from,
});

/** No log sees a crack that nobody looked for: this one always wants eyes. */
export function soundWhy({ standing: { piece, cracks } }: SheetShell): Told {
  const lastFireAt = Math.max(
    -Infinity,
    ...piece.burnouts.map(({ ended }) => ended?.at ?? -Infinity),
    ...piece.firings.map(({ at }) => at),
  );
  if (openCracks(cracks).length > 0) return one("open-crack");
  return wetPatches(cracks).length > 0 ? one("patch-not-dry") : one("look-for-cracks", {}, lastFireAt);
}

export function firedWhy({ standing: { piece }, findings }: SheetShell): Told {
  const burnt = piece.burnouts.some(({ ended }) => ended !== null && ended.result !== "stopped");
  if (piece.firings.length === 0 && !burnt) return one("not-fired");
  const last = piece.firings.at(-1);
  return findings.some(({ rule, level }) => rule === "fired-too-little" && level !== "note")
    ? one("fired-too-little", { c: last?.peakC, minutes: last?.holdMin })
    : fine;
}

export function wallWhy({ standing: { wall } }: SheetShell): Told {
  if (wall.judged === null) return one("wall-not-judged");
  if (wall.judged.word === "carries") return fine;
  return one(wall.judged.word === "marginal" ? "wall-marginal" : "wall-fails");
}

const isOld = (read: HeatRead, now: number): boolean => now - read.at >= pourGo.heatMin.value * minuteMs;
const untilOf = ({ at }: HeatRead): number => at + pourGo.heatMin.value * minuteMs;

/** A shell is hot by a reading at its heat that is not old, with its soak; before its preheat there is nothing to look at. */
export function heatWhy(
  { begunAt, last, soakedMin }: ShellHeat,
  {
    planned,
    shell,
    alloy,
    now,
  }: {
    readonly planned: Pour["plan"];
    readonly shell: PourShell | null;
    readonly alloy: Alloy | null;
    readonly now: number;
  },
): Told {
  if (begunAt === null) return one("preheat-not-begun", { c: planned.shellC, at: planned.pourAt });
  if (last === null) return one("heat-not-read", {}, begunAt);
  if (isOld(last, now)) return one("heat-read-old", { c: last.c, at: last.at }, begunAt);
  const usual = alloy === null ? null : shellHeatOf(alloy, shell?.thinnestMm ?? null);
  if (usual !== null && coldShell(usual, last.c) !== "ok")
    return one("heat-too-low", { c: last.c, at: last.at, lowC: usual.lowC });
  if (last.c < planned.shellC - pourGo.nearHeatK.value)
    return one("heat-under-plan", { c: last.c, at: last.at, lowC: planned.shellC }, begunAt);
  const wantedMin = shell === null ? 0 : soakMinutes(shell.wallMm);
  if (soakedMin !== null && soakedMin < wantedMin)
    return one("not-soaked", { c: last.c, at: last.at, minutes: soakedMin, wantedMin }, begunAt);
  return { ...fine, until: untilOf(last), read: last };
}

/** Metal is enough by the charge on the scale, less its loss. */
export function metalWhy({ metalKg, metalFrom, wantedKg }: PourSupply, { begunAt }: MeltHeatRead): Told {
  if (metalKg !== null && wantedKg !== null && fallsShort(metalKg, wantedKg)) return one("metal-short");
  if (begunAt === null) return one("melt-not-begun");
  if (metalKg === null || wantedKg === null) return one("metal-not-known", {}, begunAt);
  return metalFrom === "weighed" ? fine : one("metal-not-weighed", {}, begunAt);
}

export function fillWhy({ fill, metalFrom }: PourSupply, { begunAt }: MeltHeatRead): Told {
  if (fill !== null && !fill.fits) return one("crucible-too-full");
  if (begunAt === null) return one("melt-not-begun");
  if (fill === null) return one("crucible-not-known", {}, begunAt);
  return metalFrom === "weighed" ? fine : one("metal-not-weighed", {}, begunAt);
}

/** Metal is at its heat by a reading within its alloy's range that is not old. */
export function metalHeatWhy(
  { begunAt, last }: MeltHeatRead,
  {
    planned,
    supply,
    now,
  }: { readonly planned: Pour["plan"]; readonly supply: PourSupply; readonly now: number },
): Told {
  const isRead = last !== null && !isOld(last, now);
  const heat = metalHeatOf(supply, isRead ? last.c : planned.metalC);
  if (heat.verdict === "too-cold" || heat.verdict === "too-hot") {
    const { lowC, highC } = heat;
    return isRead
      ? one(heat.verdict === "too-cold" ? "metal-too-cold" : "metal-too-hot", {
          c: last.c,
          at: last.at,
          lowC,
          highC,
        })
      : one(heat.verdict === "too-cold" ? "metal-planned-cold" : "metal-planned-hot", {
          c: planned.metalC,
          lowC,
          highC,
        });
  }
  if (begunAt === null) return one("melt-not-begun", { c: planned.metalC, at: planned.pourAt });
  if (heat.verdict === "not-known") return one("no-alloy", {}, begunAt);
  if (last === null) return one("metal-not-read", {}, begunAt);
  return isRead
    ? { ...fine, until: untilOf(last), read: last }
    : one("metal-read-old", { c: last.c, at: last.at }, begunAt);
}
