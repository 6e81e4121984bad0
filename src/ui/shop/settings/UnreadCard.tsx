import { useEffect, useState } from "react";
import { Link } from "wouter";
import { parseStream } from "../../../logbook/entries/entryKinds.ts";
import { readUnread, type Unread } from "../../../storage/unread.ts";
import { useArchive, useRack } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { mostUnreadNamed, unreadLineWords } from "../../base/format/faultWords.ts";
import { Card } from "../../base/parts/Card.tsx";

/** Every row of the store that can't be read, with the piece it belongs to; nothing where all can. */
export function UnreadCard() {
  const { db } = useShop();
  const [unread, setUnread] = useState<Unread | null>(null);
  useEffect(() => {
    let isGone = false;
    // Where even this can't be read the plain page or the screen's own guard says so.
    readUnread(db)
      .then((found) => !isGone && setUnread(found))
      .catch(() => undefined);
    return () => {
      isGone = true;
    };
  }, [db]);
  if (unread === null || unread.lines.length + unread.summaries.length === 0) return null;
  return <UnreadList unread={unread} />;
}

function UnreadList({ unread: { lines, summaries } }: { readonly unread: Unread }) {
  const rack = useRack() ?? [];
  const archive = useArchive() ?? [];
  const pieces = [...rack.map(({ standing }) => standing.piece), ...archive];
  const place = (stream: string | null): React.ReactNode => {
    const split = stream === null ? null : parseStream(stream);
    if (split === null) return "Of an unknown piece or thing";
    if (split.kind !== "piece") return `In ${split.kind} ${split.id}`;
    const name = pieces.find(({ id }) => id === split.id)?.plan.name ?? split.id;
    return <Link href={paths.piece(split.id)}>{name}</Link>;
  };
  return (
    <Card title="Rows that can't be read" tone="watch">
      <ul aria-label="Rows that can't be read">
        {lines.slice(0, mostUnreadNamed).map((line) => (
          <li key={line.id}>
            {place(line.stream)}: {unreadLineWords(line.fault)}.
          </li>
        ))}
        {summaries.slice(0, mostUnreadNamed).map((stream) => (
          <li key={stream}>{place(stream)}: its summary. Rebuild the summaries, below.</li>
        ))}
      </ul>
      {lines.length > mostUnreadNamed && <p>And {lines.length - mostUnreadNamed} lines more.</p>}
      {lines.length > 0 && (
        <p>
          No calculation uses these lines. They stay as they are and go into each backup where possible. An
          older backup may bring them back.
        </p>
      )}
    </Card>
  );
}
