import { figureOrNull, type DraftOf } from "../../base/forms/formFields.ts";

export const ownFigureFields = {
  dryingFactor: figureOrNull("dryingFactor", {
    what: "drying factor",
    remedy: "It is hours over hours; 1 is as calculated.",
  }),
  morMPa: figureOrNull("morMPa", {
    what: "strength",
    remedy: "Fired shells lie at a few MPa; check the unit of the bar test.",
  }),
};
export type OwnFigures = DraftOf<typeof ownFigureFields>;
