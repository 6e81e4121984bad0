import { firingPractice } from "../../../physics/heat/firingLimits.ts";
import {
  patternBurnout,
  stagedWaxMostKg,
  waxFilmShare,
  type BurnoutMaterial,
} from "../../../trade/patternBurnout.ts";
import {
  dampFrom,
  dampLeaves,
  fireTensionShare,
  greenBendMPa,
  polymerStrength,
} from "../../../trade/shellStrength.ts";
import { shellThermal, type Ranged, type StuccoFamily } from "../../../trade/shellThermal.ts";
import type { Basis } from "../../../trade/published.ts";
import type { Format, Quantity } from "../../base/format/units.ts";
import { published, tabled, type ShownFigure, type FigureGroup } from "./figure.ts";

const times = (value: number): string => `× ${value}`;

/** What a shell is to heat, and what it bears in the fire. */
export function fireShellFigures(format: Format): FigureGroup {
  const mpa = (value: number): string => format.show("MPa", value);
  const share = (value: number): string => format.show("percent", value);
  const families = Object.keys(shellThermal) as StuccoFamily[];
  return {
    title: "Shell in the fire",
    about: "How a shell takes up and gives off heat, and what it bears before and after its first fire.",
    figures: [
      published(
        "Bend strength before the first fire, without polymer",
        greenBendMPa,
        mpa,
        "how fast the first fire may heat",
      ),
      published(
        "Tension held to, of the bend strength",
        fireTensionShare,
        share,
        "how fast the first fire may heat",
      ),
      published(
        "Polymer, before the first fire",
        polymerStrength.green,
        times,
        "how fast the first fire may heat",
      ),
      published("Polymer, hot", polymerStrength.hot, times, "whether a shell with polymer holds the metal"),
      published(
        "Water left under the next coat costs nothing up to",
        dampFrom.none,
        share,
        "strength of a shell with a coat covered damp",
      ),
      published(
        "Water left costs all it can from",
        dampFrom.full,
        share,
        "strength of a shell with a coat covered damp",
      ),
      published(
        "A coat covered damp leaves of the load, shell by the table",
        dampLeaves.tableWall,
        share,
        "whether such a shell holds the metal",
      ),
      published(
        "A coat covered damp leaves of the load, shell measured",
        dampLeaves.measuredWall,
        share,
        "whether such a shell holds the metal",
      ),
      ...families.flatMap((family) => familyFigures(family, format)),
      ...practiceFigures(format),
    ],
  };
}

function familyFigures(family: StuccoFamily, format: Format): readonly ShownFigure[] {
  const { label, ...of } = shellThermal[family];
  const row = (name: string, figure: Ranged, say: (value: number) => string, decides: string): ShownFigure =>
    tabled(
      `${label}: ${name}`,
      figure,
      `${say(figure.value)}, ${say(figure.low)} to ${say(figure.high)}`,
      decides,
    );
  const shown = (quantity: Quantity) => (value: number) => format.show(quantity, value);
  const growth = (perK: number): string =>
    `${format.number((perK * 1e6) / format.toShown("tempDiff", 1), 1)} millionths a ${format.unit("tempDiff")}`;
  const cooling = "minutes out of the kiln, knock-out";
  const ramp = "how fast a fire may heat and cool";
  return [
    row("conductivity", of.conductivityWMK, shown("wMK"), `${cooling}; ${ramp}`),
    row("density", of.densityKgM3, shown("kgM3"), `${cooling}; mass of a shell`),
    row(`heat, room to ${format.show("temp", 1000)}`, of.heatJKgK, shown("jKgK"), ramp),
    row(`heat, from ${format.show("temp", 600)} up`, of.hotHeatJKgK, shown("jKgK"), cooling),
    row("emissivity", of.emissivity, shown("plain"), cooling),
    row("growth", of.expansionPerK, growth, ramp),
    row("stiffness", of.modulusGPa, (gPa) => format.show("MPa", gPa * 1000), ramp),
    row("tension held to once fired", of.strengthMPa, shown("MPa"), ramp),
  ];
}

/** Figures of the firing plan; a judgement or a habit of kilns each. */
function practiceFigures(format: Format): readonly ShownFigure[] {
  const temp = (c: number): string => format.show("temp", c);
  const rate = (k: number): string => format.show("rate", k);
  const min = (m: number): string => format.show("min", m);
  const p = firingPractice;
  const row = (name: string, value: string, basis: Basis, source: string, decides: string): ShownFigure => ({
    name,
    value,
    basis,
    source,
    decides,
  });
  const plan = "the firing plan";
  return [
    row(
      "Stiffness in the first fire, of the fired one",
      format.show("percent", p.firstModulusShare),
      "judgement",
      "",
      plan,
    ),
    row(
      `Quartz passes ${format.show("temp", 573)}, thin and thick shells, at most`,
      `${rate(p.quartzThinKPerH)}, ${rate(p.quartzThickKPerH)}`,
      "practice",
      "50 K/h is a rule for ware",
      plan,
    ),
    row(
      `Cristobalite passes ${format.show("temp", 180)} to ${format.show("temp", 300)}, at most`,
      rate(p.cristobaliteKPerH),
      "published",
      "Salomon, Doles & Batllo, Cristobalite formation in investment casting shells, 2016: about 5 % by volume; the rate is judgement",
      plan,
    ),
    row("Fused silica turns to cristobalite above", temp(p.devitrifyC), "practice", "", plan),
    row("A damp shell is held at", temp(p.steamHoldC), "practice", "", plan),
    row("A repaired shell is held, at least", min(p.patchedHoldMin), "practice", "", plan),
    row("A pattern runs out for", min(p.drainMin), "practice", "", plan),
    row("Through the smoke, at most", rate(p.burnKPerH), "practice", "", plan),
    row("Flash fire from", temp(p.flashC), "practice", "", plan),
    row(
      "A wax tray comes out below the flash point by",
      format.show("tempDiff", p.trayMarginK),
      "judgement",
      "for a kiln that overshoots",
      plan,
    ),
    row("Fired at, unless entered", temp(p.fireC), "practice", "", plan),
    row(
      "Fired for, and for each mm of wall",
      `${min(p.fireMin)}, ${min(p.perWallMin)}`,
      "practice",
      "",
      plan,
    ),
    row(
      "Longer for each mm of a blind hollow",
      min(p.perBlindMin),
      "judgement",
      "half an hour a centimetre for carbon to burn off",
      plan,
    ),
  ];
}

/** How patterns leave the shell. */
export function burnoutFigures(format: Format): FigureGroup {
  const span = ([low, high]: readonly [number, number]): string =>
    low === high ? format.show("temp", low) : `${format.show("temp", low)} to ${format.show("temp", high)}`;
  const materials = Object.keys(patternBurnout) as BurnoutMaterial[];
  return {
    title: "Patterns in the fire",
    about: "Where a pattern softens, runs, smokes and burns.",
    figures: [
      ...materials.flatMap((material): readonly ShownFigure[] => {
        const of = patternBurnout[material];
        if (of === null) return [];
        const { label } = of;
        return [
          ...(of.softensC === null
            ? []
            : [published(`${label}: softens`, of.softensC, span, "shown; a shell dries well below it")]),
          ...(of.meltsC === null
            ? []
            : [published(`${label}: melts`, of.meltsC, span, "shown beside the plan")]),
          ...(of.drainC === null
            ? []
            : [published(`${label}: runs out`, of.drainC, span, "the hold where it runs out")]),
          published(`${label}: 5% gone`, of.fivePercentLossC, span, "from where the plan goes slowly"),
          published(`${label}: burns off fastest`, of.peakLossC, span, "up to where the plan goes slowly"),
          published(`${label}: flash point`, of.flashC, span, "how hot a wax tray may get"),
          published(`${label}: lights by itself`, of.selfIgnitionC, span, "shown beside the plan"),
          published(
            `${label}: ash`,
            of.ashShare,
            ([low, high]) => `${format.number(low * 100, 2)} to ${format.number(high * 100, 2)}%`,
            "the advice to blow out ash",
          ),
          published(
            `${label}: heat`,
            of.heatMJKg,
            (mj) => `${format.number(mj, 0)} MJ/kg`,
            "how fast the smoke may come",
          ),
          published(
            `${label}: air to burn it`,
            of.airKgKg,
            (kg) => `${format.number(kg, 1)} kg/kg`,
            "the air the kiln needs",
          ),
          published(
            `${label}: fire ends at, at least`,
            of.finishC,
            (c) => format.show("temp", c),
            "end of the burnout",
          ),
          published(
            `${label}: fire lasts there, at least`,
            of.finishMin,
            (m) => format.show("min", m),
            "end of the burnout",
          ),
        ];
      }),
      published(
        "Wax left as a film",
        waxFilmShare,
        (value) => format.show("percent", value),
        "smoke of a shell whose wax ran out",
      ),
      published(
        "Wax melted out from cold, at most",
        stagedWaxMostKg,
        (kg) => format.show("kg", kg),
        "whether a slow wax plan is refused",
      ),
    ],
  };
}
