import type { WordsOf } from "./findingSay.ts";

const limits: Readonly<Record<string, string>> = {
  "thermal-stress": "stress in the wall",
  steam: "steam",
  quartz: "the inversion of quartz",
  cristobalite: "the inversion of cristobalite",
  decomposition: "the smoke of the pattern",
  "heat-release": "the pattern’s own heat",
};

export const runLimitWords: WordsOf<"run-broke-a-limit"> = {
  "too-fast": (say) => ({
    title: "Heated or cooled too fast",
    says: `In the kiln it went through a limit (${limits[say.text("limit")] ?? "of its plan"}) at ${say.isKnown("rateKPerH") ? `${say.show("rateKPerH")} or more` : "once"}, where ${say.show("limitKPerH")} is the most from ${say.show("fromC")} to ${say.show("toC")}.`,
    remedy: "Look every edge and the cup over for cracks, cold, in a good light; log what you find.",
  }),
  "no-drain": (say) => ({
    title: "Pattern had no time to run out",
    says: `At most ${say.show("heldMin")} from ${say.show("fromC")} to ${say.show("toC")}, where ${say.show("neededMin")} are usual: it burnt or swelled inside.`,
    remedy: "Look for cracks at thick places, and inside for carbon; fire again with air if it is grey.",
  }),
  "steam-short": (say) => ({
    title: "Its water was boiled out in a hurry",
    says: `At most ${say.show("heldMin")} from ${say.show("fromC")} to ${say.show("toC")}; ${say.show("neededMin")} were needed.`,
    remedy: "Tap it all over: where it sounds hollow, coats have lifted.",
  }),
  "hold-short": (say) => ({
    title: "Short at the top of its fire",
    says: `At most ${say.show("heldMin")} at ${say.show("atLeastC")} or more; ${say.show("neededMin")} were needed.`,
    remedy: "Fire it again for the whole time, or reckon with half its strength.",
  }),
};
