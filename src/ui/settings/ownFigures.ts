import { z } from "zod";
import type { Shop } from "../../logbook/piece.ts";
import { ranges } from "../../logbook/ranges.ts";
import type { Format } from "../format/units.ts";
import { figureOrNone } from "../log/gate.ts";

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
