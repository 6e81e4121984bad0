import type { ShellCourse } from "./pourCourse.ts";
import type { PourSupply } from "./pourSupply.ts";

export type MetalLeft = {
  readonly leastKg: number;
  readonly mostKg: number;
  /** What an ingot mould must take for the most, liquid, l. */
  readonly mouldL: number | null;
};

/**
 * Metal left in the crucible, kg, once the shells so far have had theirs: what there was, less what went in. A full shell
 * took its weighed mass, else what its plan asks for; one that was not filled took anything from nothing to that. Null
 * where it is not known how much there was, before any shell was poured, and while one is being poured.
 */
export function metalLeft(
  { metalKg, shells, figures }: Pick<PourSupply, "metalKg" | "shells" | "figures">,
  courses: readonly ShellCourse[],
): MetalLeft | null {
  const poured = courses.filter(({ stage }) => stage === "poured");
  if (metalKg === null || poured.length === 0) return null;
  if (courses.some(({ stage }) => stage === "pouring")) return null;
  const took = poured.map(({ pieceId, poured: pour, came }) => {
    const massKg = pour?.massKg ?? null;
    const planKg = shells.find(({ id }) => id === pieceId)?.metalKg ?? null;
    if (massKg !== null) return { leastKg: massKg, mostKg: massKg };
    return { leastKg: came === "full" ? (planKg ?? 0) : 0, mostKg: planKg ?? metalKg };
  });
  const left = (tookKg: number): number => Math.max(0, metalKg - tookKg);
  const mostKg = left(took.reduce((sum, { leastKg }) => sum + leastKg, 0));
  return {
    leastKg: left(took.reduce((sum, one) => sum + one.mostKg, 0)),
    mostKg,
    mouldL: figures === null ? null : (mostKg / figures.crucibleKgM3.value) * 1000,
  };
}
