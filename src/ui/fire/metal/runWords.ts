import type { MisrunAdvice, MisrunStep } from "../../../physics/metal/misrun.ts";
import type { RunBand } from "../../../physics/metal/fluidity.ts";
import type { Format } from "../../base/format/units.ts";
import { shortSpan } from "./heatWords.ts";

/** The word on a section, with its level. */
export const runVerdicts = {
  runs: { level: "clear", says: "It runs full." },
  "may-stop": { level: "watch", says: "It may stop before it is full." },
  "will-stop": { level: "hold", says: "It stops before it is full." },
} as const satisfies Record<MisrunAdvice["verdict"], object>;

/** Time the front has, in words. */
export function hasWords(has: RunBand | null): string {
  if (has === null) return "no limit: the shell is about as hot as where the metal begins to freeze";
  const { lowS, likelyS, highS } = has;
  const likely = likelyS === null ? "" : `, likely ${shortSpan(likelyS)}`;
  return highS === null
    ? `${shortSpan(lowS)} or more${likely}`
    : `${shortSpan(lowS)} to ${shortSpan(highS)}${likely}`;
}

/** Why: the time the front takes against the time it has. */
export function runBecause({ front: { speedMS, takesS }, has }: MisrunAdvice, format: Format): string {
  const takes = `The front moves at ${format.show("speed", speedMS)} and takes ${shortSpan(takesS)}.`;
  if (has === null) return `${takes} In a shell this hot it does not stop.`;
  const least = `This wall gives it at least ${shortSpan(has.lowS)}`;
  return has.highS === null ? `${takes} ${least}.` : `${takes} ${least}, at best ${shortSpan(has.highS)}.`;
}

/** What to change, one line a step. */
export function runStepWords(step: MisrunStep, format: Format): string {
  const temp = (c: number): string => format.show("temp", Math.round(c / 10) * 10);
  switch (step.do) {
    case "heat-shell":
      // Rounded up: a shell that is just short of it is not told less than it has.
      return `Heat the shell first: ${format.show("temp", Math.ceil(step.toC / 10) * 10)} at its face when the metal comes. Hotter metal second.`;
    case "fill-within":
      return `Fill it within ${shortSpan(step.fillS)}.`;
    case "add-gate-or-thicken":
      return `No shell heat that is allowed is enough. Put a gate within ${format.show("mm", Number(step.mostWayMm.toPrecision(2)))} of its far end, or thicken the wall.`;
    case "cool-shell":
      return `Keep the shell below ${temp(step.toC)}, ${format.show("tempDiff", 50)} under where the metal begins to melt. Hotter, the grain coarsens and gas is drawn in.`;
    case "shell-below-usual":
      return `The shell is colder than usual for this wall, which begins at ${temp(step.usualC)}.`;
    case "shell-above-usual":
      return `The shell is hotter than usual for this wall, which ends at ${temp(step.usualC)}.`;
  }
}
