import { barSums, sectionArea, toAxis, type GatingBar } from "../../../geometry/gatingBars.ts";
import type { HotPlace } from "../../../geometry/hotSpots.ts";
import { dot, length, minus, type Vec3 } from "../../../geometry/vector.ts";
import type { LinkRole } from "../../../physics/metal/feedChain.ts";
import { emptyLink, type GatingDraft, type LinkDraft } from "../../../logbook/casting/gatingDraft.ts";
import { barNames } from "./barNames.ts";
import { feedsKey } from "./feeds.ts";
import { touchMm } from "../../../logbook/casting/gatingTree.ts";
import { castingMassKg } from "../../../physics/metal/castingMass.ts";
import { barsOf, cupLevelOf, mmPerUnitOf, resultsFor, type PatternStudy } from "./patternStudy.ts";
import { sizeOf, type PatternSize } from "./patternSize.ts";

/** What a pattern tells of how its piece is gated and fed, ready for the sums. */
export type GatingHandover = Partial<
  Pick<
    GatingDraft,
    "gate" | "massKg" | "gateMm2" | "cupMm" | "sprueMm" | "cavityMm" | "aboveGateMm" | "wallMm"
  >
> & {
  readonly links: readonly LinkDraft[];
  /** Which part of the casting the chain begins with. */
  readonly from: "hot-spot" | "thickest" | "mesh";
  /** What feeds it: the way over bars to the cup, a feeder that stands nearer, or nothing that is drawn. */
  readonly by: "cup" | "feeder" | "nothing";
};

const roles: Readonly<Partial<Record<GatingBar["kind"], LinkRole>>> = {
  gate: "gate",
  runner: "runner",
  sprue: "sprue",
  cup: "cup",
  feeder: "riser",
};

/**
 * The chain from the last place to freeze, over the bars drawn, to the cup, with the heights, the metal of piece and tree
 * and the section of the gates that go with it. Null while the file's unit is not known, and where neither volume nor
 * thickness is. `metalKgM3`: the solid metal; without it no mass is handed over.
 */
export function chainOfStudy(study: PatternStudy, metalKgM3: number | null = null): GatingHandover | null {
  const mmPerUnit = mmPerUnitOf(study);
  if (mmPerUnit === null) return null;
  const casting = castingOf(study, mmPerUnit);
  if (casting === null) return null;
  const way = wayFrom(study, casting.at);
  const bars = way.map((bar) => barLink(bar, study));
  const links = [...casting.links, ...bars].map((link, n) => ({ ...link, key: n + 1 }));
  const [last] = way.slice(-1);
  return {
    ...heightsOf(study),
    ...massOf(sizeOf(study, mmPerUnit), metalKgM3),
    ...gatesOf(study),
    links,
    from: casting.from,
    by: last === undefined ? "nothing" : last.kind === "feeder" ? "feeder" : "cup",
  };
}

/** Piece and tree, as the plan gets them; the bare piece is not all that goes through a sprue. */
function massOf(
  { volumeMm3, gatingMm3, tree }: PatternSize,
  metalKgM3: number | null,
): Pick<GatingHandover, "massKg"> {
  if (volumeMm3 === null || metalKgM3 === null || tree === null) return {};
  return { massKg: round(castingMassKg({ volumeCm3: (volumeMm3 + gatingMm3) / 1000, metalKgM3 })) };
}

/** All gates together, where their bars meet the piece, and the metal over the sprue's top; by bars that are drawn. */
function gatesOf(study: PatternStudy): Pick<GatingHandover, "gateMm2" | "cupMm"> {
  const bars = barsOf(study);
  const sections = study.marks.flatMap((mark) => {
    const bar =
      mark.kind === "gate" ? bars.find((one) => isOpenWay(one) && touches(one, mark.point)) : undefined;
    if (bar === undefined) return [];
    return [sectionArea(length(minus(bar.to, mark.point)) <= touchMm ? bar.toSection : bar.fromSection)];
  });
  const cup = bars.find(({ kind }) => kind === "cup");
  const deep = cup === undefined ? 0 : Math.abs(dot(minus(cup.to, cup.from), study.up));
  return {
    ...(sections.length === 0 ? {} : { gateMm2: round(sections.reduce((sum, mm2) => sum + mm2, 0)) }),
    ...(deep > 0 ? { cupMm: round(deep) } : {}),
  };
}

type Casting = {
  readonly from: GatingHandover["from"];
  readonly at: Vec3 | null;
  readonly links: readonly LinkDraft[];
};

/** The hot spot and the neck it is fed through, else the thickest place, else the mesh as a whole. */
function castingOf(study: PatternStudy, mmPerUnit: number): Casting | null {
  const { volumeMm3, areaMm2 } = sizeOf(study, mmPerUnit);
  const volumeCm3 = (lessMm3 = 0): number | null =>
    volumeMm3 === null ? null : round(Math.max(1, volumeMm3 - lessMm3) / 1000);
  const section = (name: string, { plate, ball }: HotPlace, held: number | null): LinkDraft => ({
    ...emptyLink(0, name, "casting", "plate"),
    thicknessMm: round(2 * modulusAt({ plate, ball })),
    volumeCm3: held,
  });
  // Found for other feeders than stand now, a neck may be another one.
  const isFresh = study.hot?.key === feedsKey(study, mmPerUnit);
  const [hottest] = isFresh ? (study.hot?.spots ?? []) : [];
  if (hottest !== undefined) {
    const { point, neck } = hottest;
    // A feeder has all of the piece behind it at most: the neck as a ball, the rest beyond it.
    const neckMm3 = neck === null ? 0 : (Math.PI / 6) * neck.ball ** 3;
    const necks = neck === null ? [] : [section("Neck on the way to it", neck, round(neckMm3 / 1000))];
    const links = [section("Hot spot", hottest, volumeCm3(neckMm3)), ...necks];
    return { from: "hot-spot", at: point, links };
  }
  const [thick] = study.shape?.thickness?.thick ?? [];
  if (thick !== undefined) {
    // Between a plate and a ball of the same thickness, whose moduli are three apart.
    const rod = emptyLink(0, "Thickest place", "casting", "round");
    const links = [{ ...rod, diameterMm: round(thick.diameter), volumeCm3: volumeCm3() }];
    return { from: "thickest", at: thick.point, links };
  }
  if (volumeMm3 === null) return null;
  const whole = emptyLink(0, "Casting, from its 3D file", "casting", "measured");
  return {
    from: "mesh",
    at: null,
    links: [{ ...whole, volumeCm3: round(volumeMm3 / 1000), areaCm2: round(areaMm2 / 100) }],
  };
}

/**
 * Volume over surface of what a place is part of, mm: plate² over twice the ball. Exact for a wide plate (ball = plate),
 * a long rod (ball = √2·plate) and a sphere (ball = √3·plate), whose t/2, d/4 and d/6 it gives; between them derived here.
 * A ball smaller than the plate is a faulty one at a neck.
 */
function modulusAt({ plate, ball }: Pick<HotPlace, "plate" | "ball">): number {
  return plate ** 2 / (2 * Math.min(Math.sqrt(3) * plate, Math.max(plate, ball)));
}

/** Bars from the gate or feeder nearest to a place, joined end to axis, to the cup; a feeder stands for itself. */
function wayFrom(study: PatternStudy, at: Vec3 | null): readonly GatingBar[] {
  const { marks } = study;
  const bars = barsOf(study);
  const doors = marks.flatMap(({ kind, point }) => {
    if (kind !== "gate" && kind !== "feeder") return [];
    const bar = bars.find((one) => isOpenWay(one) && touches(one, point));
    return bar === undefined ? [] : [{ bar, far: at === null ? 0 : length(minus(point, at)) }];
  });
  const [nearest] = doors.toSorted((a, b) => a.far - b.far);
  if (nearest === undefined) return [];
  if (nearest.bar.kind === "feeder") return [nearest.bar];
  const before = new Map<GatingBar, GatingBar | null>([[nearest.bar, null]]);
  for (const bar of before.keys()) {
    if (bar.kind === "cup") return backFrom(bar, before);
    for (const other of bars)
      if (!before.has(other) && other.kind !== "feeder" && isOpenWay(other) && isJoined(bar, other))
        before.set(other, bar);
  }
  return [nearest.bar];
}

function backFrom(cup: GatingBar, before: ReadonlyMap<GatingBar, GatingBar | null>): readonly GatingBar[] {
  const way: GatingBar[] = [];
  for (let bar: GatingBar | null = cup; bar !== null; bar = before.get(bar) ?? null) way.unshift(bar);
  return way;
}

const isOpenWay = ({ kind }: GatingBar): boolean => roles[kind] !== undefined;
const touches = (bar: GatingBar, point: Vec3): boolean =>
  length(minus(bar.from, point)) <= touchMm || length(minus(bar.to, point)) <= touchMm;
const isJoined = (a: GatingBar, b: GatingBar): boolean =>
  [a.from, a.to].some((end) => toAxis(b, end) <= touchMm) ||
  [b.from, b.to].some((end) => toAxis(a, end) <= touchMm);

/** A tapered bar by its volume and the face it cools through; ends that touch others do not cool. */
function barLink(bar: GatingBar, { bars, marks }: PatternStudy): LinkDraft {
  const isFree = (end: Vec3): boolean =>
    !marks.some(({ point }) => length(minus(point, end)) <= touchMm) &&
    !bars.some((other) => other !== bar && toAxis(other, end) <= touchMm);
  const { volume, coolingArea } = barSums(bar, { freeFrom: isFree(bar.from), freeTo: isFree(bar.to) });
  return {
    ...emptyLink(0, barNames[bar.kind], roles[bar.kind] ?? "runner", "measured"),
    volumeCm3: round(volume / 1000),
    areaCm2: round(coolingArea / 100),
  };
}

function heightsOf(study: PatternStudy): Omit<GatingHandover, "links" | "from" | "by"> {
  const results = resultsFor(study);
  const thinnest = study.shape?.thickness?.thin[0]?.thickness;
  const wall = thinnest === undefined ? {} : { wallMm: round(thinnest) };
  if (results === null) return wall;
  const { lowMm, highMm } = results;
  const cavity = highMm - lowMm;
  const tall = { ...wall, cavityMm: round(cavity) };
  const gate = study.marks.find(({ kind }) => kind === "gate");
  if (gate === undefined) return tall;
  const cup = cupLevelOf(study, highMm);
  const at = dot(gate.point, study.up);
  // Within a tenth of the height of an end it counts as there.
  const kind = at - lowMm <= cavity / 10 ? "bottom" : highMm - at <= cavity / 10 ? "top" : "parting";
  return {
    ...tall,
    gate: kind,
    ...(cup > at ? { sprueMm: round(cup - at) } : {}),
    ...(kind === "parting" ? { aboveGateMm: round(highMm - at) } : {}),
  };
}

/** No more digits than wax keeps. */
const round = (value: number): number => Number(value.toPrecision(4));
