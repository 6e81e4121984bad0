import type { CoatFamily } from "../../../logbook/drying/dryingFactor.ts";
import type { PairMethod, ShopPair } from "../../../logbook/drying/dryingPairs.ts";
import { airClasses, type AirClass } from "../../../trade/airClasses.ts";
import { duration } from "../../base/format/time.ts";

const families: Readonly<Record<CoatFamily, string>> = {
  prime: "Prime coats",
  body: "Intermediate and backup coats",
  seal: "Seal coats",
};

/** "Prime coats, fan on the rack". */
export function coatFamilyWords(group: string): string {
  const [family = "", air = ""] = group.split("/");
  const isAir = (name: string): name is AirClass => Object.hasOwn(airClasses, name);
  const isFamily = (name: string): name is CoatFamily => Object.hasOwn(families, name);
  const coats = isFamily(family) ? families[family] : family;
  return isAir(air) ? `${coats}, ${airClasses[air].label.toLowerCase()}` : coats;
}

export const pairMethodWords: Readonly<Record<PairMethod, string>> = {
  weighing: "by weight",
  surface: "by surface temperature",
  bag: "by the bag",
  resistance: "by resistance",
};

/** "wet at 2 h, dry by 5 h", as far as it was seen. */
export function seenWords({ wetAtS, dryAtS }: Pick<ShopPair, "wetAtS" | "dryAtS">): string {
  const wet = wetAtS === null || wetAtS <= 0 ? null : `still wet at ${duration(wetAtS * 1000)}`;
  const dry = dryAtS === null ? null : `dry by ${duration(dryAtS * 1000)}`;
  return [wet, dry].filter((part) => part !== null).join(", ");
}
