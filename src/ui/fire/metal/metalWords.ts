import type { VolumeRefusal, VolumeRoute } from "../../../physics/metal/patternVolume.ts";
import type { FreezingGroup } from "../../../trade/metals/freezingGroup.ts";

export const routeWords: Readonly<Record<VolumeRoute, string>> = {
  mesh: "By the mesh",
  hydrostatic: "Hung in air and under water",
  displacement: "By the water it pushes out",
  slicer: "By the slicer, at 100% infill",
  "pattern-weight": "By the pattern's weight",
};

/** The same inside a sentence. */
export const routeInSentence: Readonly<Record<VolumeRoute, string>> = {
  mesh: "the mesh",
  hydrostatic: "the weight under water",
  displacement: "the water pushed out",
  slicer: "the slicer",
  "pattern-weight": "the pattern's weight",
};

export const refusalSays: Readonly<Record<VolumeRefusal, string>> = {
  "open-mesh": "The mesh is open, and what has holes has no volume. Mend it, or measure another way.",
  soaks:
    "Not used until it is sealed: open foam, infill or layer lines drink water, and what it drinks is missing from the reading.",
  "fill-not-stated":
    "Say first whether it is solid. A print with infill burns out to a full cavity, and its weight says nothing of that.",
  "infill-burns-out-full":
    "Not by weight: the shell coats the outside and the cavity burns out full, so the metal weighs many times what this print's weight suggests. Take the mesh, the slicer at 100%, or water.",
  "density-not-known": "Give the density of what it is made of, or measure another way.",
  "hollow-unanswered":
    "The pattern has a closed void. Say on the pattern's page whether it will be metal or a core, then use the pattern again.",
  "no-volume": "These figures give no volume above nothing. Look at them again.",
};

export const freezingWords: Readonly<Record<FreezingGroup, string>> = {
  skin: "freezes as a skin: a deep pipe, so it wants risers that feed",
  between: "freezes between skin and paste",
  pasty: "freezes as a paste all through: it feeds a short way, and fine spread pores are to be expected",
};
