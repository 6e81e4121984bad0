import type { CoatPicture, PicturePoint } from "../../../logbook/drying/coatPicture.ts";
import type { Said } from "../../../logbook/drying/coatSaid.ts";

/** A value read off rising points in a straight line between them; the ends hold on. */
function readAt<T extends { readonly at: number }>(
  points: readonly T[],
  at: number,
  value: (point: T) => number,
): number | null {
  const after = points.findIndex((point) => point.at > at);
  const last = points.at(-1);
  if (last === undefined) return null;
  if (after === -1) return value(last);
  const [a, b] = [points[after - 1], points[after]];
  if (b === undefined) return value(last);
  if (a === undefined) return value(b);
  const share = b.at > a.at ? (at - a.at) / (b.at - a.at) : 1;
  return value(a) + share * (value(b) - value(a));
}

/** Everything the picture knows of one moment. */
export type SceneMoment = PicturePoint & { readonly airC: number | null; readonly rh: number | null };

export function momentAt({ points, air }: CoatPicture, at: number): SceneMoment {
  const read = (value: (point: PicturePoint) => number): number => readAt(points, at, value) ?? 0;
  // Past the last reading the air is not known, only reckoned.
  const isRead = at <= (air.at(-1)?.at ?? -Infinity) && at >= (air[0]?.at ?? Infinity);
  return {
    at,
    low: read(({ low }) => low),
    median: read(({ median }) => median),
    high: read(({ high }) => high),
    airC: isRead ? readAt(air, at, ({ airC }) => airC) : null,
    rh: isRead ? readAt(air, at, ({ rh }) => rh) : null,
  };
}

/** The letter a check is drawn with, so that no colour has to be told apart. */
export const markLetters: Readonly<Record<Said["by"], string>> = {
  touch: "T",
  colour: "C",
  "target-mass": "W",
  "weight-loss": "W",
  approach: "A",
  surface: "S",
  bag: "B",
  resistance: "R",
};

export type SceneMark = {
  readonly key: string;
  readonly at: number;
  readonly letter: string;
  /** Water, kg/m², where the check itself tells it; else where the belief lay then. */
  readonly waterKgM2: number;
  readonly isOwn: boolean;
  /** One standard deviation either way; null where the check gives none. */
  readonly sdKgM2: number | null;
};

/** Checks as marks on the curve. */
export function marksOf(picture: CoatPicture): readonly SceneMark[] {
  const { startKgM2 } = picture;
  return picture.pulls.map(({ seenId, at, said }) => {
    const own = ownShare(said);
    return {
      key: `${seenId} ${said.by}`,
      at,
      letter: markLetters[said.by],
      waterKgM2: own === null ? momentAt(picture, at).median : Math.max(0, own * startKgM2),
      isOwn: own !== null,
      sdKgM2: said.by === "target-mass" ? said.sdShare * startKgM2 : null,
    };
  });
}

const ownShare = (said: Said): number | null =>
  said.by === "target-mass" || said.by === "resistance" ? said.waterShare : null;

/** Where a key takes the scrubber: a sixtieth of the span, with shift a twelfth, to either end. */
export function scrubbed(
  at: number,
  key: string,
  { from, to, isBig }: { readonly from: number; readonly to: number; readonly isBig: boolean },
): number | null {
  const step = (to - from) / (isBig ? 12 : 60);
  const next = { ArrowLeft: at - step, ArrowRight: at + step, Home: from, End: to }[key];
  return next === undefined ? null : Math.min(to, Math.max(from, next));
}
