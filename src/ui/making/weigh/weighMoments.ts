import type { WeighMoment } from "../../../logbook/piece/expectedMass.ts";
import type { Command } from "../../../logbook/log/command.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import type { PadStep } from "../../base/glove/Keypad.tsx";
import type { Format } from "../../base/format/units.ts";
import type { WeighUnit } from "./weighDraft.ts";

export const momentWords: Readonly<Record<WeighMoment, { readonly label: string; readonly hint: string }>> = {
  "before-dip": { label: "Before a dip", hint: "Bare pattern or dry shell" },
  drained: { label: "Just drained", hint: "Slurry on, no stucco yet" },
  stuccoed: { label: "Just stuccoed", hint: "Loose grains brushed off" },
  drying: { label: "While it dries", hint: "As it hangs" },
};

/** The moments that make sense for a piece: before the first coat there is but one. */
export function momentsFor({ coats }: Piece): readonly WeighMoment[] {
  const outer = coats.at(-1);
  if (outer === undefined) return ["before-dip"];
  return outer.stuccoId === null
    ? ["drying", "drained", "before-dip"]
    : ["drying", "stuccoed", "drained", "before-dip"];
}

/** What a weighing is in the log. */
export function weighCommand(
  { id, coats }: Piece,
  {
    moment,
    massG,
    scaleG,
  }: {
    readonly moment: WeighMoment;
    readonly massG: number;
    /** The scale's step, g, where it is known. */
    readonly scaleG?: number | undefined;
  },
): Command {
  const stream = streamOf("piece", id);
  const coatId = coats.at(-1)?.id;
  if (moment === "before-dip" || coatId === undefined)
    return { do: "log", stream, type: "piece-weighed", body: { massG } };
  const body = {
    method: "weight",
    massG,
    coatId,
    ...(moment === "drying" ? {} : { moment }),
    ...(scaleG === undefined ? {} : { scaleG }),
  } as const;
  return { do: "log", stream, type: "dryness-seen", body };
}

function kiloStep(expectedG: number | null, format: Format): PadStep {
  const shown = (massG: number): number => format.toShown("kg", massG / 1000);
  return { step: 0.01, from: shown(expectedG ?? 1000), digits: 2, low: 0.01, high: shown(1_000_000) };
}

/** Steps of the keypad: about a thousandth of what is weighed, as round as a balance shows it. */
export function weighStep(expectedG: number | null, format: Format, unit: WeighUnit = "g"): PadStep {
  if (unit === "kg") return kiloStep(expectedG, format);
  const shown = format.toShown("g", expectedG ?? 1000);
  const step = [0.1, 1, 5].find((one) => shown / one <= 3000) ?? 10;
  return {
    step: format.unit("g") === "g" ? step : step / 10,
    from: Math.round(shown / step) * step,
    digits: format.unit("g") === "g" ? (step < 1 ? 1 : 0) : 2,
    low: format.toShown("g", 0.1),
    high: format.toShown("g", 1_000_000),
  };
}
