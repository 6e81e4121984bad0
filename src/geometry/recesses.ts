import { dexelsOf, placeIn, type Dexels } from "./dexels.ts";
import { heldIn, type Columns } from "./intervalTree.ts";
import type { Mesh } from "./mesh.ts";
import type { Steps } from "./steps.ts";
import { length, minus, negated, plus, squareTo, times, unit, type Vec3 } from "./vector.ts";

/** A hollow of the outside, as a bowl would hold water with `opening` upward. */
export type Recess = {
  /** Deepest place. */
  readonly point: Vec3;
  readonly opening: Vec3;
  readonly volume: number;
  readonly depth: number;
  /** Diameter of the round of the same area as its mouth; 0 for a closed void, into which no slurry comes. */
  readonly mouth: number;
  readonly kind: RecessKind;
};

export type RecessKind = "open" | "recess" | "deep" | "closed";

type RecessesFrom = {
  readonly mesh: Mesh;
  readonly cells: number;
  /** Shallower ones are left out; mesh units. */
  readonly minDepth: number;
};

/**
 * Hollows in which a coat dries late, the deepest for their mouth first, looked for in 14 directions of opening; the largest
 * are turned on from there to where they hold most, so that depth and mouth are theirs however the piece lies, to a
 * twentieth. A hole right through is none: it holds no water either way.
 */
export function* recessesSteps({ mesh, cells, minDepth }: RecessesFrom): Steps<readonly Recess[]> {
  const found: Recess[] = [];
  for (const [n, opening] of openings.entries()) {
    found.push(...bowlsOf(dexelsOf({ mesh, up: opening, cells }), minDepth));
    yield (0.5 * (n + 1)) / openings.length;
  }
  found.sort((a, b) => b.volume - a.volume);
  const kept: Recess[] = [];
  for (const recess of found) {
    if (!kept.some((other) => isSame(other, recess))) kept.push(recess);
  }
  const turned: Recess[] = [];
  for (const [n, recess] of kept.entries()) {
    turned.push(n < mostTurned ? yield* fullest({ mesh, cells, minDepth }, recess) : recess);
    yield 0.5 + (0.5 * Math.min(mostTurned, n + 1)) / mostTurned;
  }
  return turned.sort((a, b) => steepness(b) - steepness(a));
}

/** The same hollow tilted: its deepest place moves by no more than it is deep or wide, corner to corner. */
const isSame = (known: Recess, other: Recess): boolean =>
  length(minus(known.point, other.point)) < 1.5 * Math.max(known.depth, known.mouth);

/** Each costs as much as the search for all. */
const mostTurned = 3;
/** How far an opening is leant to look for a fuller one, rad: directions of the first search stand 0.6 apart at most. */
const leans = [0.3, 0.15, 0.07, 0.035];

/** The same hollow with its opening leant to where it holds most. A closed one holds the same either way. */
function* fullest({ mesh, cells, minDepth }: RecessesFrom, from: Recess): Steps<Recess> {
  let best = from;
  if (from.kind === "closed") return best;
  for (const lean of leans) {
    for (let tries = 3; tries > 0; tries--) {
      const before = best;
      const [u, v] = squareTo(before.opening);
      for (const aside of [u, negated(u), v, negated(v)]) {
        const up = unit(plus(before.opening, times(aside, lean)));
        for (const bowl of bowlsOf(dexelsOf({ mesh, up, cells }), minDepth))
          if (bowl.volume > best.volume && isSame(before, bowl)) best = bowl;
      }
      yield 0.5;
      if (best === before) break;
    }
  }
  return best;
}

/** Depth over mouth from which a hollow counts as a recess, and as a deep one: judgement, no source. */
const recessFrom = 0.5;
const deepFrom = 2;

const steepness = ({ depth, mouth }: Pick<Recess, "depth" | "mouth">): number =>
  mouth > 0 ? depth / mouth : Infinity;

function kindOf(recess: Pick<Recess, "depth" | "mouth">): RecessKind {
  if (recess.mouth === 0) return "closed";
  if (steepness(recess) < recessFrom) return "open";
  return steepness(recess) < deepFrom ? "recess" : "deep";
}

function bowlsOf(dexels: Dexels, minDepth: number): readonly Recess[] {
  const { pitch, w: opening } = dexels;
  const { columns, sea } = outsideOf(dexels);
  const held = heldIn({ columns, outlets: [sea], blur: pitch / 4 });
  return held
    .filter(({ top, level, vented }) => !vented && top - level >= Math.max(minDepth, pitch))
    .map((bowl): Recess => {
      const c = columns.start.findIndex((first) => first > bowl.topNode) - 1;
      const [i, j] = [(c % columns.nu) - 1, Math.floor(c / columns.nu) - 1];
      const size = { depth: bowl.top - bowl.level, mouth: Math.sqrt((4 * bowl.mouth) / Math.PI) * pitch };
      const point = placeIn(dexels, i + 0.5, j + 0.5, -bowl.top);
      return { point, opening, volume: bowl.volume * pitch ** 2, ...size, kind: kindOf(size) };
    });
}

/**
 * The columns of what is not solid, upside down, with a rim all round: bowls become tops, and the sea round the piece is
 * an outlet from the start. Water that finds no way to the sea stays.
 */
function outsideOf({ nu, nv, start, bottom, top, height }: Dexels) {
  const far = 2 * height + 1;
  const wide = nu + 2;
  const deep = nv + 2;
  const outside: number[] = [];
  const under: number[] = [];
  const starts = new Uint32Array(wide * deep + 1);
  for (let j = 0; j < deep; j++) {
    for (let i = 0; i < wide; i++) {
      let from = -far;
      if (i > 0 && j > 0 && i <= nu && j <= nv) {
        const c = (j - 1) * nu + i - 1;
        for (let node = start[c]!; node < start[c + 1]!; node++) {
          outside.push(-from);
          under.push(-bottom[node]!);
          from = top[node]!;
        }
      }
      outside.push(-from);
      under.push(-far);
      starts[j * wide + i + 1] = outside.length;
    }
  }
  const columns: Columns = {
    nu: wide,
    nv: deep,
    start: starts,
    top: Float64Array.from(outside),
    bottom: Float64Array.from(under),
  };
  return { columns, sea: { node: 0, level: far } };
}

const openings: readonly Vec3[] = [
  ...[1, -1].flatMap((s): Vec3[] => [
    [s, 0, 0],
    [0, s, 0],
    [0, 0, s],
  ]),
  ...[1, -1].flatMap((x) => [1, -1].flatMap((y) => [1, -1].map((z): Vec3 => [x, y, z]))),
];
