import type { PourFix } from "../../../logbook/pour/pourFixes.ts";
import type { Format } from "../../base/format/units.ts";

/** What is wrong with a plan and what would make it work, in one line. `shellC`: the heat it leaves the kiln with as planned. */
export function fixWords(
  fix: PourFix,
  {
    format,
    shellC,
    isNamed,
  }: { readonly format: Format; readonly shellC: number; readonly isNamed: boolean },
): string {
  switch (fix.is) {
    case "shell-cold":
      return shellWords(fix, { format, shellC, isNamed });
    case "metal-short":
      return `Not enough metal: ${format.show("kg", fix.haveKg)} for ${format.show("kg", fix.wantedKg)}. Melt ${format.show("kg", fix.wantedKg - fix.haveKg)} more plus a margin, or leave a shell out.`;
    case "metal-cold": {
      const by = format.show("tempDiff", fix.byK);
      const last = fix.shells > 1 ? " at the last shell" : "";
      return fix.raiseToC === null
        ? `Metal too cold by ${by}${last}, and no temperature in its range is enough. ${fix.shells > 1 ? "Pour fewer shells from one crucible, shorten the way, or melt more at once." : "Shorten the way from kiln to pour, or melt more at once."}`
        : `Metal too cold by ${by}${last}: heat it to ${format.show("temp", fix.raiseToC)}.`;
    }
    case "metal-hot":
      return `Metal too hot by ${format.show("tempDiff", fix.byK)}: pour at ${format.show("temp", fix.mostC)} at most.`;
  }
}

function shellWords(
  { name, byK, leaveC, sandLeaveC, withinMin }: Extract<PourFix, { is: "shell-cold" }>,
  {
    format,
    shellC,
    isNamed,
  }: { readonly format: Format; readonly shellC: number; readonly isNamed: boolean },
): string {
  const sand =
    sandLeaveC === null
      ? []
      : sandLeaveC <= shellC
        ? ["bed it in hot sand"]
        : [`bed it in hot sand and raise the preheat to ${format.show("temp", sandLeaveC)}`];
  const ways = [
    ...(leaveC === null ? [] : [`raise the preheat to ${format.show("temp", leaveC)}`]),
    ...sand,
    ...(withinMin === null ? [] : [`pour within ${format.number(withinMin, 1)} min of the kiln door`]),
  ];
  const cold = `${isNamed ? `${name}: shell` : "Shell"} too cold by ${format.show("tempDiff", byK)} at the pour`;
  if (ways.length > 0) return `${cold}: ${ways.join(", or ")}.`;
  return `${cold}, and no preheat is enough. Add coats, or shorten the way from kiln to pour.`;
}
