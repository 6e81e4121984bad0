import type { Published } from "../published.ts";

export type ChargeKind = "clean-ingot" | "mixed-returns" | "turnings";

/** What a charge is taken to be until someone says otherwise. */
export const usualChargeKind: ChargeKind = "clean-ingot";

/** Share lost where no practice is known for a metal. */
export const unknownLoss: Published = { value: 0.03, basis: "judgement", source: "judgement, no source" };

export type LossRange = Published<{ readonly low: number; readonly high: number }>;

export type LossRow = Readonly<Record<ChargeKind, LossRange>>;

const practice =
  "common practice, no source; one industrial reference gives 3 % gas-fired aluminium, 1 % electric";
const loss = (low: number, high: number, note?: string): LossRange => ({
  value: { low, high },
  basis: "practice",
  source: practice,
  note,
});

const silicon = {
  "clean-ingot": loss(0.01, 0.02),
  "mixed-returns": loss(0.02, 0.04),
  turnings: loss(0.05, 0.1),
};
const tinAndRed = {
  "clean-ingot": loss(0.01, 0.02),
  "mixed-returns": loss(0.02, 0.03),
  turnings: loss(0.05, 0.08),
};
const yellow = {
  "clean-ingot": loss(0.02, 0.04, "zinc boils off, 1–2 % of the melt"),
  "mixed-returns": loss(0.04, 0.06),
  turnings: loss(0.08, 0.15),
};
const aluminiumBronze = {
  "clean-ingot": loss(0.015, 0.03),
  "mixed-returns": loss(0.03, 0.05),
  turnings: loss(0.08, 0.12),
};
const aluminium = {
  "clean-ingot": loss(0.01, 0.02),
  "mixed-returns": loss(0.02, 0.05),
  turnings: loss(0.1, 0.25, "foil and cans 20–50 %"),
};
const copper = {
  "clean-ingot": loss(0.005, 0.015),
  "mixed-returns": loss(0.01, 0.03),
  turnings: loss(0.03, 0.06),
};
const silver = {
  "clean-ingot": loss(0.003, 0.01),
  "mixed-returns": loss(0.01, 0.02),
  turnings: loss(0.02, 0.04),
};

/** Share of a charge that burns, boils or is skimmed off, by the kind of metal; tin, pewter and iron aren't known here. */
export const losses = { silicon, tinAndRed, yellow, aluminiumBronze, aluminium, copper, silver } as const;
