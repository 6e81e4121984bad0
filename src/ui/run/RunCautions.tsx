import type { RunBasis, RunPurpose } from "../../logbook/fireBodies.ts";
import { Cautions } from "../log/Cautions.tsx";

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
  return (
    <>
      {melts && basis !== null && <Cautions step={`dewax-${basis.route}`} alloyId={undefined} />}
      <Cautions step="burnout" alloyId={undefined} material={material} />
    </>
  );
}
