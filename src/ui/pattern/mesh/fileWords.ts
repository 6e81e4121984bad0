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
      return "It failed, probably for lack of memory. Close other tabs, or simplify the mesh.";
    case "no-mesh":
    case "no-worker":
      return "This browser stopped the work in the background. Open the file again, or use a newer browser.";
    case "aborted":
      return "Stopped.";
  }
}

export const stageWords: Readonly<Record<PatternStage, string>> = {
  hash: "Checking the file",
  read: "Reading",
  measure: "Measuring",
  mend: "Closing small holes",
  lighten: "Making the picture",
  open: "Opening",
  restore: "Opening",
  "close-holes": "Closing holes",
  "join-seams": "Joining seams",
  tips: "Finding air traps",
  trapped: "Calculating the metal level",
  skins: "Drawing what stays",
  fill: "Filling from the gate",
  thickness: "Measuring thickness",
  spans: "Finding flats and tubes",
  recesses: "Finding hollows",
  freeze: "Calculating freezing",
  attitudes: "Trying positions",
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
      return "The file states a wrong number of triangles; those found were used.";
    case "bytes-ignored":
      return `${some("byte", "bytes")} after the end ignored.`;
    case "end-missing":
      return "The file has no end mark; it may have been cut short.";
    case "supports-skipped":
      return `${some("object", "objects")} marked as print support left out.`;
    case "objects-unplaced":
      return `${some("object", "objects")} in the file but not placed in the scene left out.`;
  }
}
