import { ranges, type NumberRange } from "../../../logbook/entries/ranges.ts";
import type { Format, Quantity } from "../../base/format/units.ts";
import type { PadStep } from "../../base/glove/Keypad.tsx";
import type { NumberStep } from "./readDraft.ts";

/** What a number's screen asks for. Canonical units; `from` is where the first step from an empty display lands. */
type NumberAsked = {
  readonly title: string;
  readonly hint: string;
  /** `unit` stands in where the number is told in one unit everywhere, as slurry's weighing is. */
  readonly quantity: Quantity;
  readonly unit?: string | undefined;
  readonly step: number;
  readonly from: number;
  readonly range: NumberRange;
};

export const numberSteps: Readonly<Record<NumberStep, NumberAsked>> = {
  slurryC: {
    title: "Slurry temperature",
    hint: "In the stirred slurry, once the reading is steady.",
    quantity: "temp",
    step: 0.5,
    from: 22,
    range: { low: 0, high: ranges.slurryC.high },
  },
  weighedMl: {
    title: "Volume of the density cup",
    hint: "100 mL or more: less is not exact enough.",
    quantity: "plain",
    unit: "mL",
    step: 10,
    from: 100,
    range: ranges.weighedMl,
  },
  weighedG: {
    title: "What the slurry weighs",
    hint: "Cup brim full and wiped, less the empty cup.",
    quantity: "plain",
    unit: "g",
    step: 0.1,
    from: 168,
    range: ranges.massG,
  },
  densityGCm3: {
    title: "Density by instrument",
    hint: "Foam settled, air tapped out.",
    quantity: "density",
    step: 0.01,
    from: 1.68,
    range: ranges.densityGCm3,
  },
  pH: {
    title: "pH",
    hint: "Calibrate the meter with buffers 7 and 10.",
    quantity: "plain",
    step: 0.1,
    from: 9.6,
    range: ranges.pH,
  },
  liquorGCm3: {
    title: "Density of the clear binder",
    hint: "Settled or spun. Weigh a known volume.",
    quantity: "density",
    step: 0.001,
    from: 1.2,
    range: ranges.densityGCm3,
  },
  plateCm2: {
    title: "Plate, both faces",
    hint: "A plate of 100 by 100 mm has 200 cm².",
    quantity: "plain",
    unit: "cm²",
    step: 10,
    from: 200,
    range: ranges.plateCm2,
  },
  plateG: {
    title: "What the plate gained",
    hint: "Dipped 5 s upright, drained as always, weighed wet.",
    quantity: "plain",
    unit: "g",
    step: 0.1,
    from: 4,
    range: ranges.plateG,
  },
  gelH: {
    title: "Hours in the oven",
    hint: "Since the vial went in.",
    quantity: "h",
    step: 1,
    from: 24,
    range: ranges.gelH,
  },
  bacteriaPerMl: {
    title: "Bacteria a millilitre",
    hint: "By the slide's own chart.",
    quantity: "plain",
    unit: "/mL",
    step: 1000,
    from: 1000,
    range: { low: 0, high: 99_999_999 },
  },
  ovenSolids: {
    title: "Solids after the oven",
    hint: "Dry to a constant weight. Dry weight over wet weight.",
    quantity: "percent",
    step: 0.01,
    from: 0.74,
    range: ranges.share,
  },
};

export const unitOf = ({ quantity, unit }: NumberAsked, format: Format): string =>
  unit ?? format.unit(quantity);

/** The pad's steps in the unit that is shown: round ones, also where the unit isn't the canonical one. */
export function padStepOf(asked: NumberAsked, format: Format, from: number | null): PadStep {
  const { quantity, range } = asked;
  const shown = (value: number): number => format.toShown(quantity, value);
  const size = Math.abs(shown(asked.step) - shown(0));
  const step = quantity === "temp" && format.unit("temp") === "°F" ? 1 : size;
  const digits = step < 0.01 ? 3 : step < 0.1 ? 2 : step < 1 ? 1 : 0;
  const start = shown(from ?? asked.from);
  return {
    step,
    digits,
    from: Math.round(start / step) * step,
    low: shown(range.low),
    high: shown(range.high),
  };
}

/** Why a number can't be taken; null when it can. */
export function numberFault(asked: NumberAsked, canonical: number, format: Format): string | null {
  const { low, high } = asked.range;
  const slack = 1e-9;
  if (canonical >= low - slack && canonical <= high + slack) return null;
  const shown = (value: number): string =>
    asked.unit === undefined
      ? format.show(asked.quantity, value)
      : `${format.number(value, 2)}\u00a0${asked.unit}`;
  return `Found ${shown(canonical)}, expected ${shown(low)} to ${shown(high)}. Type it again.`;
}
