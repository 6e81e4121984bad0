import { RemakeKey } from "../../shop/settings/RemakeKey.tsx";
import type { SetAside } from "../../../storage/streams.ts";
import { mostUnreadNamed, unreadLineWords } from "../../base/format/faultWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { sentence } from "../../base/format/sentence.ts";

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
          <p>No calculation uses them. They stay in the log and in each backup.</p>
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
