import { z } from "zod";
import type { Shop } from "../../../logbook/piece/piece.ts";
import { ranges } from "../../../logbook/entries/ranges.ts";
import type { Format } from "../../base/format/units.ts";
import { figureOrNone } from "../../base/forms/fieldSchema.ts";

export type OwnFigures = Pick<Shop, "dryingFactor" | "morMPa">;

export const ownFiguresSchema = (format: Format): z.ZodType<OwnFigures> =>
  z.object({
    dryingFactor: figureOrNone(format, {
      what: "drying factor",
      quantity: "plain",
      range: ranges.dryingFactor,
      remedy: "It is hours over hours; 1 is as reckoned.",
    }),
    morMPa: figureOrNone(format, {
      what: "strength",
      quantity: "MPa",
      range: ranges.morMPa,
      remedy: "Fired shells lie at a few MPa; check the unit of the bar test.",
    }),
  });
