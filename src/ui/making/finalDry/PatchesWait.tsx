import { wetPatches } from "../../../logbook/piece/crackStates.ts";
import type { Standing } from "../../../logbook/piece/standing.ts";
import { cracksWords } from "../../base/format/crackStateWords.ts";
import sheet from "../../base/styles/sheet.module.css";

/** What a patch means for the fire: it is water in the shell, however dry the coats are. Nothing where none is wet. */
export function PatchesWait({ standing: { cracks } }: { readonly standing: Standing }) {
  if (wetPatches(cracks).length === 0) return null;
  return <p className={sheet["firm"]}>Not ready for the kiln: {cracksWords(cracks)}.</p>;
}
