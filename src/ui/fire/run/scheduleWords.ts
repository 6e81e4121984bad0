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
        says: "Drying it hot would melt and swell the wax in a wet shell, which cracks it.",
        remedy:
          "Let it hang at room temperature until it is dry right through, log that it is, and plan again.",
      };
    case "damp-flash":
      return {
        title: "Not dry yet: no flash fire",
        says: "In a hot kiln the water in the wall boils at once; the steam can burst it.",
        remedy: "Dry it first, or choose the staged way, which holds it while its water leaves.",
      };
    case "kiln-too-hot-for-damp":
      return {
        title: "Not dry yet, and the kiln is hot already",
        says: `It starts at ${format.show("temp", refusal.startC)}; a shell that is not dry is held at ${format.show("temp", refusal.holdC)} while its water leaves. Hotter than that, steam can burst it.`,
        remedy: "Let the kiln fall below that first, or dry the shell in the room.",
      };
    case "kiln-too-hot-for-staged":
      return {
        title: "The kiln is too hot for the staged way",
        says: `It starts at ${format.show("temp", refusal.startC)}; this pattern leaves its shell from ${format.show("temp", refusal.leaveC)}. Put in hotter than that, it swells, flames and soots all at once.`,
        remedy: "Let the kiln fall first, or choose flash fire, which is made for it.",
      };
    case "pattern-inside":
      return {
        title: "The pattern is still inside",
        says: "A firing or a preheat has no step in which a pattern could run out.",
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
        says: `It reaches ${most}; a pattern is only rushed out at ${needed} or more.`,
        remedy:
          "Dewax with steam or hot water, choose the staged way for thin wax and plastic, or a hotter kiln.",
      };
    case "kiln-below-preheat":
      return {
        title: "The preheat is beyond this kiln",
        says: `It reaches ${most}; ${needed} were asked.`,
        remedy: "Lower the preheat or choose a hotter kiln.",
      };
    case "hotter-than-preheat":
      return {
        title: "The kiln is hotter than the preheat",
        says: `It starts at ${needed}.`,
        remedy: "Let it fall first, or ask for more.",
      };
  }
}

export function noteText({ code, figures }: FiringNote, format: Format): string {
  const temp = (name: string): string => format.show("temp", figures[name] ?? 0);
  switch (code) {
    case "wax-melts-slowly":
      if ((figures["massKg"] ?? 0) > stagedWaxMostKg.value)
        return `${format.show("kg", figures["massKg"] ?? 0)} of wax is much for the staged way: it swells against the wall before it runs, and can crack it. Up to about ${format.show("kg", stagedWaxMostKg.value)} (judgement) is usual; use flash fire, steam or hot water.`;
      return `Wax heated slowly swells against the wall before it runs, and can crack it. Staged is for thin wax up to about ${format.show("kg", stagedWaxMostKg.value)} (judgement); flash, steam or hot water for the rest.`;
    case "wax-burns-inside":
      return `All ${format.show("kg", figures["massKg"] ?? 0)} of wax stays in the kiln and burns there. Better let it run out.`;
    case "flash-shock":
      return `Only a thin wall of fused silica bears a hot kiln without a thought; this one is ${format.show("mm", figures["wallMm"] ?? 0)} thick, or of another stucco. The staged way is gentler.`;
    case "fired-cool":
      return `Fired to ${temp("fireC")}: below ${temp("firedC")} the shell counts at half its strength.`;
    case "devitrifies":
      return `Above ${temp("devitrifyC")} fused silica turns to cristobalite: pour it without letting it cool below ${format.show("temp", 270)}.`;
    case "heat-release-over":
      return `The pattern gives off ${format.show("kW", figures["heatKW"] ?? 0)} while it burns; a kiln this size bears about ${format.show("kW", figures["limitKW"] ?? 0)} (judgement). Less pattern at a time, hollow ones, or a larger kiln.`;
    case "reheat-after-1100":
      return `It saw more than ${format.show("temp", 1100)} before: it goes slowly from ${temp("fromC")} to ${temp("toC")}, and may crack all the same.`;
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
        remedy: "Make this slope gentler.",
      };
    case "kiln-cannot":
      return {
        title: "Faster than the kiln can",
        says: `${rate("rateKPerH")} is asked up to ${temp("toC")}; its power gives about ${rate("canKPerH")}.`,
        remedy: "It will lag behind: plan it slower.",
      };
    case "over-kiln":
      return {
        title: "Hotter than the kiln may go",
        says: `${temp("toC")} is asked; the kiln’s most is ${temp("maxC")}.`,
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
        says: "The plan no longer says to look at cup, drains and vents, and to stand the shell cup down.",
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
        title: "Much heat for this kiln",
        says: `The pattern gives off ${format.show("kW", figures["heatKW"] ?? 0)} at this pace; a kiln this size bears about ${format.show("kW", figures["limitKW"] ?? 0)} (judgement).`,
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
