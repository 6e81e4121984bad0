import { millisecondsInHour as hourMs } from "date-fns/constants";
import type { CoatPicture } from "../../../logbook/drying/coatPicture.ts";
import { plotFrame, type PlotFrame } from "../../base/charts/plotFrame.ts";

/** The panel of the air is the lowest part of the picture, px. */
export const airHeight = 74;

/** Water against time, with room beneath for the panel of air, time along both. */
export function coatFrame({ points, from, judgedAt, startKgM2 }: CoatPicture, width: number): PlotFrame {
  const to = Math.max(points.at(-1)?.at ?? judgedAt, judgedAt, from + hourMs);
  const most = Math.max(startKgM2, ...points.map(({ high }) => high), 1e-6);
  return plotFrame({
    width,
    left: 44,
    rightGap: 44,
    top: 26,
    height: 180,
    beneath: airHeight + 44,
    x: [from, to],
    y: [0, most],
  });
}
