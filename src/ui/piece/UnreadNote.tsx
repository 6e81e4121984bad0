import type { SetAside } from "../../storage/streams.ts";
import { sentence } from "../finalDry/finalDryWords.ts";
import { mostUnreadNamed, unreadLineWords } from "../format/faultWords.ts";
import { RemakeKey } from "../settings/RemakeKey.tsx";
import { Card } from "../parts/Card.tsx";

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
            {setAside.slice(0, mostUnreadNamed).map(({ id, fault }) => (
              <li key={id}>{sentence(unreadLineWords(fault))}.</li>
            ))}
          </ul>
          {setAside.length > mostUnreadNamed && <p>And {setAside.length - mostUnreadNamed} lines more.</p>}
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
