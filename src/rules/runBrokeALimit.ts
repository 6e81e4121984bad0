import type { Piece } from "../logbook/piece/piece.ts";
import type { Run } from "../logbook/fire/fireStates.ts";
import { runStanding } from "../logbook/fire/runStanding.ts";
import type { Standing } from "../logbook/piece/standing.ts";
import type { RunFinding } from "../physics/heat/runFindings.ts";
import { figure, type Level } from "./finding.ts";
import type { FindingOf } from "./variants.ts";

type Found = FindingOf<"run-broke-a-limit">;

/**
 * What a kiln run did to the shells in it: too fast through a limit, no time to run out, a hold cut short. It holds
 * until the shell was coated over or reviewed since; from then on it is told as a thing of the past.
 */
export function runBrokeALimit({ piece, runs, now }: Standing): readonly Found[] {
  return runs.flatMap((run) => {
    const findings = runStanding(run, now)?.judged.findings ?? [];
    return findings.flatMap((found) => {
      const variant = variantOf(found);
      if (variant === null) return [];
      const level: Level = isSettled(piece, found.at) ? "note" : found.level;
      return [finding(found, { variant, level, entries: entriesOf(piece, run) })];
    });
  });
}

function variantOf({ code, limit }: RunFinding): Found["variant"] | null {
  switch (code) {
    case "too-fast":
      return "too-fast";
    case "drain-missed":
      return "no-drain";
    case "hold-short":
      return limit === "steam" ? "steam-short" : "hold-short";
    // What is said at the kiln while there is still something to be done; the shell bears no mark of it.
    case "vents-unticked":
    case "over-kiln":
    case "tray-in-too-hot":
      return null;
  }
}

const isSettled = ({ coats, reviews }: Piece, at: number): boolean =>
  (coats.at(-1)?.dippedAt ?? -Infinity) > at || (reviews.at(-1)?.at ?? -Infinity) > at;

/** Where the run stands in the piece's own log. */
function entriesOf({ burnouts, firings, cracks }: Piece, { id }: Run): readonly string[] {
  const isOf = ({ runId }: { readonly runId: string | null }): boolean => runId === id;
  return [...burnouts.filter(isOf), ...firings.filter(isOf), ...cracks.filter(isOf)].map((one) => one.id);
}

function finding({ limit, figures }: RunFinding, said: Pick<Found, "variant" | "level" | "entries">): Found {
  const of = (name: string): number | null => {
    const value = figures[name];
    return value !== undefined && Number.isFinite(value) ? value : null;
  };
  return {
    rule: "run-broke-a-limit",
    ...said,
    figures: {
      rateKPerH: figure(of("rateKPerH"), "K/h"),
      limitKPerH: figure(of("limitKPerH"), "K/h"),
      fromC: figure(of("fromC"), "C"),
      toC: figure(of("toC"), "C"),
      atLeastC: figure(of("atLeastC"), "C"),
      heldMin: figure(of("heldMin"), "min"),
      neededMin: figure(of("neededMin"), "min"),
    },
    texts: { limit: limit ?? "" },
    source:
      "The run's readings against the limits it was planned by; what each limit rests on stands at the plan.",
  };
}
