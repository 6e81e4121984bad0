import type { StrikeCommand } from "../log/command.ts";
import type { SettledLog } from "../log/settledLog.ts";

/**
 * Strikes every line of an act that still stands, the last first: corrected lines as they stand now, strikes that
 * count too, which brings back what they took. None where nothing of it stands any more.
 */
export function takeBack(
  lines: readonly string[],
  { logs, reason }: { readonly logs: readonly SettledLog[]; readonly reason: string },
): readonly StrikeCommand[] {
  return lines.toReversed().flatMap((line) =>
    logs.flatMap(({ stream, entries, settled: { standing, strikes, follow } }): readonly StrikeCommand[] => {
      const entry = entries.find(({ id }) => id === line);
      if (entry === undefined) return [];
      if (entry.type === "entry-struck")
        return strikes.get(entry.body.struckId)?.id === line
          ? [{ do: "strike", stream, entryId: line, reason }]
          : [];
      const entryId = follow(line);
      return standing.some(({ id }) => id === entryId) ? [{ do: "strike", stream, entryId, reason }] : [];
    }),
  );
}
