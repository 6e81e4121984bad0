import { hotSandC } from "../../physics/heat/heat.ts";
import { fallsShort } from "../../physics/metal/pourOrder.ts";
import { latestPour } from "../../physics/metal/latestPour.ts";
import type { Alloy } from "../../trade/metals/alloy.ts";
import { leaveKilnC, minutesToFull, shellCooling, shellsTooCold, type ShellBed } from "../fire/shellOut.ts";
import { metalHeatOf } from "./pourChecks.ts";
import { metalColdByK, metalHotEnoughC, type PourShell } from "./pourShells.ts";
import type { PourSupply } from "./pourSupply.ts";

/** What keeps a plan from working, and what would make it work; null where that way does not. */
export type PourFix =
  | {
      readonly is: "shell-cold";
      readonly id: string;
      readonly name: string;
      readonly byK: number;
      /** Kiln heat that is enough as it stands now, °C. */
      readonly leaveC: number | null;
      /** Kiln heat that is enough in sand at its usual heat, °C: the planned one where that will do. */
      readonly sandLeaveC: number | null;
      /** From the kiln's door to metal, min, with the planned kiln heat. */
      readonly withinMin: number | null;
    }
  | { readonly is: "metal-short"; readonly haveKg: number; readonly wantedKg: number }
  | {
      readonly is: "metal-cold";
      readonly byK: number;
      /** Metal that is hot enough until the last shell is full, °C. */
      readonly raiseToC: number | null;
      readonly shells: number;
    }
  | { readonly is: "metal-hot"; readonly byK: number; readonly mostC: number };

type Planned = {
  readonly supply: Pick<PourSupply, "shells" | "alloy" | "figures" | "metalKg" | "wantedKg">;
  readonly place: ShellBed;
  readonly carryMin: number;
  readonly shellC: number;
  readonly metalC: number;
};

/** Less time than this between kiln and metal is no plan, min: judgement. */
const leastCarryMin = 0.3;

/** Everything in a plan that its own checks fail, the shells first; nothing where it works, or no metal is named. */
export function pourFixes(of: Planned): readonly PourFix[] {
  const { alloy } = of.supply;
  if (alloy === null) return [];
  return [...coldShells(of, alloy), ...metalFixes(of, alloy)];
}

function coldShells({ supply, place, carryMin, shellC }: Planned, alloy: Alloy): readonly PourFix[] {
  const minutes = minutesToFull(carryMin);
  return shellsTooCold(supply.shells, { alloy, carryMin, place, shellC }).flatMap(
    (cold): readonly PourFix[] => {
      const shell = supply.shells.find(({ id }) => id === cold.id);
      if (shell === undefined) return [];
      const { wallMm } = shell;
      const sand = { ...place, bed: "hot-sand", sandC: hotSandC } as const;
      const sandC =
        place.bed === "hot-sand" ? null : leaveKilnC({ ...sand, wallMm, aimC: cold.leastC, minutes });
      return [
        {
          is: "shell-cold",
          id: cold.id,
          name: shell.name,
          byK: Math.max(1, Math.round(cold.leastC - cold.faceC)),
          leaveC: cold.leaveC,
          sandLeaveC:
            sandC === null ? null : isEnoughIn(sand, { shell, alloy, carryMin, shellC }) ? shellC : sandC,
          withinMin: carryFor(shell, { place, shellC, leastC: cold.leastC, alloy }),
        },
      ];
    },
  );
}

const isEnoughIn = (
  place: ShellBed,
  of: {
    readonly shell: PourShell;
    readonly alloy: Alloy;
    readonly carryMin: number;
    readonly shellC: number;
  },
): boolean => shellsTooCold([of.shell], { ...of, place }).length === 0;

/** The longest way from the kiln's door to metal with the kiln heat as planned, min, to a tenth down. */
function carryFor(
  shell: PourShell,
  of: { readonly place: ShellBed; readonly shellC: number; readonly leastC: number; readonly alloy: Alloy },
): number | null {
  const { likelyMin } = latestPour({
    rows: shellCooling({ ...of.place, wallMm: shell.wallMm, startC: of.shellC }),
    leastShellC: of.leastC,
  });
  if (likelyMin === null) return null;
  // Straight between whole minutes it reads a little long: the check itself has the last word.
  for (
    let tenths = Math.floor((likelyMin - minutesToFull(0)) * 10);
    tenths >= leastCarryMin * 10;
    tenths -= 1
  )
    if (isEnoughIn(of.place, { ...of, shell, carryMin: tenths / 10 })) return tenths / 10;
  return null;
}

function metalFixes({ supply, place, carryMin, metalC }: Planned, alloy: Alloy): readonly PourFix[] {
  const { metalKg, wantedKg, figures, shells } = supply;
  const heat = metalHeatOf(supply, metalC);
  const known = heat.verdict === "not-known" ? null : heat;
  const asked = figures === null ? null : { ...supply, figures, alloy, place, carryMin };
  const coldK = Math.max(
    (asked === null ? null : metalColdByK({ ...asked, metalC })) ?? 0,
    known?.verdict === "too-cold" ? known.lowC - metalC : 0,
  );
  const raiseToC =
    known === null
      ? null
      : asked === null || metalColdByK({ ...asked, metalC }) === null
        ? known.lowC
        : metalHotEnoughC(asked, { fromC: Math.max(known.lowC, metalC), mostC: known.highC });
  const fixes: readonly (PourFix | null)[] = [
    metalKg === null || wantedKg === null || !fallsShort(metalKg, wantedKg)
      ? null
      : { is: "metal-short", haveKg: metalKg, wantedKg },
    coldK > 1e-9
      ? { is: "metal-cold", byK: Math.max(1, Math.round(coldK)), raiseToC, shells: shells.length }
      : null,
    known?.verdict === "too-hot"
      ? { is: "metal-hot", byK: Math.max(1, Math.round(metalC - known.highC)), mostC: known.highC }
      : null,
  ];
  return fixes.filter((fix) => fix !== null);
}
