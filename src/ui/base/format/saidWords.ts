import type { Said, Unsaid } from "../../../logbook/drying/coatSaid.ts";
import { duration } from "./time.ts";
import type { Format } from "./units.ts";
import { checkTexts as t, methodTexts } from "../words/checkTexts.ts";

/** By what something was found out, as the head of a line. */
export const methodWords: Readonly<Record<Said["by"], string>> = methodTexts;

/** A weight to one digit more than elsewhere, as a scale shows it. */
export const balanceWords = (massG: number, format: Format): string =>
  `${format.number(format.toShown("g", massG), format.digits("g") + 1)}\u00a0${format.unit("g")}`;

const share = (value: number, format: Format): string =>
  format.show("percent", Math.min(1, Math.max(0, value)));

/** What one check said of the water left, with its error. */
export function saidWords(said: Said, format: Format): string {
  switch (said.by) {
    case "touch":
      if (said.saw !== "dry") return t["said.touch"]({ saw: said.saw });
      return t["said.touch.feltDryAHand"];
    case "colour":
      if (said.saw !== "dry") return t["said.colour"]({ saw: said.saw });
      return t["said.colour.lookedDryColourShows"];
    case "target-mass":
      return t["said.target-mass"]({
        share: share(said.waterShare, format),
        share2: share(said.sdShare, format),
        balanceWords: balanceWords(said.targetG, format),
        balanceWords2: balanceWords(said.sdG, format),
      });
    case "weight-loss":
      return t["said.weight-loss"]({
        clause: said.lossG < 0 ? "gained" : "lost",
        balanceWords: balanceWords(Math.abs(said.lossG), format),
        duration: duration(said.apartS * 1000),
        balanceWords2: balanceWords(said.waterG, format),
      });
    case "approach":
      return t["said.approach"]({
        balanceWords: balanceWords(said.lowG, format),
        balanceWords2: balanceWords(said.highG, format),
        used: said.used,
      });
    case "surface":
      return t["said.surface"]({
        share: share(said.index, format),
        share2: share(said.indexSd, format),
        surfaceSays: surfaceSays(said),
      });
    case "bag":
      return bagSays[said.says];
    case "resistance":
      return t["said.resistance"]({
        clause: format.number(said.ratio, said.ratio < 10 ? 1 : 0),
        share: share(said.waterShare, format),
      });
  }
}

function surfaceSays({ says, outerFaceOnly }: Extract<Said, { by: "surface" }>): string {
  const found = {
    dry: t["surfaceSays.atRoomTemperature"],
    nearly: t["surfaceSays.nearlyDryStillA"],
    wet: t["surfaceSays.stillEvaporatingInside"],
  }[says];
  return outerFaceOnly ? t["surfaceSays.foundItCoversOnly"]({ found }) : found;
}

const bagSays = {
  wet: t["bagSays.wet"],
  losing: t["bagSays.losing"],
  between: t["bagSays.between"],
  dry: t["bagSays.dry"],
} as const;

/** Why a check can't be used, and what it needs. */
export function unsaidWords(why: Unsaid, format: Format): string {
  switch (why.code) {
    case "no-slurry":
      return t["unsaid.no-slurry"];
    case "stucco-lost":
      return t["unsaid.stucco-lost"];
    case "balance-too-coarse":
      return t["unsaid.balance-too-coarse"]({
        balanceWords: balanceWords(why.balanceG, format),
        balanceWords2: balanceWords(why.mostG, format),
      });
    case "too-few":
      return t["unsaid.too-few"]({ least: why.least });
    case "too-early":
      return t["unsaid.too-early"]({
        share: share(why.goneShare, format),
        share2: share(why.leastShare, format),
      });
    case "gaining":
      return t["unsaid.gaining"];
    case "not-slowing":
      return t["unsaid.not-slowing"];
    case "too-slow":
      return t["unsaid.too-slow"]({ duration: duration(why.durationS * 1000) });
    case "too-vague":
      return t["unsaid.too-vague"];
    case "too-soon":
      return "baggedS" in why
        ? t["unsaid.too-soon"]({
            duration: duration(why.baggedS * 1000),
            duration2: duration(why.leastS * 1000),
          })
        : t["unsaid.too-soon.durationApartItTakes"]({
            duration: duration(why.apartS * 1000),
            duration2: duration(why.leastS * 1000),
          });
    case "air-too-damp":
      return t["unsaid.air-too-damp"]({ share: share(why.rh, format), share2: share(why.mostRh, format) });
    case "signal-too-small":
      return t["unsaid.signal-too-small"]({
        dropK: format.show("tempDiff", why.dropK),
        errorK: format.show("tempDiff", why.errorK),
      });
    case "below-start":
      return t["unsaid.below-start"];
    case "lighter-than-dry":
      return t["unsaid.lighter-than-dry"];
    case "heavier-than-wet":
      return t["unsaid.heavier-than-wet"];
    case "more-than-its-water":
      return t["unsaid.more-than-its-water"]({
        balanceWords: balanceWords(why.lossG, format),
        balanceWords2: balanceWords(why.waterG, format),
      });
    case "beyond-air":
      return why.isWarmer ? t["unsaid.beyond-air"] : t["unsaid.beyond-air.colderThanAWet"];
    case "unsure":
      return t["unsaid.unsure"]({ balanceWords: balanceWords(Math.abs(why.lossG), format) });
    case "lighter-than-later":
      return t["unsaid.lighter-than-later"]({ balanceWords: balanceWords(why.gainG, format) });
    case "no-air":
      return t["unsaid.no-air"];
    case "no-reference":
      return t["unsaid.no-reference"];
    case "out-of-range":
      return t["unsaid.out-of-range"];
    case "no-water":
      return t["unsaid.no-water"];
    case "nothing-before":
      return t["unsaid.nothing-before"];
  }
}
