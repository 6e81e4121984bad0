import { shortestS } from "../../../logbook/casting/fillTimes.ts";
import { runSpread } from "../../../physics/metal/fluidity.ts";
import { bottleDrawKgH, coldStartMore, fuels, furnaceEfficiency } from "../../../trade/furnaces.ts";
import {
  dischargeCoefficients,
  fillFactorOfWall,
  fillFactors,
  ladleUpToKg,
  leanDeg,
  pourRateKgS,
} from "../../../trade/gatingFigures.ts";
import { usualKnockoutMin } from "../../../trade/knockoutTime.ts";
import { feedingWalls } from "../../../trade/metals/freezingGroup.ts";
import { losses, unknownLoss } from "../../../trade/metals/losses.ts";
import { metalToShellWM2K, mouldHeat } from "../../../trade/mouldHeat.ts";
import { recoveries } from "../../../trade/recovery.ts";
import { riserGives } from "../../../trade/riserFigures.ts";
import { marginOf, otherShrinks, studioWaxRatio, volumeRouteError } from "../../../trade/volumeRoutes.ts";
import { symbolOf } from "../../../trade/elementSymbols.ts";
import type { Element } from "../../../physics/metal/scrap.ts";
import type { Format } from "../../base/format/units.ts";
import { published, type FigureGroup } from "./figure.ts";

type Three = { readonly low: number; readonly likely: number; readonly high: number };
type Span = { readonly low: number; readonly high: number };

/** "0.3 to 1". */
const between =
  (show: (value: number) => string) =>
  ({ low, high }: Span): string =>
    `${show(low)} to ${show(high)}`;
const words = (key: string): string => key.replaceAll("-", " ");

/** Metal on its way into the shell: flow, fill, run, feeding. */
export function flowFigures(format: Format): FigureGroup {
  const plain = (value: number): string => format.number(value, 2);
  const kelvin = (k: number): string => format.show("tempDiff", k);
  const judged = (name: string, value: string, source: string, decides: string) => ({
    name,
    value,
    basis: "judgement" as const,
    source,
    decides,
  });
  return {
    title: "Metal into the shell",
    about: "Fill time, gates, whether the thinnest wall runs full, and what feeds it.",
    figures: [
      published(
        "Metal to shell, while metal lies against it",
        metalToShellWM2K,
        ({ low, likely, high }) => `${likely} W/m²K, ${low} to ${high}`,
        "whether it runs full, freezing, knock-out",
      ),
      {
        name: "Solid that stops a front",
        value: `${runSpread.stopShare.likely}, ${runSpread.stopShare.low} to ${runSpread.stopShare.high}`,
        basis: "published",
        source: "M. C. Flemings, Solidification Processing (1974), ch. 7, from memory",
        decides: "whether it runs full",
      },
      judged(
        "Face of the shell against what is read",
        `± ${kelvin(runSpread.shellK)}`,
        "swing of a controller and its sensor",
        "whether it runs full",
      ),
      judged(
        "A wall is thinner in places by",
        format.show("mm", runSpread.thinnerMm),
        "no cast wall is even",
        "whether it runs full",
      ),
      {
        ...judged("Metal loses from crucible to wall", kelvin(runSpread.lostK), "", "whether it runs full"),
        basis: "practice",
        source: "20 to 40 K",
      },
      judged(
        "Shortest fill that is planned",
        format.show("s", shortestS),
        "no mould is poured full in less",
        "the planned fill",
      ),
      ...Object.entries(pourRateKgS).map(([way, rate]) =>
        published<Three>(
          `What a ${way === "ladle" ? "hand ladle" : way} gives`,
          rate,
          ({ low, likely, high }) =>
            `${format.show("kgS", likely)}, ${format.show("kgS", low)} to ${format.show("kgS", high)}`,
          "the planned fill, choke and gates",
        ),
      ),
      published(
        "Poured from a hand ladle up to",
        ladleUpToKg,
        (kg) => format.show("kg", kg),
        "which way of pouring counts",
      ),
      ...Object.entries(dischargeCoefficients).map(([flow, cd]) =>
        published<Three>(
          `A ${flow} sprue lets through, of the ideal`,
          cd,
          ({ low, likely, high }) => `${likely}, ${low} to ${high}`,
          "size of the choke",
        ),
      ),
      ...Object.entries(fillFactors).map(([by, factor]) =>
        published(`Factor of the fill time, ${words(by)}`, factor, plain, "the planned fill"),
      ),
      ...[2, 3, 5, 10].flatMap((mm) => {
        const factor = fillFactorOfWall(mm);
        return factor === null
          ? []
          : [
              published(
                `Factor of the fill time, wall of ${format.show("mm", mm)}`,
                factor,
                plain,
                "the planned fill",
              ),
            ];
      }),
      ...Object.entries(mouldHeat).map(([mould, heat]) =>
        published(
          `Heat of a mould: ${words(mould)}`,
          heat,
          (of) =>
            `${format.show("wMK", of.conductivityWMK)}, ${format.show("kgM3", of.densityKgM3)}, ${format.show("jKgK", of.heatJKgK)}`,
          "freezing and whether it runs full",
        ),
      ),
      published(
        "Lean of a shell in its sand",
        leanDeg,
        between((deg) => format.show("deg", deg)),
        "the advice on leaning the mould",
      ),
      ...Object.entries(feedingWalls).map(([group, reach]) =>
        published(
          `Metal feeds along a wall, ${words(group)} freezing`,
          reach,
          (walls) => `${walls} walls`,
          "how far apart risers stand",
        ),
      ),
      ...Object.entries(riserGives).map(([riser, gives]) =>
        published(
          `A ${riser} riser gives of its volume`,
          gives,
          (share) => format.show("percent", share),
          "size of a riser",
        ),
      ),
      published(
        "Small bronzes are knocked out after about",
        usualKnockoutMin,
        (min) => format.show("min", min),
        "knock-out where sections are not known",
      ),
    ],
  };
}

/** Charge, melt and pattern size. */
export function chargeFigures(format: Format): FigureGroup {
  const share = (value: number): string => format.show("share", value);
  const names: Readonly<Record<keyof typeof losses, string>> = {
    silicon: "silicon bronze and brass",
    tinAndRed: "tin bronze and red brass",
    yellow: "yellow brass",
    aluminiumBronze: "aluminium bronze",
    aluminium: "aluminium",
    copper: "copper",
    silver: "silver",
  };
  return {
    title: "Charge and melt",
    about: "Until the shop's own melts say better.",
    figures: [
      ...(Object.keys(names) as (keyof typeof losses)[]).flatMap((metal) =>
        Object.entries(losses[metal]).map(([kind, loss]) =>
          published(`Lost of ${words(kind)}, ${names[metal]}`, loss, between(share), "how much to melt"),
        ),
      ),
      published("Lost of a metal of no known practice", unknownLoss, share, "how much to melt"),
      ...Object.entries(marginOf).map(([by, margin]) =>
        published(`Added to a charge whose volume is ${by}`, margin, share, "how much to melt"),
      ),
      ...Object.entries(volumeRouteError).map(([route, error]) =>
        published(`Volume by ${words(route)} may be off by`, error, share, "the range of the casting's mass"),
      ),
      ...Object.entries(otherShrinks).map(([what, shrink]) =>
        published(`Shrink of ${words(what)}`, shrink, share, "scale of the pattern"),
      ),
      published(
        "Bronze to wax in studios",
        studioWaxRatio,
        (ratio) => `${ratio} to 1`,
        "shown beside the ratio by density",
      ),
      ...(Object.entries(recoveries) as [Element, NonNullable<(typeof recoveries)[Element]>][]).map(
        ([element, through]) =>
          published(
            `Comes through a melt: ${symbolOf(element)}`,
            through,
            between(share),
            "what a mixed charge holds",
          ),
      ),
      ...Object.entries(furnaceEfficiency).map(([furnace, of]) =>
        published(
          `Heat that ends in the metal, ${words(furnace)}`,
          of,
          between(share),
          "time and fuel of a melt",
        ),
      ),
      published("A cold lining takes longer by", coldStartMore, between(share), "time of a first melt"),
      ...Object.entries(fuels).map(([fuel, heat]) =>
        published(
          `Heat of ${words(fuel)}`,
          heat,
          (j) => `${format.number(j / 1e6, 1)} MJ/kg`,
          "fuel of a melt",
        ),
      ),
      published(
        "A small propane bottle gives off",
        bottleDrawKgH,
        between((kg) => format.show("kg", kg)),
        "the warning of a bottle too small, an hour",
      ),
    ],
  };
}
