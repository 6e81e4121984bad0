import type { RunBasis, RunPurpose } from "../../../logbook/entries/fireBodies.ts";
import { Cautions } from "../../base/cautions/Cautions.tsx";

/** The cautions of a kiln run; where wax melts in the kiln, those of its way out come first. */
export function RunCautions({
  purpose,
  basis,
}: {
  readonly purpose: RunPurpose;
  readonly basis: Pick<RunBasis, "route" | "pattern" | "isFilm"> | null;
}) {
  if (purpose !== "burnout") return <Cautions step="firing" alloyId={undefined} />;
  const material = basis?.pattern?.material ?? null;
  const melts = material === "wax" && basis?.isFilm !== true;
  const steps = melts && basis !== null ? ([`dewax-${basis.route}`, "burnout"] as const) : "burnout";
  return <Cautions step={steps} alloyId={undefined} material={material} />;
}
