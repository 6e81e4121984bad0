import type { VolumeRefusal, VolumeRoute } from "../../../physics/metal/patternVolume.ts";
import type { FreezingGroup } from "../../../trade/metals/freezingGroup.ts";

export const routeWords: Readonly<Record<VolumeRoute, string>> = {
  mesh: "By 3D file",
  hydrostatic: "By weight in air and under water",
  displacement: "By displaced water",
  slicer: "By slicer weight at 100% infill",
  "pattern-weight": "By pattern weight",
};

/** The same inside a sentence. */
export const routeInSentence: Readonly<Record<VolumeRoute, string>> = {
  mesh: "the 3D file",
  hydrostatic: "the weight under water",
  displacement: "the water displaced",
  slicer: "the slicer",
  "pattern-weight": "the pattern's weight",
};

export const refusalSays: Readonly<Record<VolumeRefusal, string>> = {
  "open-mesh": "The mesh has gaps, so it has no volume. Repair it, or measure another way.",
  soaks: "Not used until it is sealed. Foam, infill and layer lines soak up water and falsify the reading.",
  "fill-not-stated":
    "First choose whether it is solid. A print with infill becomes solid metal, so its weight is no guide.",
  "infill-burns-out-full":
    "Not by weight. The cavity fills solid, so the metal weighs far more than this print suggests. Use the 3D file, the slicer at 100%, or water.",
  "density-not-known": "Enter the density of the pattern, or measure another way.",
  "hollow-unanswered":
    "The pattern has a closed void. Choose metal or core on the pattern’s page, then use the pattern again.",
  "no-volume": "These figures give no volume. Check them.",
};

export const freezingWords: Readonly<Record<FreezingGroup, string>> = {
  skin: "is skin freezing: it pipes deeply and needs feeding risers",
  between: "freezes between skin and mushy",
  pasty: "is mushy freezing: it feeds only a short way, so expect fine porosity",
};
