import type { BarKind } from "../../../geometry/gatingBars.ts";

export const barNames: Readonly<Record<BarKind, string>> = {
  cup: "Cup",
  sprue: "Sprue",
  runner: "Runner",
  gate: "Gate",
  vent: "Vent",
  feeder: "Feeder",
  drain: "Drain",
};
