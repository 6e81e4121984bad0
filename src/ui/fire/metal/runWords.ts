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
  if (has === null) return "no limit: the shell is about as hot as the freezing metal";
  const { lowS, likelyS, highS } = has;
  const likely = likelyS === null ? "" : `, likely ${shortSpan(likelyS)}`;
  return highS === null
    ? `${shortSpan(lowS)} or more${likely}`
    : `${shortSpan(lowS)} to ${shortSpan(highS)}${likely}`;
}

/** Why: the time the front takes against the time it has. */
export function runBecause({ front: { speedMS, takesS }, has }: MisrunAdvice, format: Format): string {
  const takes = `The front moves at ${format.show("speed", speedMS)} and takes ${shortSpan(takesS)}.`;
  if (has === null) return `${takes} In a shell this hot it does not freeze in time to stop.`;
  const least = `This section allows at least ${shortSpan(has.lowS)}`;
  return has.highS === null ? `${takes} ${least}.` : `${takes} ${least}, at best ${shortSpan(has.highS)}.`;
}

/** What to change, one line a step. */
export function runStepWords(step: MisrunStep, format: Format): string {
  const temp = (c: number): string => format.show("temp", Math.round(c / 10) * 10);
  // Upward: what is asked for must not lie below what the shell has.
  const atLeast = (c: number): string => format.show("temp", Math.ceil(c / 10) * 10);
  switch (step.do) {
    case "heat-shell":
      return `Heat the shell first: ${atLeast(step.toC)} at its face at the pour. Hotter metal second.`;
    case "fill-within":
      return `Fill it within ${shortSpan(step.fillS)}.`;
    case "add-gate-or-thicken":
      return `No allowed shell temperature is enough. Put a gate within ${format.show("mm", Number(step.mostWayMm.toPrecision(2)))} of its far end, or thicken the section.`;
    case "cool-shell":
      return `Keep the shell below ${temp(step.toC)}, ${format.show("tempDiff", 50)} below the solidus. Hotter means coarse grain and gas.`;
    case "shell-below-usual":
      return `The shell is colder than usual for this section, which starts at ${temp(step.usualC)}.`;
    case "shell-above-usual":
      return `The shell is hotter than usual for this section, which ends at ${temp(step.usualC)}.`;
  }
}
