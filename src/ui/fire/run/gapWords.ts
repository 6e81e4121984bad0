import type { Format } from "../../base/format/units.ts";
import type { PlanQuestion } from "../../../logbook/fire/planDraft.ts";

type PlanGap = Extract<PlanQuestion, { ok: false }>["gaps"][number];

/** What a plan still wants to know. */
export const gapWords = (format: Format): Readonly<Record<PlanGap, string>> => ({
  pieces: "Tick the pieces that go in.",
  kiln: "Enter the kiln’s highest temperature, power and chamber.",
  material: "Choose the closest pattern material.",
  "materials-differ": "The patterns differ: fire them separately, or choose the most demanding.",
  "pattern-mass": "Enter the mass of the patterns: it limits how fast they may burn in this kiln.",
  wall: `Enter the shell thickness, ${format.show("mm", 1)} to ${format.show("mm", 60)}: it limits how fast it may be heated.`,
  "shell-mass": "Enter the mass of the shells: the kiln must heat them.",
});
