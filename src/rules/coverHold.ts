import type { Finding } from "./finding.ts";

/**
 * The hold that stands against a further coat; null where none does. Rack, piece and dip tile speak from it. Water shut
 * in beneath and an open crack forbid one; a patch does not, for a coat over it is what it waits for.
 */
export const coverHold = (findings: readonly Finding[]): Finding | null =>
  findings.find((finding) => finding.level === "hold" && forbidsCoat(finding)) ?? null;

const forbidsCoat = ({ rule, variant }: Finding): boolean =>
  rule === "recoated-before-dry" || (rule === "open-crack" && variant === "open");
