import type { ScheduleFinding } from "../../../physics/heat/checkSchedule.ts";
import type { FiringNote, FiringRefusal } from "../../../physics/heat/firingSchedule.ts";
import { stagedWaxMostKg } from "../../../trade/patternBurnout.ts";
import type { FindingText } from "../../base/format/findingSay.ts";
import type { Format } from "../../base/format/units.ts";
import { reasonNames } from "./reasonWords.ts";
import { minutesWords } from "./segmentWords.ts";

/** Why there is no plan, and what to do about it. */
export function scheduleRefusalText(refusal: FiringRefusal, format: Format): FindingText {
  const needed = "neededC" in refusal ? format.show("temp", refusal.neededC) : "";
  const most = "maxC" in refusal ? format.show("temp", refusal.maxC) : "";
  switch (refusal.code) {
    case "damp-wax":
      return {
        title: "Not dry yet, and wax inside",
        says: "Heat would melt and swell the wax in a wet shell and crack it.",
        remedy: "Let it dry right through at room temperature, log it, and plan again.",
      };
    case "damp-flash":
      return {
        title: "Not dry yet: no flash fire",
        says: "In a hot kiln the water in the shell boils at once. Steam can burst it.",
        remedy: "Dry it first, or choose staged, which holds it while the water leaves.",
      };
    case "kiln-too-hot-for-damp":
      return {
        title: "Not dry yet, and the kiln is hot already",
        says: `It starts at ${format.show("temp", refusal.startC)}; a shell that is not dry is held at ${format.show("temp", refusal.holdC)} while its water leaves. Hotter than that, steam can burst it.`,
        remedy: "Let the kiln fall below that first, or dry the shell in the room.",
      };
    case "kiln-too-hot-for-staged":
      return {
        title: "The kiln is too hot for staged",
        says: `It starts at ${format.show("temp", refusal.startC)}; this pattern leaves its shell from ${format.show("temp", refusal.leaveC)}. Hotter than that, it swells, flames and soots all at once.`,
        remedy: "Let the kiln cool first, or choose flash fire.",
      };
    case "pattern-inside":
      return {
        title: "The pattern is still inside",
        says: "A firing or preheat has no step for the pattern to run out.",
        remedy: "Plan a burnout.",
      };
    case "kiln-below-bond":
      return {
        title: "This kiln does not get hot enough",
        says: `It reaches ${most}; below ${needed} the shell does not bond.`,
        remedy: "Choose a hotter kiln.",
      };
    case "kiln-below-flash":
      return {
        title: "Not hot enough for flash fire",
        says: `It reaches ${most}; a flash fire needs ${needed} or more.`,
        remedy: "Dewax with steam or hot water, choose staged for thin wax and plastic, or a hotter kiln.",
      };
    case "kiln-below-preheat":
      return {
        title: "The preheat is beyond this kiln",
        says: `It reaches ${most}; ${needed} is planned.`,
        remedy: "Lower the preheat or choose a hotter kiln.",
      };
    case "hotter-than-preheat":
      return {
        title: "The kiln is hotter than the preheat",
        says: `It starts at ${needed}.`,
        remedy: "Let it cool first, or plan a hotter preheat.",
      };
  }
}

export function noteText({ code, figures }: FiringNote, format: Format): string {
  const temp = (name: string): string => format.show("temp", figures[name] ?? 0);
  switch (code) {
    case "wax-melts-slowly":
      if ((figures["massKg"] ?? 0) > stagedWaxMostKg.value)
        return `${format.show("kg", figures["massKg"] ?? 0)} of wax is a lot for staged: it swells before it runs, and can crack the shell. Up to about ${format.show("kg", stagedWaxMostKg.value)} is usual. Use flash fire, steam or hot water.`;
      return `Wax heated slowly swells before it runs, and can crack the shell. Staged is for thin wax up to about ${format.show("kg", stagedWaxMostKg.value)} ; use flash fire, steam or hot water for the rest.`;
    case "wax-burns-inside":
      return `All ${format.show("kg", figures["massKg"] ?? 0)} of wax stays in the kiln and burns there. Better let it run out.`;
    case "flash-shock":
      return `Only a thin fused silica shell is safe in a hot kiln; this one is ${format.show("mm", figures["wallMm"] ?? 0)} thick, or of another stucco. Staged is gentler.`;
    case "fired-cool":
      return `Fired to ${temp("fireC")}: below ${temp("firedC")} the shell counts at half its strength.`;
    case "devitrifies":
      return `Above ${temp("devitrifyC")} fused silica turns to cristobalite: pour it without letting it cool below ${format.show("temp", 270)}.`;
    case "heat-release-over":
      return `The pattern gives off ${format.show("kW", figures["heatKW"] ?? 0)} while it burns; the limit for this kiln size is about ${format.show("kW", figures["limitKW"] ?? 0)} . Burn less at a time, use hollow patterns, or a larger kiln.`;
    case "reheat-after-1100":
      return `It was above ${format.show("temp", 1100)} before: it goes slowly from ${temp("fromC")} to ${temp("toC")}, and may still crack.`;
  }
}

/** What a plan that was changed runs into. */
export function scheduleFindingText(found: ScheduleFinding, format: Format): FindingText {
  const { figures } = found;
  const temp = (name: string): string => format.show("temp", figures[name] ?? 0);
  const rate = (name: string): string => format.show("rate", figures[name] ?? 0);
  const held = minutesWords(figures["heldMin"] ?? 0);
  const needed = minutesWords(figures["neededMin"] ?? 0);
  const why = found.limit === null ? "" : reasonNames[found.limit];
  switch (found.code) {
    case "too-fast":
      return {
        title: `Too fast: ${why}`,
        says: `${rate("rateKPerH")} where ${rate("limitKPerH")} is the most from ${temp("fromC")} to ${temp("toC")}.`,
        remedy: "Make this ramp slower.",
      };
    case "kiln-cannot":
      return {
        title: "Faster than the kiln can",
        says: `${rate("rateKPerH")} is planned up to ${temp("toC")}; its power gives about ${rate("canKPerH")}.`,
        remedy: "It will lag: plan it slower.",
      };
    case "over-kiln":
      return {
        title: "Above the kiln’s limit",
        says: `${temp("toC")} is planned; the kiln’s limit is ${temp("maxC")}.`,
        remedy: "Lower it.",
      };
    case "steam-hold-short":
      return {
        title: "Too little time for its water",
        says: `${held} between ${temp("fromC")} and ${temp("toC")}; ${needed} are needed before it goes on.`,
        remedy: "Hold longer there.",
      };
    case "tray-in-too-hot":
      return {
        title: "Tray of wax still in the kiln",
        says: `The plan goes to ${temp("hottestC")} with the tray in; it comes out at ${temp("mostC")} or below, or the wax can catch fire.`,
        remedy: "Put “Kiln off. Take the tray out. Shut the door.” before that, or lower the step.",
      };
    case "no-drain":
      return {
        title: "No step for the pattern to run out",
        says: `${held} between ${temp("fromC")} and ${temp("toC")}, where ${needed} are usual. What stays burns in the shell.`,
        remedy: "Put a hold in there.",
      };
    case "drain-short":
      return {
        title: "Short time to run out",
        says: `${held} between ${temp("fromC")} and ${temp("toC")}, where ${needed} are usual.`,
        remedy: "Hold longer there.",
      };
    case "openings-unchecked":
      return {
        title: "Openings not checked, or cup not down",
        says: "The plan has lost the steps to check cup, drains and vents, and to place the shell cup down.",
        remedy: "Put both steps back.",
      };
    case "vents-shut":
      return {
        title: "Vents shut in the smoke",
        says: `From ${temp("fromC")} to ${temp("toC")} the pattern smokes and needs air; no step before that opens the vents.`,
        remedy: "Put the step back before it.",
      };
    case "heat-release":
      return {
        title: "Too much heat for this kiln",
        says: `The pattern gives off ${format.show("kW", figures["heatKW"] ?? 0)} at this pace; the limit for this kiln size is about ${format.show("kW", figures["limitKW"] ?? 0)} (judgement).`,
        remedy: "Go slower through the smoke.",
      };
    case "finish-short":
      return {
        title: "Short at the top",
        says: `${held} at ${temp("atLeastC")} or more, where ${needed} are needed: ${why}.`,
        remedy: "Hold longer.",
      };
  }
}
