import type { Standing } from "../logbook/piece/standing.ts";
import type { Finding } from "./finding.ts";

/**
 * The hold that stands against a further coat; null where none does. Rack, piece and dip tile speak from it. Water shut
 * in beneath and an open crack forbid one; a patch does not, for a coat over it is what it waits for.
 */
export const coverHold = (findings: readonly Finding[]): Finding | null =>
  findings.find((finding) => finding.level === "hold" && forbidsCoat(finding)) ?? null;

const forbidsCoat = ({ rule, variant }: Finding): boolean =>
  rule === "recoated-before-dry" || (rule === "open-crack" && variant === "open");

/** The pieces that may get no further coat yet: lists of times and proposals of dips say so, as their own pages do. */
export const heldStandings = (
  items: readonly { readonly standing: Standing; readonly findings: readonly Finding[] }[],
): ReadonlySet<Standing> =>
  new Set(items.filter(({ findings }) => coverHold(findings) !== null).map(({ standing }) => standing));
