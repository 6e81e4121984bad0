import { closedHollowsOf } from "../../../geometry/closedHollows.ts";
import { noResults } from "./patternResults.ts";
import type { PatternStudy } from "./patternStudy.ts";
import { sumsVersion } from "./sumsVersion.ts";

/**
 * A kept pattern as it was left, null when it is none of ours. What older sums found is let go, to be found again; what
 * the maker did to it stays.
 */
export function readStudy(kept: unknown): PatternStudy | null {
  if (!isStudy(kept)) return null;
  // An older app did not look for closed hollows; the copy that is shown tells them well enough.
  const { found } = kept;
  const known =
    found.hollows === undefined && found.measures.components > 1
      ? { ...kept, found: { ...found, hollows: closedHollowsOf(found.display) } }
      : kept;
  return kept.sumsVersion === sumsVersion ? known : { ...known, ...noResults, sumsVersion };
}

/** How large the file of a kept pattern was, bytes; null for what is no pattern of ours. Nothing of it is worked out. */
export const keptFileBytes = (kept: unknown): number | null => (isStudy(kept) ? kept.file.sizeBytes : null);

function isStudy(kept: unknown): kept is PatternStudy {
  if (!isRecord(kept) || !isRecord(kept["file"]) || !isRecord(kept["found"])) return false;
  const { found } = kept;
  const display = found["display"];
  return (
    typeof kept["id"] === "string" &&
    typeof kept["name"] === "string" &&
    Array.isArray(kept["marks"]) &&
    Array.isArray(kept["bars"]) &&
    Array.isArray(kept["up"]) &&
    isRecord(found["measures"]) &&
    isRecord(display) &&
    display["pos"] instanceof Float32Array &&
    display["idx"] instanceof Uint32Array
  );
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;
