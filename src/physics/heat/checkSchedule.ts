import { burnAir } from "../drying/burnAir.ts";
import { bandMinutes } from "./bandMinutes.ts";
import type { FiringLimits } from "./firingLimits.ts";
import { speaksOn } from "./firingRamps.ts";
import { burnSeconds } from "./firingSchedule.ts";
import { requireEveryFigure } from "../stats/range.ts";
import type { ReasonCode, Segment, Stretch } from "./firingSegments.ts";
import { scheduleCurve } from "./firingSegments.ts";
import { kilnRateKPerH } from "./kilnPower.ts";

export type ScheduleFinding = {
  readonly code:
    | "too-fast"
    | "kiln-cannot"
    | "over-kiln"
    | "steam-hold-short"
    | "tray-in-too-hot"
    | "no-drain"
    | "drain-short"
    | "openings-unchecked"
    | "vents-shut"
    | "heat-release"
    | "finish-short";
  readonly level: "hold" | "watch";
  /** The segment it speaks of; null for the schedule as a whole. */
  readonly segment: number | null;
  /** The limit that is passed, where there is one. */
  readonly limit: ReasonCode | null;
  readonly figures: Readonly<Record<string, number>>;
};

/** Rounding, and a controller's whole kelvins, are no fault. */
const slack = 1.02;

/** A schedule, edited or not, against the limits of its piece: every segment and then the whole. */
export function checkSchedule(
  segments: readonly Segment[],
  { limits, startC }: { limits: FiringLimits; startC: number },
): readonly ScheduleFinding[] {
  requireEveryFigure("limits", limits);
  const curve = scheduleCurve(segments, startC);
  const loadedAt = limits.loadsHot
    ? segments.findIndex((p) => p.kind === "instruction" && p.code === "load-hot")
    : -1;
  const ramps = segments.flatMap((part, i) => {
    const stretch = curve[i];
    if (part.kind !== "ramp" || stretch === undefined) return [];
    const isEmpty = limits.loadsHot && (loadedAt === -1 || i < loadedAt);
    return rampFindings(part.rateKPerH, { stretch, limits, isEmpty });
  });
  const loaded = loadedAt === -1 ? curve : curve.slice(loadedAt + 1);
  return [
    ...ramps,
    ...steamFinding(curve, limits),
    ...trayFinding(segments, { curve, limits }),
    ...drainFindings(segments, { curve: loaded, limits }),
    ...ventFinding(segments, { curve, limits }),
    ...heatFinding(segments, { limits, startC }),
    ...finishFinding(loaded, limits),
  ];
}

function rampFindings(
  rateKPerH: number,
  { stretch, limits, isEmpty }: { stretch: Stretch; limits: FiringLimits; isEmpty: boolean },
): readonly ScheduleFinding[] {
  const { fromC, toC, segment } = stretch;
  if (fromC === toC) return [];
  const { kiln, loadKg } = limits;
  const found: ScheduleFinding[] = [];
  if (toC > kiln.maxC)
    found.push({ code: "over-kiln", level: "hold", segment, limit: null, figures: { toC, maxC: kiln.maxC } });
  const canKPerH = kilnRateKPerH({ kiln, loadKg: isEmpty ? 0 : loadKg, atC: Math.min(toC, kiln.maxC) });
  if (toC > fromC && rateKPerH > canKPerH * slack)
    found.push({
      code: "kiln-cannot",
      level: "watch",
      segment,
      limit: "kiln-power-limit",
      figures: { rateKPerH, canKPerH, toC },
    });
  for (const limit of isEmpty ? [] : limits.rates)
    if (speaksOn(limit, stretch) && rateKPerH > limit.rateKPerH * slack)
      found.push({
        code: "too-fast",
        level: "hold",
        segment,
        limit: limit.code,
        figures: { rateKPerH, limitKPerH: limit.rateKPerH, fromC: limit.fromC, toC: limit.toC },
      });
  return found;
}

/** What was run before the curve first passes a temperature. */
function until(curve: readonly Stretch[], aboveC: number): readonly Stretch[] {
  const past = curve.findIndex(({ toC }) => toC > aboveC);
  return past === -1 ? curve : curve.slice(0, past + 1);
}

function steamFinding(curve: readonly Stretch[], { steamHold }: FiringLimits): readonly ScheduleFinding[] {
  if (steamHold === null) return [];
  const { fromC, toC, minutes } = steamHold;
  const heldMin = bandMinutes(until(curve, toC), { lowC: fromC, highC: toC });
  if (heldMin >= minutes - 0.5 || !curve.some((stretch) => stretch.toC > toC)) return [];
  return [
    {
      code: "steam-hold-short",
      level: "hold",
      segment: null,
      limit: "steam",
      figures: { heldMin, neededMin: minutes, fromC, toC },
    },
  ];
}

const tells = (segments: readonly Segment[], code: string): number =>
  segments.findIndex((part) => part.kind === "instruction" && part.code === code);

function drainFindings(
  segments: readonly Segment[],
  { curve, limits: { drain, pattern } }: { curve: readonly Stretch[]; limits: FiringLimits },
): readonly ScheduleFinding[] {
  if (pattern === null) return [];
  const found: ScheduleFinding[] = [];
  if (tells(segments, "openings-checked") === -1 || tells(segments, "cup-down") === -1)
    found.push({
      code: "openings-unchecked",
      level: "hold",
      segment: null,
      limit: "drain-window",
      figures: {},
    });
  if (drain === null) return found;
  const { fromC, toC, minutes } = drain;
  const heldMin = bandMinutes(until(curve, toC), { lowC: fromC, highC: toC });
  if (heldMin < minutes - 0.5)
    found.push({
      // The way through the window takes minutes of its own; without a hold nothing has time to run.
      code: heldMin < minutes / 2 ? "no-drain" : "drain-short",
      level: pattern.isWax ? "hold" : "watch",
      segment: null,
      limit: "drain-window",
      figures: { heldMin, neededMin: minutes, fromC, toC },
    });
  return found;
}

/** A tray of wax stands in the kiln from the start until a step takes it out; nothing before that may be hotter. */
function trayFinding(
  segments: readonly Segment[],
  { curve, limits: { tray } }: { curve: readonly Stretch[]; limits: FiringLimits },
): readonly ScheduleFinding[] {
  if (tray === null) return [];
  const { mostC } = tray;
  const outAt = tells(segments, "tray-out");
  const withTray = outAt === -1 ? curve : curve.slice(0, outAt + 1);
  const tooHot = withTray.find(({ fromC, toC }) => Math.max(fromC, toC) > mostC);
  if (tooHot === undefined) return [];
  const hottestC = Math.max(...withTray.map(({ fromC, toC }) => Math.max(fromC, toC)));
  return [
    {
      code: "tray-in-too-hot",
      level: "hold",
      segment: tooHot.segment,
      limit: "wax-flash-point",
      figures: { hottestC, mostC },
    },
  ];
}

function ventFinding(
  segments: readonly Segment[],
  { curve, limits: { pattern, loadsHot } }: { curve: readonly Stretch[]; limits: FiringLimits },
): readonly ScheduleFinding[] {
  if (pattern === null) return [];
  const opened = tells(segments, "vents-open");
  const smokes = loadsHot
    ? tells(segments, "load-hot")
    : curve.findIndex(({ toC }) => toC > pattern.burnFromC);
  if (smokes === -1 || (opened !== -1 && opened < smokes)) return [];
  const figures = { fromC: pattern.burnFromC, toC: pattern.burnToC };
  return [{ code: "vents-shut", level: "hold", segment: smokes, limit: "decomposition", figures }];
}

function heatFinding(
  segments: readonly Segment[],
  { limits, startC }: { limits: FiringLimits; startC: number },
): readonly ScheduleFinding[] {
  const { pattern, kiln, loadsHot } = limits;
  const burnS = burnSeconds(segments, { limits, startC });
  // A flash's heat is a note of its plan: no edit of a segment changes it.
  if (pattern === null || burnS === null || loadsHot) return [];
  const { heatKW, limitKW } = burnAir({ pattern, burnS, volumeL: kiln.volumeL });
  if (heatKW <= limitKW * slack) return [];
  return [
    {
      code: "heat-release",
      level: "watch",
      segment: null,
      limit: "heat-release",
      figures: { heatKW, limitKW },
    },
  ];
}

function finishFinding(curve: readonly Stretch[], { finish }: FiringLimits): readonly ScheduleFinding[] {
  if (finish === null) return [];
  const { atLeastC, minutes, code } = finish;
  const heldMin = bandMinutes(curve, { lowC: atLeastC, highC: Infinity });
  if (heldMin >= minutes - 0.5) return [];
  return [
    {
      code: "finish-short",
      level: "watch",
      segment: null,
      limit: code,
      figures: { heldMin, neededMin: minutes, atLeastC },
    },
  ];
}
