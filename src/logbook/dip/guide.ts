import type { HoldPoint as LoggedHold } from "../entries/pieceBodies.ts";
import type { CoatKind } from "../../trade/coats.ts";
import { dipSteps, lookOverBefore, type GuideDipStep, type GuideHold } from "../../trade/dipSteps.ts";

/** One screen of the guide. */
export type GuideStep = {
  readonly id: GuideDipStep["id"] | "look-over";
  readonly seconds: GuideDipStep["seconds"];
  readonly dust: boolean;
  /** Ticked before the next step, and kept in the log of the piece; the bucket's own look has its own screen. */
  readonly hold: LoggedHold | null;
  /** The coat goes into the log when this step is done: that is when it begins to dry. */
  readonly logsCoat: boolean;
};

const logged: Readonly<Record<GuideHold, LoggedHold | null>> = {
  "bucket-fit": null,
  "no-bare-wax": "prime-coverage",
  "after-second-coat": "after-second-coat",
  "mid-shell": "mid-shell",
  "before-seal": "before-seal",
  "lip-clear": "cup-rim",
};

/** The steps of one dip in order: a look over the shell where it owes one, and no prewet where none is wanted. */
export function guideSteps(from: {
  readonly kind: CoatKind;
  readonly prewet: boolean;
  readonly coatsDone: number;
  readonly coatsPlanned: number | null;
}): readonly GuideStep[] {
  const { kind, prewet, coatsDone, coatsPlanned } = from;
  const steps = dipSteps[kind].filter(({ id }) => prewet || (id !== "prewet" && id !== "prewet-drain"));
  const last = steps.some(({ id }) => id === "stucco") ? "stucco" : "drain";
  const owed = lookOverBefore({ coatsDone, coatsPlanned: coatsPlanned ?? 0 });
  const look: readonly GuideStep[] =
    owed === null
      ? []
      : [{ id: "look-over", seconds: null, dust: false, hold: logged[owed], logsCoat: false }];
  return [
    ...look,
    ...steps.map(({ id, seconds, dust, hold }) => ({
      id,
      seconds,
      dust,
      hold: hold === null ? null : logged[hold],
      logsCoat: id === last,
    })),
  ];
}
