import { headText } from "./figureText.ts";
import type { Say } from "./findingSay.ts";

/** What would make a shell carry its pour, each as a sentence that stands alone; from the figures of `wayFigures`. */
export function wayWords(say: Pick<Say, "format" | "show" | "isKnown" | "value">): readonly string[] {
  const coats = (name: string): string => `${say.show(name)} ${say.value(name) === 1 ? "coat" : "coats"}`;
  return [
    ...(say.isKnown("moreCoats") ? [`Add ${coats("moreCoats")}.`] : []),
    ...(say.isKnown("ribEveryMm") ? [`Put ribs across it, ${say.show("ribEveryMm")} apart or closer.`] : []),
    ...(say.isKnown("sandCoats")
      ? [
          `Box it in vibrated sand, ${say.show("sandCoverMm")} all round${say.value("sandCoats") > 0 ? `, and add ${coats("sandCoats")}` : ""}.`,
        ]
      : []),
    ...(say.isKnown("headM")
      ? [`Bring the head down to ${headText(say.value("headM"), say.format)} or less.`]
      : []),
    ...(say.isKnown("lyingHeadM")
      ? [`Pour it lying, if it stands: the head is then ${headText(say.value("lyingHeadM"), say.format)}.`]
      : []),
    ...(say.isKnown("panels")
      ? [
          `Cast it in ${say.show("panels")} panels of ${say.show("panelWidthMm")} by ${say.show("panelLengthMm")}.`,
        ]
      : []),
  ];
}

export const noSingleWay = "No single change is enough: divide it, lower the head and support it together.";
