import type { PiecePlan } from "../../../logbook/entries/pieceBodies.ts";
import { figureOrNull, withoutEmpty, type DraftOf, type ReadOf } from "../../base/forms/formFields.ts";

const remedy = "Correct it, or leave it empty until you know.";

/** The core as the plan form asks it. */
export const coreFields = {
  coreLitre: figureOrNull("coreLitre", { what: "volume of the core", remedy }),
  pins: figureOrNull("pins", { what: "pins", remedy }),
  pinMm: figureOrNull("pinMm", { what: "thickness of a pin", remedy }),
  mouthMm: figureOrNull("mouthMm", { what: "mouth of the core", remedy }),
  coreDepthMm: figureOrNull("coreDepthMm", { what: "depth of the core", remedy }),
  coreKgM3: figureOrNull("coreKgM3", {
    what: "density of the core",
    remedy,
    own: { quantity: "kgM3", why: "the form shows the unit of the person, the log keeps kg/m³" },
  }),
  coreMPa: figureOrNull("coreMPa", { what: "strength of the core", remedy }),
};

export const draftOfCore = ({ core }: PiecePlan): DraftOf<typeof coreFields> => ({
  coreLitre: core?.litre ?? null,
  pins: core?.pins ?? null,
  pinMm: core?.pinMm ?? null,
  mouthMm: core?.mouthMm ?? null,
  coreDepthMm: core?.depthMm ?? null,
  coreKgM3: core?.densityKgM3 ?? null,
  coreMPa: core?.morMPa ?? null,
});

/** Null where there is none: a core has a volume. */
export function coreOf(draft: ReadOf<typeof coreFields>): NonNullable<PiecePlan["core"]> | null {
  if (draft.coreLitre === null) return null;
  return withoutEmpty({
    litre: draft.coreLitre,
    pins: draft.pins ?? undefined,
    pinMm: draft.pinMm ?? undefined,
    mouthMm: draft.mouthMm ?? undefined,
    depthMm: draft.coreDepthMm ?? undefined,
    densityKgM3: draft.coreKgM3 ?? undefined,
    morMPa: draft.coreMPa ?? undefined,
  });
}
