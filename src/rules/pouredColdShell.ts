import { ownAlloy } from "../logbook/ownAlloy.ts";
import type { Standing } from "../logbook/standing.ts";
import { leastShellC, practice } from "../trade/practice.ts";
import type { Published } from "../trade/published.ts";
import { figure } from "./finding.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"poured-cold-shell">;

/** Metal into a shell that had cooled: out of the kiln too long, or too cold for this metal. Before the pour, the preheat is looked at. */
export function pouredColdShell({ piece, shop }: Standing): readonly Found[] {
  const { alloyId } = piece.plan;
  const alloy = alloyId === undefined ? null : ownAlloy(alloyId, shop);
  const least = alloy === null ? null : leastShellC[alloy.family];
  const pour = piece.pours.at(-1);
  if (pour === undefined) return ofPreheat(piece, least);
  const { shellC, outOfKilnMin, id } = pour;
  const isCold = shellC !== null && least !== null && shellC < least.value;
  const isLong = outOfKilnMin !== null && outOfKilnMin > practice.outOfKilnMin.value;
  const isUnknown = outOfKilnMin === null && (shellC === null || least === null);
  const found = (variant: Found["variant"], level: Found["level"], source: string): Found => ({
    rule: "poured-cold-shell",
    variant,
    level,
    figures: {
      shellC: figure(shellC, "C"),
      leastC: figure(least?.value ?? null, "C"),
      outMin: figure(outOfKilnMin, "min"),
      limitMin: figure(practice.outOfKilnMin.value, "min"),
    },
    texts: {},
    entries: [id],
    source,
  });
  return [
    ...(isCold ? [found("too-cold", "watch", least.source)] : []),
    ...(isLong ? [found("too-long", "watch", practice.outOfKilnMin.source)] : []),
    ...(isUnknown ? [found("not-known", "note", practice.outOfKilnMin.source)] : []),
  ];
}

function ofPreheat(piece: Standing["piece"], least: Published | null): readonly Found[] {
  const preheat = piece.preheats.at(-1);
  if (piece.phase !== "preheated" || preheat === undefined || least === null) return [];
  if (preheat.shellC >= least.value) return [];
  return [
    {
      rule: "poured-cold-shell",
      variant: "preheat-cold",
      level: "watch",
      figures: { shellC: figure(preheat.shellC, "C"), leastC: figure(least.value, "C") },
      texts: {},
      entries: [preheat.id],
      source: least.source,
    },
  ];
}
