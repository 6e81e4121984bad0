import type { Pour } from "../../../logbook/fire/fireStates.ts";
import { mayBeOut, shellCooling, type ShellBed } from "../../../logbook/fire/shellOut.ts";
import type { ShellCourse } from "../../../logbook/pour/pourCourse.ts";
import type { PourParts } from "./pourParts.ts";

/** How the shell whose turn it is cools once it is out of the kiln, and how long it may be; null where its metal or the shell isn't here. */
export function turnOut(
  { pieceId, out }: ShellCourse,
  { pour, parts, place }: { readonly pour: Pour; readonly parts: PourParts; readonly place: ShellBed },
) {
  const shell = parts.shells.find(({ id }) => id === pieceId);
  const startC = out?.shellC ?? pour.plan.shellC;
  if (shell === undefined) return { rows: [], allowed: null };
  const { wallMm, thinnestMm } = shell;
  const { alloy } = parts;
  return {
    rows: shellCooling({ ...place, wallMm, startC }),
    allowed: alloy === null ? null : mayBeOut({ ...place, alloy, wallMm, thinnestMm, startC }),
  };
}
