import type { RunFinding } from "../../../physics/heat/runFindings.ts";
import type { FindingText } from "../../base/format/findingSay.ts";
import type { Format } from "../../base/format/units.ts";
import { reasonNames } from "./reasonWords.ts";
import { minutesWords } from "./segmentWords.ts";

/** What a run did to the shell, in words: what was read, what was the most or the least, what to do now. */
export function runFindingText({ code, limit, figures }: RunFinding, format: Format): FindingText {
  const temp = (name: string): string => format.show("temp", figures[name] ?? 0);
  const rate = (name: string): string =>
    Number.isFinite(figures[name] ?? 0) ? format.show("rate", figures[name] ?? 0) : "no time at all";
  const held = minutesWords(figures["heldMin"] ?? 0);
  const needed = minutesWords(figures["neededMin"] ?? 0);
  const why = limit === null ? "" : reasonNames[limit];
  switch (code) {
    case "too-fast":
      return {
        title: `Too fast through a limit: ${why}`,
        says: `At least ${rate("rateKPerH")} between two readings, where ${rate("limitKPerH")} is the most from ${temp("fromC")} to ${temp("toC")}.`,
        remedy: "Slow it down now. When it is cold, look every edge over for cracks before anything else.",
      };
    case "hold-short":
      return {
        title: `Hold too short: ${why}`,
        says:
          limit === "steam"
            ? `At most ${held} between ${temp("fromC")} and ${temp("toC")}; ${needed} were needed for its water.`
            : `At most ${held} at ${temp("atLeastC")} or more; ${needed} were needed.`,
        remedy:
          limit === "steam"
            ? "Listen for ticks. Look for lifted coats when it is cold."
            : "Hold again, or count the shell at half strength.",
      };
    case "drain-missed":
      return {
        title: "No time to drain",
        says: `At most ${held} where the pattern runs out, ${temp("fromC")} to ${temp("toC")}; ${needed} are usual.`,
        remedy:
          "What stayed inside burns: expect flame and soot, keep the vents open and hold longer at the top.",
      };
    case "tray-in-too-hot":
      return {
        title: "Tray not ticked as taken out",
        says: `${temp("kilnC")} was read; a tray of wax is out before ${temp("mostC")}, or it can catch fire.`,
        remedy:
          "If it is out, tick it. If not: kiln off, door shut, and let it fall below that before you open it.",
      };
    case "vents-unticked":
      return {
        title: "Vents not ticked as open",
        says: `The pattern smokes from ${temp("fromC")} to ${temp("toC")}, and no vent is ticked as open before that.`,
        remedy: "If they are open, tick it. If not: open a crack, stand aside, then open wide.",
      };
    case "over-kiln":
      return {
        title: "Over the kiln’s limit",
        says: `${temp("kilnC")} was read; the kiln’s limit is ${temp("maxC")}.`,
        remedy: "Switch it off at its own controller.",
      };
  }
}
