import { headText } from "./figureText.ts";
import type { Say } from "./findingSay.ts";
import { wallWays as t } from "../words/wallWays.ts";
import { counts } from "../words/counts.ts";

/** What would make a shell carry its pour, each as a sentence that stands alone; from the figures of `wayFigures`. */
export function wayWords(say: Pick<Say, "format" | "show" | "isKnown" | "value">): readonly string[] {
  const coats = (name: string): string => counts.coats(say.value(name));
  return [
    ...(say.isKnown("moreCoats") ? [t["way.addCoats"]({ coats: coats("moreCoats") })] : []),
    ...(say.isKnown("ribEveryMm") ? [t["way.putRibsAcrossIt"]({ ribEveryMm: say.show("ribEveryMm") })] : []),
    ...(say.isKnown("sandCoats")
      ? [
          t["way.boxItInVibrated"]({
            sandCoverMm: say.show("sandCoverMm"),
            when: say.value("sandCoats") > 0 ? t["way.andAddCoats"]({ coats: coats("sandCoats") }) : "",
          }),
        ]
      : []),
    ...(say.isKnown("headM")
      ? [t["way.bringTheHeadDown"]({ headText: headText(say.value("headM"), say.format) })]
      : []),
    ...(say.isKnown("lyingHeadM")
      ? [t["way.pourItLyingIf"]({ headText: headText(say.value("lyingHeadM"), say.format) })]
      : []),
    ...(say.isKnown("panels")
      ? [
          t["way.castItInPanels"]({
            panels: say.show("panels"),
            panelWidthMm: say.show("panelWidthMm"),
            panelLengthMm: say.show("panelLengthMm"),
          }),
        ]
      : []),
  ];
}

export const noSingleWay = t["noSingleWay.noSingleChangeIs"];
