import type { Tip } from "../../../geometry/findTips.ts";
import type { FlatSpan } from "../../../geometry/flatSpans.ts";
import type { Recess } from "../../../geometry/recesses.ts";
import type { RoundSpan } from "../../../geometry/roundSpans.ts";
import type { Trapped } from "../../../geometry/trappedVolume.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import type { WallThickness } from "../../../geometry/wallThickness.ts";
import type { PatternAnswers } from "../../../workers/patternMessages.ts";
import type { Mark } from "../../../logbook/casting/mark.ts";

/** What does not hang on how the piece hangs; mesh mm. Each part is null until it is found. */
export type Shape = {
  readonly thickness: WallThickness | null;
  readonly flats: readonly FlatSpan[] | null;
  readonly rounds: readonly RoundSpan[] | null;
  readonly recesses: readonly Recess[] | null;
};

/** A place where air stays on the way up, or plastic on the way down, in mesh mm. */
export type Spot = Pick<Tip, "point" | "shape" | "ridge"> & {
  /** Above the lowest place of the piece as it hangs for the pour. */
  readonly heightMm: number;
  /** Up to it (down to it, for plastic) from the saddle where it parts from the rest. */
  readonly riseMm: number;
  readonly ml: number;
  /** The outermost of its body: without an opening there, nothing leaves the body at all. */
  readonly isLast: boolean;
};

export type NamedPocket = {
  readonly point: Vec3;
  readonly ml: number;
  /** The pocket's far end and the level beyond which it stays; both above the lowest place of the piece. */
  readonly endMm: number;
  readonly levelMm: number;
  /** It has an opening, but not at its end. */
  readonly vented: boolean;
};

export type HeldPockets = {
  readonly totalMl: number;
  readonly pockets: readonly NamedPocket[];
  /** Narrower than this is not seen. */
  readonly pitchMm: number;
  /** Columns cut through a faulty skin, a share; beyond a hundredth the answer is doubtful. */
  readonly badShare: number;
};

export type UpResults = {
  readonly up: Vec3;
  /** Along up, mesh mm. */
  readonly lowMm: number;
  readonly highMm: number;
  readonly tips: readonly Spot[];
  readonly drains: readonly Spot[];
  /** For the marks that `key` names; null until found. */
  readonly held: { readonly key: string; readonly air: HeldPockets; readonly plastic: HeldPockets } | null;
};

/** What held air and plastic depend on beside the way the piece hangs. */
export const marksKey = (marks: readonly Mark[]): string =>
  marks
    .map(({ kind, point }) => `${kind} ${point.map((at) => at.toFixed(3)).join(" ")}`)
    .sort()
    .join("; ");

/** Spots of one way to hang; `held` is still to come. */
export function upResultsOf(up: Vec3, { tips, drains, low, high }: PatternAnswers["tips"]): UpResults {
  const spot = (tip: Tip, heightMm: number): Spot => ({
    point: tip.point,
    shape: tip.shape,
    ridge: tip.ridge,
    heightMm,
    riseMm: tip.rise,
    ml: tip.volume / 1000,
    isLast: tip.whole,
  });
  return {
    up,
    lowMm: low,
    highMm: high,
    tips: tips.map((tip) => spot(tip, tip.height - low)),
    drains: drains.map((tip) => spot(tip, -tip.height - low)),
    held: null,
  };
}

/** Air or plastic that stays; `turned` for plastic, whose heights run down. */
export function heldOf(trapped: Trapped, { lowMm, turned }: { lowMm: number; turned: boolean }): HeldPockets {
  const above = (height: number): number => (turned ? -height : height) - lowMm;
  return {
    totalMl: trapped.total / 1000,
    pockets: trapped.pockets.map(({ point, volume, top, level, vented }) => ({
      point,
      ml: volume / 1000,
      endMm: above(top),
      levelMm: above(level),
      vented,
    })),
    pitchMm: trapped.pitch,
    badShare: trapped.columns === 0 ? 0 : trapped.badColumns / trapped.columns,
  };
}

/** Results do not outlive a change of size: thresholds are in millimetres, so they are asked again. */
export const noResults = { shape: null, byUp: [], attitudes: null, hot: null } as const;
