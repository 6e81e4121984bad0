import { fillsAboveK, heavyFromMm, pouredAboveK, startAboveK } from "../../../logbook/pour/pourHeat.ts";
import { kilnFillShare } from "../../../trade/kilnFill.ts";
import { fumeLimits, type FumeLimit } from "../../../trade/fumeLimits.ts";
import { baseFrom, hazardAbove, leadedFrom, pureFrom } from "../../../trade/metals/hazards.ts";
import { crucibleKgPerL, hoistAboveKg, shankAboveKg, shellTwoAboveKg } from "../../../trade/lifting.ts";
import { dryToolC, leadFlag, zincFlags } from "../../../trade/metals/metalAir.ts";
import { preheatRanges, preheatSource } from "../../../trade/shellPreheat.ts";
import type { Format } from "../../base/format/units.ts";
import { published, type ShownFigure, type FigureGroup } from "./figure.ts";

/** Heat of shell and metal at the pour. */
export function pourFigures(format: Format): FigureGroup {
  const temp = (c: number): string => format.show("temp", c);
  const kelvin = (k: number): string => format.show("tempDiff", k);
  const section = (upToMm: number): string =>
    upToMm === Infinity ? "thicker" : `up to ${format.show("mm", upToMm)} thin`;
  const shells = Object.entries(preheatRanges).flatMap(([metal, ranges]) =>
    (ranges ?? []).map(({ upToMm, lowC, highC }): ShownFigure => ({
      name: `Shell at the pour of ${metal}, ${section(upToMm)}`,
      value: `${temp(lowC)} to ${temp(highC)}`,
      basis: "practice",
      source: preheatSource,
      decides: "shell heat of a plan, and whether the shell is too cold for the metal",
    })),
  );
  return {
    title: "Heat at the pour",
    about:
      "Plans, the pour sheet and the findings read these; minutes out of the kiln come from the wall's own cooling.",
    figures: [
      ...shells,
      published(
        "Room of a kiln that shells may take",
        kilnFillShare,
        (value) => format.show("percent", value),
        "which shells are proposed for one kiln on a pour day",
      ),
      published(
        "Heavy work is poured from a thinnest section of",
        heavyFromMm,
        (mm) => format.show("mm", mm),
        "which range of metal heat counts",
      ),
      published(
        "Heavy work starts above its liquidus by, at most",
        startAboveK,
        kelvin,
        "where a plan's metal starts",
      ),
      published(
        "Metal still fills thin work above its liquidus by",
        fillsAboveK,
        kelvin,
        "from where metal is too cold for thin work",
      ),
      published(
        "Nothing is poured below its liquidus and",
        pouredAboveK,
        kelvin,
        "from where metal is too cold for any work",
      ),
    ],
  };
}

/** From when a hazard is said, and what is breathed. */
export function hazardFigures(format: Format): FigureGroup {
  const share = (value: number): string => format.show("share", value);
  const kg = (value: number): string => format.show("kg", value);
  const air = ({ label, unit, limit, kind }: FumeLimit): ShownFigure => ({
    name: `In the air: ${label}`,
    value: `${format.number(limit.value, 4)} ${unit}, ${kind === "ceiling" ? "at any moment" : "over eight hours"}`,
    basis: limit.basis,
    source: limit.source,
    decides: "what is shown beside a metal or a pattern that gives it off",
    note: limit.note,
    of: limit,
  });
  return {
    title: "Hazards of metal",
    about: "The most a metal may hold counts. Below a limit is not the same as safe.",
    figures: [
      ...Object.entries(hazardAbove).map(([element, limit]) =>
        published(
          `Warned of ${element} above`,
          limit,
          share,
          "whether this hazard is said before melt and pour",
        ),
      ),
      published("Called leaded from", leadedFrom, share, "whether a metal is called leaded"),
      published("No tableware with lead above", leadFlag, share, "the warning of tableware"),
      published("Zinc smokes from", zincFlags.watch, share, "the warning of zinc smoke"),
      published("Zinc flares from", zincFlags.hold, share, "the warning of zinc that flares"),
      published("Base of a metal from", baseFrom, share, "which hazards a metal has"),
      published("Pure copper from", pureFrom, share, "which hazards a metal has"),
      published(
        "Tools and ingots are warmed to, at least",
        dryToolC,
        (c) => format.show("temp", c),
        "a line of the pour sheet",
      ),
      published("Crucible and metal lifted in a shank above", shankAboveKg, kg, "how a crucible is lifted"),
      published(
        "Crucible and metal hung on a hoist above",
        hoistAboveKg,
        kg,
        "how a crucible is lifted and poured",
      ),
      published("Shell and metal lifted by two above", shellTwoAboveKg, kg, "how many lift a shell"),
      published(
        "A crucible weighs, for each litre to its brim",
        crucibleKgPerL,
        kg,
        "how a crucible is lifted",
      ),
      ...Object.values(fumeLimits).map(air),
      ...Object.values(fumeLimits).flatMap(({ label, unit, actionLevel }: FumeLimit) =>
        actionLevel === null
          ? []
          : [
              published(
                `In the air, to act from: ${label}`,
                actionLevel,
                (value) => `${format.number(value, 4)} ${unit}`,
                "what is shown beside a metal or a pattern that gives it off",
              ),
            ],
      ),
    ],
  };
}
