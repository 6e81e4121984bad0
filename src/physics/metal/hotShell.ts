import { effusivity, type MouldHeat } from "./fluidity.ts";
import { freezingHeatJKg } from "./melt.ts";
import { requirePositive, requireWithin } from "../stats/range.ts";
import { risingRoot } from "../stats/root.ts";

export type ShellAround =
  /** Still air and radiation; convection W/m²K, emissivity 0–1. */
  | { readonly kind: "air"; readonly filmWM2K: number; readonly emissivity: number }
  /** Loose sand, deep enough to be endless while the metal freezes. */
  | { readonly kind: "sand"; readonly sand: MouldHeat };

export type HotShell = {
  readonly metalKgM3: number;
  /** Metal between two faces of shell. */
  readonly metalWallMm: number;
  readonly latentJKg: number;
  readonly liquidJKgK: number;
  readonly superheatK: number;
  readonly solidusC: number;
  readonly liquidusC: number;
  readonly shell: MouldHeat;
  readonly shellMm: number;
  readonly shellC: number;
  readonly interfaceWM2K: number;
  readonly around: ShellAround;
  readonly aroundC: number;
};

export type HotShellFreezing = {
  readonly lowS: number;
  readonly likelyS: number;
  readonly highS: number;
  /** "chill": the front is still inside the shell; "through": heat leaves by its outside. */
  readonly regime: "chill" | "through";
};

/** How far the closed form may be off: against a 1-D solver it read 26 % low to 24 % high. */
export const hotShellSpread = 0.3;

/**
 * Time to solidus of a plate in a shell of even heat, s, with its band of ± 30 %. Derived here; a check on the solver.
 *
 * The metal stands at the middle of its freezing range. While the front is inside the shell (0.75·L²/α) the shell
 * chills like a thick mould. After that heat runs through at its steady rate; what the shell itself still takes up
 * counts by its share of the resistance beyond it. Sand is endless: its resistance grows with √(πt)/2e.
 * Recesses and near neighbours freeze about twice as slowly.
 */
export function hotShellFreezeS(hot: HotShell): HotShellFreezing {
  const { metalKgM3, metalWallMm, solidusC, liquidusC, shell, shellMm, shellC, interfaceWM2K } = hot;
  requireWithin("metalKgM3", metalKgM3, { low: 500, high: 25_000, unit: "kg/m³ (not g/cm³)" });
  requireWithin("liquidusC", liquidusC, { low: 30, high: 2500, unit: "°C" });
  requirePositive("metalWallMm", metalWallMm, { high: 500, unit: "mm" });
  requireWithin("solidusC", solidusC, { low: 30, high: liquidusC, unit: "°C (not above the liquidus)" });
  requirePositive("shellMm", shellMm, { high: 200, unit: "mm" });
  requirePositive("interfaceWM2K", interfaceWM2K, { high: 1e5, unit: "W/m²K" });
  requireWithin("shellC", shellC, { low: -50, high: solidusC - 1, unit: "°C (below the solidus)" });
  requireWithin("aroundC", hot.aroundC, { low: -50, high: solidusC - 1, unit: "°C (below the solidus)" });
  const heatJM2 = metalKgM3 * (metalWallMm / 2000) * freezingHeatJKg(hot);
  const metalC = (solidusC + liquidusC) / 2;
  const gapK = metalC - shellC;
  const chillS =
    ((heatJM2 * Math.sqrt(Math.PI)) / (2 * effusivity(shell) * gapK)) ** 2 + heatJM2 / (interfaceWM2K * gapK);
  const shellM = shellMm / 1000;
  const soakS = (0.75 * shellM ** 2 * shell.densityKgM3 * shell.heatJKgK) / shell.conductivityWMK;
  const resistance = outerResistance(hot, metalC);
  const throughS = risingRoot((t) => takenJM2({ hot, metalC, outer: resistance(t) }, t) - heatJM2, {
    low: 0,
    high: 1e6,
  });
  const likelyS = chillS < soakS ? Math.max(chillS, throughS) : throughS;
  return {
    lowS: likelyS * (1 - hotShellSpread),
    likelyS,
    highS: likelyS * (1 + hotShellSpread),
    regime: likelyS === chillS ? "chill" : "through",
  };
}

/** Heat a face of metal has lost after a time once the shell is soaked, J/m². */
function takenJM2(
  { hot, metalC, outer }: { hot: HotShell; metalC: number; outer: number },
  timeS: number,
): number {
  const { shell, shellC, aroundC, interfaceWM2K } = hot;
  const shellM = hot.shellMm / 1000;
  const wall = shellM / shell.conductivityWMK;
  const whole = 1 / interfaceWM2K + wall + outer;
  const flux = (metalC - aroundC) / whole;
  const innerK = metalC - flux / interfaceWM2K - shellC;
  const outerK = innerK - flux * wall;
  const [inner, outside] = [(outer + wall) / whole, outer / whole];
  const soaked = (2 * inner * innerK + 2 * outside * outerK + inner * outerK + outside * innerK) / 6;
  return flux * timeS + shell.densityKgM3 * shell.heatJKgK * shellM * soaked;
}

/** Resistance beyond the shell, m²K/W, as a function of time. */
function outerResistance(hot: HotShell, metalC: number): (timeS: number) => number {
  const { around, aroundC } = hot;
  if (around.kind === "sand") {
    const sand = effusivity(around.sand);
    return (timeS) => Math.sqrt(Math.PI * timeS) / (2 * sand);
  }
  const inside = 1 / hot.interfaceWM2K + hot.shellMm / 1000 / hot.shell.conductivityWMK;
  const skinC = risingRoot((c) => airLossWM2({ around, aroundC }, c) - (metalC - c) / inside, {
    low: aroundC,
    high: metalC,
  });
  const resistance = (skinC - aroundC) / airLossWM2({ around, aroundC }, skinC);
  return () => resistance;
}

/** Loss of a skin to air, W/m²: convection and grey radiation to surroundings at the air's temperature. */
function airLossWM2(
  { around, aroundC }: { around: Extract<ShellAround, { kind: "air" }>; aroundC: number },
  skinC: number,
): number {
  requirePositive("filmWM2K", around.filmWM2K, { high: 1000, unit: "W/m²K" });
  requireWithin("emissivity", around.emissivity, { low: 0, high: 1, unit: "" });
  const radiated = (skinC + 273.15) ** 4 - (aroundC + 273.15) ** 4;
  return around.filmWM2K * (skinC - aroundC) + around.emissivity * 5.670_374e-8 * radiated;
}
