import type { WordsOf } from "./findingSay.ts";

const limits: Readonly<Record<string, string>> = {
  "thermal-stress": "stress in the shell",
  steam: "steam",
  quartz: "the quartz inversion",
  cristobalite: "the cristobalite inversion",
  decomposition: "smoke from the pattern",
  "heat-release": "heat from the burning pattern",
};

export const runLimitWords: WordsOf<"run-broke-a-limit"> = {
  "too-fast": (say) => ({
    title: "Heated or cooled too fast",
    says: `${say.isKnown("rateKPerH") ? `${say.show("rateKPerH")} or more` : "Too fast"} from ${say.show("fromC")} to ${say.show("toC")}, where ${say.show("limitKPerH")} is the most (${limits[say.text("limit")] ?? "limit of the plan"}).`,
    remedy:
      "When it is cold, check every edge and the pour cup for cracks in good light, and log what you find.",
  }),
  "no-drain": (say) => ({
    title: "Pattern had no time to run out",
    says: `At most ${say.show("heldMin")} from ${say.show("fromC")} to ${say.show("toC")}; ${say.show("neededMin")} are usual. It burnt or swelled inside.`,
    remedy: "Check thick places for cracks and the inside for carbon. If it is grey, fire it again with air.",
  }),
  "steam-short": (say) => ({
    title: "Water driven out too fast",
    says: `At most ${say.show("heldMin")} from ${say.show("fromC")} to ${say.show("toC")}; ${say.show("neededMin")} were needed.`,
    remedy: "Tap it all over: a hollow sound means coats have lifted.",
  }),
  "hold-short": (say) => ({
    title: "Too short at the top of the firing",
    says: `At most ${say.show("heldMin")} at ${say.show("atLeastC")} or more; ${say.show("neededMin")} were needed.`,
    remedy: "Fire it again for the whole time, or count on half its strength.",
  }),
};
