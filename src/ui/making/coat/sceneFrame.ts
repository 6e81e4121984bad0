import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";

/** Where things lie in the picture, px: the panel of water, the panel of air beneath it, time along both. */
export type SceneFrame = {
  readonly from: number;
  readonly to: number;
  readonly left: number;
  readonly right: number;
  readonly water: { readonly top: number; readonly bottom: number };
  readonly air: { readonly top: number; readonly bottom: number };
  readonly bottom: number;
  readonly x: (at: number) => number;
  readonly y: (kgM2: number) => number;
  readonly timeAt: (x: number) => number;
};

const waterPanel = { top: 26, bottom: 206 };
const airPanel = { top: 250, bottom: 324 };

export function sceneFrame({ points, from, judgedAt, startKgM2 }: CoatPicture, width: number): SceneFrame {
  const to = Math.max(points.at(-1)?.at ?? judgedAt, judgedAt, from + hourMs);
  const left = 44;
  const right = Math.max(left + 60, width - 44);
  const most = Math.max(startKgM2, ...points.map(({ high }) => high), 1e-6);
  const held = (at: number): number => Math.min(to, Math.max(from, at));
  return {
    from,
    to,
    left,
    right,
    water: waterPanel,
    air: airPanel,
    bottom: airPanel.bottom,
    x: (at) => left + ((held(at) - from) / (to - from)) * (right - left),
    y: (kgM2) => waterPanel.bottom - (kgM2 / most) * (waterPanel.bottom - waterPanel.top),
    timeAt: (x) => held(from + ((x - left) / (right - left)) * (to - from)),
  };
}
