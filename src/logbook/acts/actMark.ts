import type { ActMark, Entry } from "../entries/entry.ts";

/**
 * The lines one tap writes, marked as one act where they lie in several streams, so that they can be taken back
 * together. Lines of one stream stay as they are.
 */
export function markedAsAct(lines: readonly Entry[]): readonly Entry[] {
  const [first] = lines;
  if (first === undefined || lines.every(({ stream }) => stream === first.stream)) return lines;
  const ids = lines.map(({ id }) => id);
  return lines.map((line) => {
    const act: ActMark = line === first ? { id: first.id, lines: ids } : { id: first.id };
    return { ...line, act };
  });
}

/** The ids of all lines of the act that this line belongs to; `first` is the act's first line, null where it is not here. */
export const linesOfAct = (
  entry: Pick<Entry, "id" | "act">,
  first: Pick<Entry, "act"> | null,
): readonly string[] => entry.act?.lines ?? first?.act?.lines ?? [entry.id];
