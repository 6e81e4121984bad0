import type { Furnace } from "../../../logbook/shop/shopThings.ts";
import type { AlloyFamily } from "../../../trade/metals/alloy.ts";

export const furnaceHeats: readonly { readonly value: Furnace["heat"]; readonly label: string }[] = [
  { value: "propane", label: "Propane" },
  { value: "natural-gas", label: "Natural gas" },
  { value: "electric", label: "Electric element" },
  { value: "induction", label: "Induction" },
];

export const familyWords: Readonly<Record<AlloyFamily, string>> = {
  bronze: "bronzes",
  brass: "brasses",
  aluminium: "aluminium",
  other: "other metals",
};
