import type { BurnAir } from "../drying/burnAir.ts";
import { burnAir, flashBurnS } from "../drying/burnAir.ts";
import type { FiringFor, FiringLimits } from "./firingLimits.ts";
import { requireWithin } from "../stats/range.ts";
import { fireGoalC, firingLimits, firingPractice, soakMinutes } from "./firingLimits.ts";
import { rampsBetween } from "./firingRamps.ts";
import type { InstructionCode, Reason, ReasonCode, Segment } from "./firingSegments.ts";
import { scheduleCurve, secondsUp } from "./firingSegments.ts";

export type FiringRefusal =
  | {
      readonly kind: "refused";
      /** A wax pattern can't be dried hot: it would melt in a wet shell. Dry it at room temperature. */
      readonly code: "damp-wax" | "damp-flash" | "pattern-inside";
    }
  | {
      readonly kind: "refused";
      /** The kiln does not reach what bonds the shell, or what a flash or the preheat asks. */
      readonly code: "kiln-below-bond" | "kiln-below-flash" | "kiln-below-preheat" | "hotter-than-preheat";
      readonly maxC: number;
      readonly neededC: number;
    }
  | {
      readonly kind: "refused";
      /** The kiln is hotter already than where a shell that is not dry gives its water up. */
      readonly code: "kiln-too-hot-for-damp";
      readonly startC: number;
      readonly holdC: number;
    }
  | {
      readonly kind: "refused";
      /** The staged way begins below where the pattern runs out or smokes; hotter, it is a hot load in all but name. */
      readonly code: "kiln-too-hot-for-staged";
      readonly startC: number;
      readonly leaveC: number;
    };

export type FiringNote = {
  readonly code:
    | "wax-melts-slowly"
    | "wax-burns-inside"
    | "flash-shock"
    | "fired-cool"
    | "devitrifies"
    | "heat-release-over"
    | "reheat-after-1100";
  readonly figures: Readonly<Record<string, number>>;
};

export type FiringPlan = {
  readonly kind: "plan";
  readonly segments: readonly Segment[];
  readonly limits: FiringLimits;
  readonly notes: readonly FiringNote[];
  /** Null where nothing burns. */
  readonly air: BurnAir | null;
};

/**
 * A firing made for this piece: what is in the shell, how thick and how damp it is, what the kiln can do.
 *
 * It never controls a kiln; every figure of practice in it is `firingPractice`. A plan keeps all of its own
 * limits, and `checkSchedule` judges it after someone has changed it.
 */
export function planFiring(of: FiringFor): FiringPlan | FiringRefusal {
  const limits = firingLimits(of);
  const refusal = refusalOf(of, limits);
  if (refusal !== null) return refusal;
  const segments =
    of.purpose === "preheat"
      ? preheatOnly(of, limits)
      : [...burnAndFire(of, limits), ...afterFire(of, limits)];
  const { pattern, kiln } = of;
  const burnS = burnSeconds(segments, { limits, startC: of.startC });
  const air = pattern === null || burnS === null ? null : burnAir({ pattern, burnS, volumeL: kiln.volumeL });
  return { kind: "plan", segments, limits, notes: notesOf(of, { limits, air }), air };
}

/** Seconds a pattern burns in: a flash's own, else the plan's way through its smoke; null where it never gets there. */
export function burnSeconds(
  segments: readonly Segment[],
  { limits: { pattern, loadsHot }, startC }: { limits: FiringLimits; startC: number },
): number | null {
  if (pattern === null) return null;
  requireWithin("massKg", pattern.massKg, { low: 0, high: 1000, unit: "kg (not g)" });
  if (pattern.massKg === 0) return null;
  if (loadsHot) return flashBurnS(pattern);
  const seconds = secondsUp(scheduleCurve(segments, startC), {
    fromC: pattern.burnFromC,
    toC: pattern.burnToC,
  });
  return seconds > 0 ? seconds : null;
}

const tell = (code: InstructionCode, why: ReasonCode, minutes?: number): Segment => ({
  kind: "instruction",
  code,
  minutes,
  reasons: [{ code: why, figures: minutes === undefined ? {} : { minutes } }],
});
const hold = (atC: number, minutes: number, ...reasons: readonly Reason[]): Segment => ({
  kind: "hold",
  atC,
  minutes: Math.ceil(minutes),
  reasons,
});
const because = (code: ReasonCode, figures: Reason["figures"] = {}): Reason => ({ code, figures });

/** Kiln off, tray out, door shut: it goes on from there. */
const trayOut = ({ mostC }: { readonly mostC: number }): Segment => ({
  ...tell("tray-out", "wax-flash-point", firingPractice.trayOutMin),
  reasons: [because("wax-flash-point", { mostC })],
});

/** Practice's slopes by the top of a stretch, K/h; while a pattern is inside, slower at first and through its smoke. */
function practiceOf({ pattern }: FiringFor): (topC: number) => number {
  return (topC) => (pattern === null || topC > 450 ? 300 : topC > 260 ? 200 : 250);
}

function burnAndFire(of: FiringFor, limits: FiringLimits): readonly Segment[] {
  const { pattern } = of;
  const fireC = fireGoalC(of);
  const firing = [fireHold(fireC, limits), tell("carbon-checked", "carbon-burn-off")];
  if (pattern !== null && limits.loadsHot) return [...flash(of, limits), ...firing];
  const climb = climber(of, limits);
  const parts: Segment[] = [];
  if (pattern !== null)
    parts.push(
      tell("extraction-on", "decomposition"),
      tell("openings-checked", "drain-window"),
      tell("cup-down", "drain-window"),
    );
  if (limits.tray !== null) parts.push(tell("tray-in", "drain-window"));
  parts.push(...dryOut(climb, limits));
  if (pattern !== null) {
    if (pattern.drainC !== null && limits.drain !== null) {
      parts.push(...climb(pattern.drainC), tell("drain-watched", "drain-window"));
      const { fromC, toC, minutes } = limits.drain;
      parts.push(hold(pattern.drainC, minutes, because("drain-window", { fromC, toC })));
      if (limits.tray !== null) parts.push(trayOut(limits.tray));
    }
    const { burnFromC: fromC, burnToC: toC } = pattern;
    parts.push(...climb(fromC - 10), {
      ...tell("vents-open", "decomposition"),
      reasons: [because("decomposition", { fromC, toC })],
    });
  }
  return [...parts, ...climb(fireC), ...firing];
}

function flash(of: FiringFor, limits: FiringLimits): readonly Segment[] {
  const fireC = fireGoalC(of);
  const { flashDrainMin } = firingPractice;
  return [
    ...rampsBetween({ fromC: of.startC, toC: fireC, limits, practiceKPerH: () => null, isEmpty: true }),
    tell("extraction-on", "decomposition"),
    tell("vents-open", "decomposition"),
    tell("openings-checked", "drain-window"),
    tell("cup-down", "drain-window"),
    ...(of.waxLeaves === "floor" ? [tell("pan-outside", "drain-window")] : []),
    tell("load-hot", "drain-window", 2),
    tell("drain-watched", "drain-window"),
    hold(fireC, flashDrainMin, because("drain-window", { minutes: flashDrainMin })),
  ];
}

/** A shell that is not dry gives its water up before it may go on. */
function dryOut(climb: (toC: number) => readonly Segment[], { steamHold }: FiringLimits): readonly Segment[] {
  if (steamHold === null) return [];
  const { fromC, toC, minutes } = steamHold;
  const { steamHoldC } = firingPractice;
  return [...climb(steamHoldC), hold(steamHoldC, minutes, because("steam", { fromC, toC, minutes }))];
}

function fireHold(fireC: number, { finish }: FiringLimits): Segment {
  const { atLeastC = fireC, minutes = firingPractice.fireMin, code = "sintering" as const } = finish ?? {};
  return hold(fireC, minutes, because(code, { minutes, atLeastC }));
}

function afterFire(of: FiringFor, limits: FiringLimits): readonly Segment[] {
  const fireC = fireGoalC(of);
  const toC = of.after === "pour" ? (of.preheatC ?? fireC) : inspectFromC;
  const way =
    Math.abs(toC - fireC) < 1
      ? []
      : rampsBetween({ fromC: fireC, toC, limits, practiceKPerH: practiceOf({ ...of, pattern: null }) });
  return of.after === "pour" ? [...way, ...keptHot(toC, of)] : [...way, tell("inspect-cold", "practice")];
}

/** Below this a shell may be taken out into the room to cool (common practice, no source). */
const inspectFromC = 80;

function preheatOnly(of: FiringFor, limits: FiringLimits): readonly Segment[] {
  const { preheatC = fireGoalC(of) } = of;
  const climb = climber(of, limits);
  return [...dryOut(climb, limits), ...climb(preheatC), ...keptHot(preheatC, of)];
}

function keptHot(atC: number, { shell }: FiringFor): readonly Segment[] {
  const minutes = soakMinutes(shell.wallMm);
  return [hold(atC, minutes, because("soak", { minutes })), tell("keep-hot", "soak")];
}

/** Ramps upwards from wherever the last one ended; none where it is as hot already. */
function climber(of: FiringFor, limits: FiringLimits): (toC: number) => readonly Segment[] {
  let atC = of.startC;
  return (toC) => {
    if (toC <= atC) return [];
    const ramps = rampsBetween({ fromC: atC, toC, limits, practiceKPerH: practiceOf(of) });
    atC = toC;
    return ramps;
  };
}

function refusalOf(of: FiringFor, { loadsHot }: FiringLimits): FiringRefusal | null {
  const { purpose, pattern, damp, kiln } = of;
  const { bondC, flashC, steamHoldC } = firingPractice;
  const refuse = (
    code: Extract<FiringRefusal, { neededC: number }>["code"],
    neededC: number,
  ): FiringRefusal => ({
    kind: "refused",
    code,
    maxC: kiln.maxC,
    neededC,
  });
  if (purpose !== "burnout" && pattern !== null) return { kind: "refused", code: "pattern-inside" };
  if (damp !== "dry" && pattern?.isWax === true) return { kind: "refused", code: "damp-wax" };
  if (damp !== "dry" && loadsHot) return { kind: "refused", code: "damp-flash" };
  if (damp !== "dry" && of.startC > steamHoldC)
    return { kind: "refused", code: "kiln-too-hot-for-damp", startC: of.startC, holdC: steamHoldC };
  if (pattern !== null && !loadsHot) {
    const leaveC = Math.min(pattern.drainC ?? pattern.burnFromC, pattern.burnFromC);
    if (of.startC > leaveC)
      return { kind: "refused", code: "kiln-too-hot-for-staged", startC: of.startC, leaveC };
  }
  const pours = purpose === "preheat" || of.after === "pour";
  if (pours && (of.preheatC ?? 0) > kiln.maxC) return refuse("kiln-below-preheat", of.preheatC ?? 0);
  if (purpose === "preheat") {
    const goalC = of.preheatC ?? fireGoalC(of);
    return of.startC > goalC ? refuse("hotter-than-preheat", of.startC) : null;
  }
  if (fireGoalC(of) < bondC) return refuse("kiln-below-bond", bondC);
  return loadsHot && fireGoalC(of) < flashC ? refuse("kiln-below-flash", flashC) : null;
}

function notesOf(
  of: FiringFor,
  { limits, air }: { limits: FiringLimits; air: BurnAir | null },
): readonly FiringNote[] {
  const { shell, pattern, purpose } = of;
  const { firedC, devitrifyC } = firingPractice;
  const fireC = fireGoalC(of);
  const fires = purpose !== "preheat";
  const all: readonly (readonly [boolean, FiringNote])[] = [
    [
      pattern?.isWax === true && !limits.loadsHot,
      { code: "wax-melts-slowly", figures: { massKg: pattern?.massKg ?? 0 } },
    ],
    [
      pattern?.isWax === true && of.waxLeaves === "no",
      { code: "wax-burns-inside", figures: { massKg: pattern?.massKg ?? 0 } },
    ],
    [
      limits.loadsHot && (!shell.bearsFlash || shell.wallMm > 10),
      { code: "flash-shock", figures: { wallMm: shell.wallMm } },
    ],
    [fires && fireC < firedC, { code: "fired-cool", figures: { fireC, firedC } }],
    [fires && fireC > devitrifyC, { code: "devitrifies", figures: { fireC, devitrifyC } }],
    [of.seenAbove1100, { code: "reheat-after-1100", figures: { fromC: 180, toC: 300 } }],
    [
      air?.isTooMuch === true,
      { code: "heat-release-over", figures: { heatKW: air?.heatKW ?? 0, limitKW: air?.limitKW ?? 0 } },
    ],
  ];
  return all.flatMap(([speaks, note]) => (speaks ? [note] : []));
}
