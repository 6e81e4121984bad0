import { catalogue, params } from "./catalogue.ts";

export const wallWays = catalogue("wall-ways", {
  "way.addCoats": params("Add {coats}."),
  "way.putRibsAcrossIt": params("Put ribs across it, {ribEveryMm} apart or closer."),
  "way.boxItInVibrated": params("Box it in vibrated sand, {sandCoverMm} all round{when}."),
  "way.andAddCoats": params(", and add {coats}"),
  "way.bringTheHeadDown": params("Bring the head down to {headText} or less."),
  "way.pourItLyingIf": params("Pour it lying, if it stands: the head is then {headText}."),
  "way.castItInPanels": params("Cast it in {panels} panels of {panelWidthMm} by {panelLengthMm}."),
  "noSingleWay.noSingleChangeIs":
    "No single change is enough: divide it, lower the head and support it together.",
});
