import type { Command } from "../log/command.ts";
import { streamOf } from "../entries/entry.ts";
import type { EntryBodies } from "../entries/entry.ts";
import type { Pour } from "../fire/fireStates.ts";
import type { Piece } from "../piece/piece.ts";

/**
 * A step of a pour marked. `shellC`, °C, is what the shells were read at as their preheat was done, where no kiln run
 * has it: then it goes into the log of each shell that was fired and stands empty. Null writes the mark alone.
 */
export function markPourStep(
  pour: Pick<Pour, "id">,
  mark: EntryBodies["pour-step-marked"],
  { pieces, shellC }: { readonly pieces: readonly Piece[]; readonly shellC: number | null },
): readonly Command[] {
  const marked: Command = {
    do: "log",
    stream: streamOf("pour", pour.id),
    type: "pour-step-marked",
    body: mark,
  };
  if (mark.state !== "done" || shellC === null) return [marked];
  const stand = pieces.filter(({ phase }) => phase === "fired" || phase === "burnt-out");
  return [
    marked,
    ...stand.map(({ id }): Command => ({
      do: "log",
      stream: streamOf("piece", id),
      type: "shell-preheated",
      body: { shellC },
    })),
  ];
}
