import type { Coat } from "../../../logbook/piece/piece.ts";
import type { CoatKind } from "../../../trade/coats.ts";
import { stuccoOf } from "../../../trade/stuccos.ts";

export const kindWords: Record<CoatKind, string> = {
  prime: "prime",
  intermediate: "intermediate",
  backup: "backup",
  seal: "seal",
};

export function stuccoWords(stuccoId: string | null): string {
  return stuccoId === null ? "no stucco" : (stuccoOf(stuccoId)?.label ?? stuccoId);
}

/** "backup, 30–50 mesh"; a seal coat is "seal, no stucco"; of a coat from before the log only the kind may be known. */
export function coatWords(coat: {
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
  readonly beforeLog?: Coat["beforeLog"];
}): string {
  if (coat.beforeLog !== undefined && coat.stuccoId === null) return kindWords[coat.kind];
  return `${kindWords[coat.kind]}, ${stuccoWords(coat.stuccoId)}`;
}

/** "coat 5: backup, 30–50 mesh". */
export function coatLine(coat: {
  readonly number: number;
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
}): string {
  return `coat ${coat.number}: ${coatWords(coat)}`;
}
