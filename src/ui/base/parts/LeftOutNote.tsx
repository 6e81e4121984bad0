import { useMemo } from "react";
import type { Entry } from "../../../logbook/entries/entry.ts";
import { leftOutOf } from "../../../logbook/log/leftOut.ts";
import { useFormat } from "../state/useFormat.ts";
import { leftOutWords } from "../format/leftOutWords.ts";
import { Card } from "./Card.tsx";

/** Numbers of this log that no sum takes, each named; nothing where there is none. */
export function LeftOutNote({ entries }: { readonly entries: readonly Entry[] }) {
  const format = useFormat();
  const leftOut = useMemo(() => leftOutOf(entries), [entries]);
  if (leftOut.length === 0) return null;
  return (
    <Card tone="watch">
      <ul aria-label="Left out of calculations">
        {leftOut.map((one) => (
          <li key={one.entryId}>
            <a href={`#entry-${one.entryId}`}>{leftOutWords(one, format)}</a>
          </li>
        ))}
      </ul>
    </Card>
  );
}
