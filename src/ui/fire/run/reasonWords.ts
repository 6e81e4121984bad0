import type { Reason, ReasonCode } from "../../../physics/heat/firingSegments.ts";
import type { Format } from "../../base/format/units.ts";

export const reasonNames: Readonly<Record<ReasonCode, string>> = {
  "thermal-stress": "stress in the shell",
  steam: "steam",
  quartz: "quartz inversion",
  cristobalite: "cristobalite inversion",
  "drain-window": "pattern runs out",
  "wax-flash-point": "flash point of wax",
  decomposition: "smoke",
  "heat-release": "heat of the pattern",
  "carbon-burn-off": "carbon burns off",
  sintering: "shell bonds",
  "kiln-power-limit": "the kiln’s power",
  "kiln-loss": "the kiln cools by itself",
  soak: "soak",
  practice: "practice",
};

/** The name of a reason as the log keeps it; none for a code of a later version. */
export const reasonName = (code: string | undefined): string | null =>
  code !== undefined && Object.hasOwn(reasonNames, code) ? reasonNames[code as ReasonCode] : null;

/** Why a slope is no steeper or a hold no shorter, with its numbers. */
export function reasonWords({ code, figures }: Reason, format: Format): string {
  const rate = (name = "rateKPerH"): string => format.show("rate", figures[name] ?? 0);
  const temp = (name: string): string => format.show("temp", figures[name] ?? 0);
  const minutes = format.show("min", figures["minutes"] ?? 0);
  const isSlope = figures["rateKPerH"] !== undefined;
  const band = `from ${temp("fromC")} to ${temp("toC")}`;
  switch (code) {
    case "thermal-stress":
      return `Stress between the hot and cool face of this shell allows ${rate()}.`;
    case "steam":
      return isSlope
        ? `Water boils in the shell: no more than ${rate()} ${band}.`
        : `The shell is not known to be dry: ${minutes} between ${temp("fromC")} and ${temp("toC")} drive the water out slowly. Fast steam lifts the coats.`;
    case "quartz":
      return `Quartz swells at ${format.show("temp", 573)}: no more than ${rate()} ${band}.`;
    case "cristobalite":
      return `A shell that saw more than ${format.show("temp", 1100)} holds cristobalite, which jumps here: no more than ${rate()} ${band}.`;
    case "drain-window":
      if (figures["fromC"] !== undefined)
        return `The pattern softens and runs out ${band}: give it time to drain before it burns.`;
      return figures["minutes"] === undefined
        ? "Open the way out before the pattern softens."
        : `${minutes} for the pattern to run out.`;
    case "wax-flash-point":
      return `Wax on a tray can catch fire. Take the tray out before the kiln passes ${temp("mostC")}.`;
    case "decomposition":
      if (isSlope) return `The pattern smokes ${band}: no more than ${rate()}, so that air keeps up.`;
      return figures["fromC"] === undefined
        ? "The pattern smokes as it goes."
        : `The pattern smokes ${band}: it needs air.`;
    case "heat-release":
      return `The pattern’s own heat, for a kiln this size: no more than ${rate()} ${band}.`;
    case "carbon-burn-off":
      return figures["minutes"] === undefined
        ? "Carbon left inside spoils the casting’s face."
        : `${minutes} at ${temp("atLeastC")} or more, with air, until the carbon is gone.`;
    case "sintering":
      return `${minutes} at ${temp("atLeastC")} or more to bond a shell this thick.`;
    case "kiln-power-limit":
      return `The kiln’s power heats it at ${rate()} near ${temp("atC")}; estimate.`;
    case "kiln-loss":
      return `Shut and switched off the kiln falls at about ${rate()}; estimate.`;
    case "soak":
      return figures["minutes"] === undefined
        ? "It stays hot until it is poured."
        : `${minutes} until the middle of the shell is as hot as the kiln.`;
    case "practice":
      return isSlope ? `Usual pace: ${rate()}.` : "Usual practice.";
  }
}
