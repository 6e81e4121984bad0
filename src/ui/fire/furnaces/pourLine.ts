import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { paths } from "../../base/state/paths.ts";
import type { FireLine } from "./FireSection.tsx";

/** A pour as one line: how many shells, how far it is, and when. */
export function pourLine({ id, pieceIds, marks, decided, ended }: Pour, when: string) {
  const isBegun = marks.length > 0 || decided !== null;
  const shells = pieceIds.length === 1 ? "1 shell" : `${pieceIds.length} shells`;
  return {
    id,
    href: paths.pour(id),
    title: `Pour of ${shells}`,
    state: ended !== null ? "ended" : isBegun ? "under way" : "planned",
    word: ended?.dropped === true ? "cancelled" : undefined,
    says: when,
  } satisfies FireLine;
}
