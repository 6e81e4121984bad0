import type { SetAside } from "../../../storage/streams.ts";
import { faultWords } from "../../base/format/faultWords.ts";
import { RemakeKey } from "./RemakeKey.tsx";
import { Card } from "../../base/parts/Card.tsx";

/** What of this piece's log and summary can't be read; nothing where all can. */
export function UnreadNote({
  setAside,
  isSummaryRotten,
}: {
  readonly setAside: readonly SetAside[];
  readonly isSummaryRotten: boolean;
}) {
  if (setAside.length === 0 && !isSummaryRotten) return null;
  return (
    <Card title="Part of this piece can't be read" tone="watch">
      {setAside.length > 0 && (
        <>
          <ul aria-label="Lines that can't be read">
            {setAside.map(({ id, fault }) => (
              <li key={id}>
                {fault.code === "newer-version"
                  ? "A line of a newer Dipbook."
                  : `A line: ${faultWords(fault)}.`}
              </li>
            ))}
          </ul>
          <p>No sum takes them. They stay in the log as they are, and go into each backup.</p>
        </>
      )}
      {isSummaryRotten && (
        <>
          <p>Its summary is damaged, so the rack can't show it. The log below is whole.</p>
          <RemakeKey />
        </>
      )}
    </Card>
  );
}
