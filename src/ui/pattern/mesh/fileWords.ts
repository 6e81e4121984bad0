import { sentence } from "../../base/format/sentence.ts";
import type { ReadNote } from "../../../geometry/read/reader.ts";
import type { LengthUnit } from "../../../geometry/mesh.ts";
import type { NotAnswered } from "../../../workers/patternClient.ts";
import type { PatternStage } from "../../../workers/patternMessages.ts";

/** Why the worker has no answer, for the maker. */
export function notAnsweredWords(result: NotAnswered): string {
  switch (result.why) {
    case "fault": {
      const { found, expected, remedy } = result.fault;
      return `Found ${found}, expected ${expected}. ${sentence(remedy)}.`;
    }
    case "refused":
      return `That could not be calculated: ${result.message}.`;
    case "failed":
      return "It did not work out, most likely too little memory. Close other tabs, or thin the mesh out where it was made.";
    case "no-mesh":
    case "no-worker":
      return "This browser ended the work in the background. Open the file again, or take a newer browser.";
    case "aborted":
      return "Stopped.";
  }
}

export const stageWords: Readonly<Record<PatternStage, string>> = {
  hash: "Taking the file's fingerprint",
  read: "Reading",
  measure: "Measuring",
  mend: "Closing small holes",
  lighten: "Making the copy to look at",
  open: "Opening",
  restore: "Opening",
  "close-holes": "Closing holes",
  "join-seams": "Joining seams",
  tips: "Looking for tips",
  trapped: "Letting the metal rise",
  skins: "Drawing what stays",
  fill: "Filling from the gate",
  thickness: "Feeling for thin and thick",
  spans: "Looking for flats and rounds",
  recesses: "Looking for hollows",
  freeze: "Letting it freeze",
  attitudes: "Trying ways to hang it",
};

export const unitWords: Readonly<Record<LengthUnit, string>> = {
  mm: "Millimetres",
  cm: "Centimetres",
  m: "Metres",
  inch: "Inches",
  foot: "Feet",
  micron: "Microns",
};

/** What a reader had to do that its maker should know. */
export function noteWords({ code, count }: ReadNote): string {
  const some = (one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);
  switch (code) {
    case "polygons-split":
      return `${some("face", "faces")} of more than three corners cut into triangles.`;
    case "facets-dropped":
      return `${some("facet", "facets")} without three corners left out.`;
    case "count-wrong":
      return "The file names another number of triangles than it holds; what it holds was taken.";
    case "bytes-ignored":
      return `${some("byte", "bytes")} after the end left alone.`;
    case "end-missing":
      return "The file has no end mark; it may have been cut short.";
    case "supports-skipped":
      return `${some("object", "objects")} marked as print support left out.`;
    case "objects-unplaced":
      return `${some("object", "objects")} in the file but not placed in the scene left out.`;
  }
}
