import type { PatternMaterial } from "../../trade/patternMaterials.ts";
import { greenStrengthShare } from "../../trade/shellStrength.ts";
import { shellThermal } from "../../trade/shellThermal.ts";
import type { StuccoFamily } from "../../trade/shellThermal.ts";
import type { RunBasis, RunPurpose } from "../entries/fireBodies.ts";
import { ownAlloy } from "../shop/ownAlloy.ts";
import { wetPatches } from "../piece/crackStates.ts";
import { patternState } from "../piece/patternState.ts";
import { ranges, within } from "../entries/ranges.ts";
import { dampShare } from "../piece/weakened.ts";
import type { Standing } from "../piece/standing.ts";
import { filmMass, patternMass, type PatternMass, type PatternSaid } from "./patternMass.ts";

type ShellSource = "area" | "mesh-area" | "starting";
type DampSource = "patched" | "drying" | "no-coat" | "fired" | "rinsed" | "cold";

/** What a piece's log says that its fire depends on. */
export type FireFacts = {
  readonly pieceId: string;
  readonly name: string;
  readonly hasPattern: boolean;
  /** The wax is out and its film is left. */
  readonly isFilm: boolean;
  readonly material: PatternMaterial | null;
  readonly pattern: PatternMass | null;
  readonly wallMm: number;
  readonly wallBasis: Standing["wall"]["basis"];
  readonly shell: { readonly massKg: number; readonly source: ShellSource };
  readonly damp: { readonly state: RunBasis["damp"]; readonly source: DampSource };
  readonly firedBefore: boolean;
  readonly seenAbove1100: boolean;
  /** Strength before its first fire over a plain, well dried shell's: polymer and coats covered damp. */
  readonly greenShare: number;
};

const devitrifyC = 1100;
/** A small shell's mass where its area is not known, kg: starting value. */
const startingShellKg = 3;

/** `said` is what a person knows of the pattern and the log doesn't. */
export function fireFacts(standing: Standing, family: StuccoFamily, said: PatternSaid = {}): FireFacts {
  const { piece, wall, recipe, shop } = standing;
  const { plan, burnouts, firings } = piece;
  const hottest = Math.max(
    -Infinity,
    ...firings.map(({ peakC }) => peakC),
    ...burnouts.flatMap(({ readings }) => readings.map(({ kilnC }) => kilnC)),
  );
  const inside = patternState(piece);
  const hasPattern = inside !== "gone";
  const of = { alloy: ownAlloy(plan.alloyId ?? "", shop), said };
  return {
    pieceId: piece.id,
    name: plan.name,
    hasPattern,
    isFilm: inside === "film",
    material: plan.material ?? null,
    pattern: inside === "film" ? filmMass(piece, of) : hasPattern ? patternMass(piece, of) : null,
    wallMm: wall.reachedMm,
    wallBasis: wall.basis,
    shell: shellMass(standing, family),
    damp: dampOf(standing),
    firedBefore: firings.length > 0,
    seenAbove1100: hottest > devitrifyC,
    greenShare:
      greenStrengthShare(recipe?.polymer) *
      dampShare({ piece, drying: standing.drying, isWallMeasured: true }),
  };
}

/** True for a piece that can go into such a run: coated, out of the kiln, no metal in it. */
export function mayEnter(purpose: RunPurpose, { piece, coatsDone }: Standing): boolean {
  const isOut = ["coating", "reviewed", "dewaxed", "burnt-out", "fired", "preheated"].includes(piece.phase);
  if (!isOut || piece.archived || coatsDone === 0) return false;
  return (purpose === "burnout") === (patternState(piece) !== "gone");
}

function shellMass({ piece, wall }: Standing, family: StuccoFamily): FireFacts["shell"] {
  const { areaM2 } = piece.plan;
  const mesh = piece.patterns.at(-1);
  const meshMm2 = mesh === undefined ? undefined : mesh.areaMm2 + (mesh.gatingAreaMm2 ?? 0);
  const massOf = (squareM: number): number =>
    (squareM * Math.max(0.1, wall.reachedMm) * shellThermal[family].densityKgM3.value) / 1000;
  if (within(ranges.areaM2, areaM2)) return { massKg: massOf(areaM2), source: "area" };
  if (meshMm2 !== undefined && within(ranges.areaM2, meshMm2 / 1e6))
    return { massKg: massOf(meshMm2 / 1e6), source: "mesh-area" };
  return { massKg: startingShellKg, source: "starting" };
}

/** A patch since the last fire is wet; else the one answer says, and what is not sure to be dry is damp. */
function dampOf({ piece, forFire, metalBars, cracks }: Standing): FireFacts["damp"] {
  const ends = piece.burnouts.flatMap(({ ended }) => (ended && ended.result !== "stopped" ? [ended.at] : []));
  const lastFireAt = Math.max(-Infinity, ...piece.firings.map(({ at }) => at), ...ends);
  const isPatched = piece.cracks.some(
    ({ afterBurnout, patched }) => afterBurnout && patched !== null && patched.at > lastFireAt,
  );
  if (isPatched || wetPatches(cracks).length > 0) return { state: "patched-wet", source: "patched" };
  if (metalBars.some(({ code }) => code === "rinsed")) return { state: "patched-wet", source: "rinsed" };
  if (metalBars.some(({ code }) => code === "cold")) return { state: "damp", source: "cold" };
  if (forFire === null) return { state: "damp", source: "no-coat" };
  const source = lastFireAt > forFire.wettedAt ? "fired" : "drying";
  return { state: forFire.state === "dry" ? "dry" : "damp", source };
}

export type FactsTogether = {
  /** Null where nothing is inside, where nobody said what, or where they differ. */
  readonly material: PatternMaterial | null;
  readonly materials: readonly (PatternMaterial | null)[];
  /** True where all that is inside is the film of wax that ran out before. */
  readonly isFilm: boolean;
  /** Null where one of them is not known. */
  readonly patternKg: number | null;
  readonly wallMm: number;
  readonly thickest: string;
  readonly shellKg: number;
  readonly damp: RunBasis["damp"];
  readonly dampest: string;
  readonly firedBefore: boolean;
  readonly seenAbove1100: boolean;
  readonly greenShare: number;
};

/** Pieces that go in together: the thickest wall, the dampest shell and the frailest past govern, masses add up. */
export function factsTogether(facts: readonly FireFacts[]): FactsTogether | null {
  const [first] = facts;
  if (first === undefined) return null;
  const materials = [
    ...new Set(facts.filter(({ hasPattern }) => hasPattern).map(({ material }) => material)),
  ];
  const rank = (one: FireFacts): number => ["dry", "damp", "patched-wet"].indexOf(one.damp.state);
  const thickest = facts.reduce((a, b) => (b.wallMm > a.wallMm ? b : a), first);
  const dampest = facts.reduce((a, b) => (rank(b) > rank(a) ? b : a), first);
  const masses = facts.filter(({ hasPattern }) => hasPattern).map(({ pattern }) => pattern?.massKg ?? null);
  return {
    material: materials.length === 1 ? (materials[0] ?? null) : null,
    materials,
    isFilm: materials.length > 0 && facts.every((one) => one.isFilm || !one.hasPattern),
    patternKg: masses.reduce<number | null>((sum, kg) => (sum === null || kg === null ? null : sum + kg), 0),
    wallMm: thickest.wallMm,
    thickest: thickest.name,
    shellKg: facts.reduce((sum, { shell }) => sum + shell.massKg, 0),
    damp: dampest.damp.state,
    dampest: dampest.name,
    // A first fire asks for more care than a later one.
    firedBefore: facts.every((one) => one.firedBefore),
    seenAbove1100: facts.some((one) => one.seenAbove1100),
    greenShare: Math.min(...facts.map((one) => one.greenShare)),
  };
}
