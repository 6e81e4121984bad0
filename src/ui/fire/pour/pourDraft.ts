import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import type { PourBodies, PourTold } from "../../../logbook/entries/fireBodies.ts";
import { ranges, within, type NumberRange } from "../../../logbook/entries/ranges.ts";
import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { metalColdByK, metalHotEnoughC, shellsInOrder } from "../../../logbook/pour/pourShells.ts";
import { shellHeatOf, type ShellHeat } from "../../../logbook/fire/shellHeat.ts";
import { startingLeaveC, type ShellBed } from "../../../logbook/fire/shellOut.ts";
import { metalHeatOf } from "../../../logbook/pour/pourChecks.ts";
import { pourFixes, type PourFix } from "../../../logbook/pour/pourFixes.ts";
import { dayTracks, stepsOf } from "../../../logbook/pour/pourSteps.ts";
import { startingTold } from "../../../logbook/pour/pourTold.ts";
import { planPour, type PourPlan } from "../../../physics/metal/pourDay.ts";
import type { PourOrder } from "../../../physics/metal/pourOrder.ts";
import { hotSandC } from "../../../physics/heat/heat.ts";
import { withoutEmpty } from "../../base/forms/formFields.ts";
import { bedOf, meltMinutes, runMinutes, type PourParts } from "./pourParts.ts";

/** A pour day half planned; null leaves a figure to what is known, or to its starting value. */
export type PourDraft = {
  readonly pieceIds: readonly string[];
  readonly pourAt: number | null;
  readonly runId: string | null;
  readonly meltId: string | null;
  readonly isHotAlready: boolean;
  readonly kilnMin: number | null;
  readonly sandMin: number | null;
  readonly crucibleMin: number | null;
  readonly meltMin: number | null;
  readonly bed: PourBodies["pour-planned"]["bed"];
  readonly sandC: number | null;
  readonly shellC: number | null;
  readonly metalC: number | null;
  readonly metalKg: number | null;
  readonly people: number | null;
  readonly carryMin: number | null;
  readonly family: PourTold["family"];
  readonly thinnestMm: Readonly<Record<string, number | null>>;
  readonly note: string;
};

export const newPour = (pieceIds: readonly string[]): PourDraft => ({
  pieceIds,
  pourAt: null,
  runId: null,
  meltId: null,
  isHotAlready: false,
  kilnMin: null,
  sandMin: null,
  crucibleMin: null,
  meltMin: null,
  bed: "air",
  sandC: null,
  shellC: null,
  metalC: null,
  metalKg: null,
  people: null,
  carryMin: null,
  family: startingTold.family,
  thinnestMm: {},
  note: "",
});

export const pourRanges = {
  ...ranges,
  minutes: { low: 0, high: 3000 },
} as const;

const kept = (range: NumberRange, value: number | null): number | null =>
  within(range, value) ? value : null;

/** A section of 0 mm is one nobody has measured. */
const sectionRange: NumberRange = { low: 0.1, high: ranges.thickMm.high };
const startingKPerH = 300;
const startingSoakMin = 30;
const startingMeltMin = 45;
const startingSandMin = 60;
const startingCrucibleMin = 20;
const quarterMs = 5 * minuteMs;

export type PourDay = {
  readonly told: PourTold;
  readonly minutes: {
    readonly kiln: Reckoned | null;
    readonly sand: Reckoned | null;
    readonly crucible: Reckoned;
    readonly melt: Reckoned;
  };
  readonly shellC: number;
  readonly metalC: number;
  readonly sandC: number | null;
  /** Usual for the thinnest section of all. */
  readonly preheat: ShellHeat | null;
  /** What keeps it from working, and what would make it work. */
  readonly fixes: readonly PourFix[];
  readonly thinnestMm: number | null;
  readonly steps: ReturnType<typeof stepsOf>;
  readonly plan: PourPlan;
  readonly soonestAt: number;
  readonly order: PourOrder | null;
  readonly orderedIds: readonly string[];
};

export type Reckoned = {
  readonly min: number;
  readonly from: "told" | "run" | "furnace" | "starting";
};

const reckoned = (
  told: number | null,
  of: readonly [Reckoned["from"], number | null][],
  last: number,
): Reckoned => {
  if (told !== null) return { min: told, from: "told" };
  const known = of.find(([, min]) => min !== null);
  return known === undefined
    ? { min: last, from: "starting" }
    : { min: Math.round(known[1] ?? last), from: known[0] };
};

export const toldOf = (draft: PourDraft): PourTold => ({
  family: draft.family,
  people: Math.round(kept(ranges.people, draft.people) ?? startingTold.people),
  carryMin: kept(ranges.carryMin, draft.carryMin) ?? startingTold.carryMin,
  metalKg: kept(ranges.metalKg, draft.metalKg),
  thinnestMm: draft.pieceIds.map((id) => kept(sectionRange, draft.thinnestMm[id] ?? null)),
});

/** The whole day reckoned from the draft, backwards from its moment. `parts` are of the draft's pieces in its order. */
export function pourDay(draft: PourDraft, parts: PourParts, now: number): PourDay {
  const told = toldOf(draft);
  const { alloy, figures, run, shells } = parts;
  const known = shells.flatMap(({ thinnestMm }) => thinnestMm ?? []);
  const thinnestMm = known.length === 0 ? null : Math.min(...known);
  const preheat = alloy === null ? null : shellHeatOf(alloy, thinnestMm);
  const sandC = draft.bed === "hot-sand" ? (kept(ranges.sandC, draft.sandC) ?? hotSandC) : null;
  const place = bedOf(parts, { bed: draft.bed, sandC: sandC ?? undefined, family: draft.family });
  const { carryMin } = told;
  const shellC = kept(ranges.shellC, draft.shellC) ?? startingLeaveC(shells, { alloy, carryMin, place });
  const metalC = kept(ranges.metalC, draft.metalC) ?? startingMetalC(parts, { carryMin, place });
  const mins = (value: number | null): number | null => kept(pourRanges.minutes, value);
  const minutes: PourDay["minutes"] = {
    kiln: draft.isHotAlready
      ? null
      : reckoned(
          mins(draft.kilnMin),
          [["run", run === null ? null : runMinutes(run)]],
          Math.round((Math.max(0, shellC - 20) / startingKPerH) * 60) + startingSoakMin,
        ),
    sand: draft.bed === "hot-sand" ? reckoned(mins(draft.sandMin), [], startingSandMin) : null,
    crucible: reckoned(mins(draft.crucibleMin), [], startingCrucibleMin),
    melt: reckoned(
      mins(draft.meltMin),
      [["furnace", meltMinutes(parts, { massKg: parts.metalKg ?? parts.wantedKg, pourC: metalC })]],
      startingMeltMin,
    ),
  };
  const steps = stepsOf({
    kilnMin: minutes.kiln?.min ?? null,
    sandMin: minutes.sand?.min ?? null,
    crucibleMin: minutes.crucible.min,
    meltMin: minutes.melt.min,
  });
  const tracks = dayTracks(steps);
  const longest = Math.max(
    ...tracks.map((track) => track.steps.reduce((sum, { durationMin }) => sum + durationMin, 0)),
  );
  const soonestAt = Math.ceil((now + longest * minuteMs) / quarterMs) * quarterMs;
  const plan = planPour({
    pourAt: draft.pourAt ?? soonestAt,
    tracks,
    now: null,
    people: told.people,
  });
  const order =
    alloy === null || figures === null
      ? null
      : shellsInOrder({
          shells,
          metalKg: parts.metalKg,
          metalC,
          shellC,
          carryMin,
          alloy,
          figures,
          place,
        });
  const byThinnest = shells.toSorted((a, b) => (a.thinnestMm ?? 99) - (b.thinnestMm ?? 99));
  return {
    told,
    minutes,
    shellC,
    metalC,
    sandC,
    preheat,
    fixes: pourFixes({ supply: parts, place, carryMin, shellC, metalC }),
    thinnestMm,
    steps,
    plan,
    soonestAt,
    order,
    orderedIds: (order?.turns ?? byThinnest).map(({ id }) => id),
  };
}

const unknownMetalC = 1150;

/** Where the metal's heat starts, °C: the melt's, else as every plan of this metal does, and hotter where it would be too cold for the last shell. */
function startingMetalC(
  { alloy, figures, shells, metalKg, melt }: PourParts,
  { carryMin, place }: { readonly carryMin: number; readonly place: ShellBed },
): number {
  if (alloy === null) return melt?.plan.pourC ?? unknownMetalC;
  const each = shells.map(({ thinnestMm }) => pourHeatOf({ alloy, figures, thinnestMm }).startC);
  const usualC = Math.max(
    ...(each.length === 0 ? [pourHeatOf({ alloy, figures, thinnestMm: null }).startC] : each),
  );
  const fromC = melt?.plan.pourC ?? usualC;
  const heat = metalHeatOf({ alloy, figures, shells }, fromC);
  if (figures === null || heat.verdict === "not-known") return fromC;
  const mostC = Math.max(fromC, heat.highC);
  // What no heat in its range can do the plan says first, with what would.
  return metalColdByK({ shells, metalKg, metalC: fromC, carryMin, alloy, figures, place }) === null
    ? fromC
    : (metalHotEnoughC({ shells, metalKg, carryMin, alloy, figures, place }, { fromC, mostC }) ?? mostC);
}

/** The plan as the log keeps it. */
export function pourBody(draft: PourDraft, day: PourDay): PourBodies["pour-planned"] {
  const thinnestMm = day.orderedIds.map((id) => day.told.thinnestMm[draft.pieceIds.indexOf(id)] ?? null);
  return withoutEmpty({
    pourAt: day.plan.pourAt,
    pieceIds: day.orderedIds,
    runId: draft.isHotAlready ? undefined : (draft.runId ?? undefined),
    meltId: draft.meltId ?? undefined,
    bed: draft.bed,
    sandC: day.sandC ?? undefined,
    shellC: day.shellC,
    metalC: day.metalC,
    steps: day.steps,
    told: { ...day.told, thinnestMm },
    note: draft.note.trim() === "" ? undefined : draft.note.trim(),
  });
}
