import type { PlanQuestion } from "../../../logbook/fire/planDraft.ts";

type PlanGap = Extract<PlanQuestion, { ok: false }>["gaps"][number];

/** What a plan still wants to know. */
export const gapWords: Readonly<Record<PlanGap, string>> = {
  pieces: "Tick the pieces that go in.",
  kiln: "Give the kiln’s hottest temperature, its power and its chamber.",
  material: "Say what the pattern burns like: what is not known can’t be planned.",
  "materials-differ": "The patterns differ: fire them apart, or choose the one that asks most.",
  "pattern-mass": "Give the mass of the patterns: it sets how fast they may burn in a kiln this size.",
  wall: "Give the wall, 1 mm to 60 mm: its thickness sets how fast it may be heated.",
  "shell-mass": "Give the mass of the shells: the kiln must warm them.",
};
