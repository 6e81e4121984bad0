import type { Finding } from "./finding.ts";

/** Findings that forbid a further coat while they hold: a crack or its wet patch, and water shut in beneath. */
const forbids: readonly Finding["rule"][] = ["open-crack", "recoated-before-dry"];

/** The hold that stands against a further coat; null where none does. Rack, piece and dip tile speak from it. */
export const coverHold = (findings: readonly Finding[]): Finding | null =>
  findings.find(({ rule, level }) => level === "hold" && forbids.includes(rule)) ?? null;
