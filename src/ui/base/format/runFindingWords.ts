import type { WordsOf } from "./findingSay.ts";
import { runFindings as t, limitsTexts } from "../words/runFindings.ts";

const limits: Readonly<Record<string, string>> = limitsTexts;

export const runLimitWords: WordsOf<"run-broke-a-limit"> = {
  "too-fast": (say) => ({
    title: t["runLimit.too-fast.title"],
    says: t["runLimit.too-fast.says"]({
      when: say.isKnown("rateKPerH")
        ? t["runLimit.too-fast.says.rateKPerHOrMore"]({ rateKPerH: say.show("rateKPerH") })
        : t["runLimit.too-fast.says.tooFast"],
      fromC: say.show("fromC"),
      toC: say.show("toC"),
      limitKPerH: say.show("limitKPerH"),
      when2: limits[say.text("limit")] ?? t["runLimit.too-fast.says.limitOfThePlan"],
    }),
    remedy: t["runLimit.too-fast.remedy"],
  }),
  "no-drain": (say) => ({
    title: t["runLimit.no-drain.title"],
    says: t["runLimit.no-drain.says"]({
      heldMin: say.show("heldMin"),
      fromC: say.show("fromC"),
      toC: say.show("toC"),
      neededMin: say.show("neededMin"),
    }),
    remedy: t["runLimit.no-drain.remedy"],
  }),
  "steam-short": (say) => ({
    title: t["runLimit.steam-short.title"],
    says: t["runLimit.steam-short.says"]({
      heldMin: say.show("heldMin"),
      fromC: say.show("fromC"),
      toC: say.show("toC"),
      neededMin: say.show("neededMin"),
    }),
    remedy: t["runLimit.steam-short.remedy"],
  }),
  "hold-short": (say) => ({
    title: t["runLimit.hold-short.title"],
    says: t["runLimit.hold-short.says"]({
      heldMin: say.show("heldMin"),
      atLeastC: say.show("atLeastC"),
      neededMin: say.show("neededMin"),
    }),
    remedy: t["runLimit.hold-short.remedy"],
  }),
};
