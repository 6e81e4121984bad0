import type { WordsOf } from "./findingSay.ts";
import { coreFindings as t } from "../words/coreFindings.ts";

export const coreLiftWords: WordsOf<"core-lift"> = {
  floats: (say) => ({
    title: t["coreLift.floats.title"],
    says: t["coreLift.floats.says"]({
      liftN: say.show("liftN"),
      holdN: say.show("holdN"),
      needN: say.show("needN"),
    }),
    remedy: t["coreLift.floats.remedy"],
  }),
  "not-known": (say) => ({
    title: t["coreLift.not-known.title"],
    says: say.isKnown("liftN")
      ? t["coreLift.not-known.says"]({ liftN: say.show("liftN") })
      : t["coreLift.not-known.says.itsLiftDependsOn"],
    remedy: t["coreLift.not-known.remedy"],
  }),
};
