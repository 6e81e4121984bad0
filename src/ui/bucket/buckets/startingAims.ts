import { firstMix } from "../../../physics/slurry/slurry.ts";
import { binderOf } from "../../../trade/binders.ts";
import { flourOf } from "../../../trade/flours.ts";
import { secondsTargets, slurryStarts, type SecondsTarget } from "../../../trade/slurryTargets.ts";
import type { AimsDraft, BucketUse } from "./bucketForm.ts";

/** Middle of what a slurry is kept at, °C; common practice, no source. */
const usualC = 22;

export type StartingAims = Partial<AimsDraft>;

/**
 * Starting values for a mix of the table, to be changed by what the shop finds: density from the ratio, and the band
 * of a Zahn 4 or 5; another kind of cup gets no band. Null for an unknown mix.
 */
export function startingAims({
  startId,
  use,
  cupKind,
}: {
  readonly startId: string;
  readonly use: BucketUse | null;
  readonly cupKind: string | null;
}): StartingAims | null {
  const mix = slurryStarts.find(({ id }) => id === startId);
  const flour = mix === undefined ? null : flourOf(mix.flourId);
  const sol = binderOf("sol-30");
  if (mix === undefined || flour === null || sol === null) return null;
  const made = firstMix({
    volumeL: 1,
    flourGCm3: flour.densityGCm3.value,
    binderGCm3: sol.densityGCm3.value,
    binderSilica: sol.silica.value,
    ratio: mix.ratio.value,
  });
  const target = secondsTargets.find(
    ({ id }) => id === targetId({ use, family: flour.family, mixUse: mix.use }),
  );
  const band = target === undefined ? null : bandOf(target, cupKind);
  return {
    flourId: mix.flourId,
    flourGCm3: flour.densityGCm3.value,
    solGCm3: sol.densityGCm3.value,
    solSilica: sol.silica.value,
    ratio: mix.ratio.value,
    densityGCm3: made.ok ? Math.round(made.densityGCm3 * 1000) / 1000 : null,
    slurryC: usualC,
    lowS: band?.low ?? null,
    highS: band?.high ?? null,
  };
}

function targetId({
  use,
  family,
  mixUse,
}: {
  readonly use: BucketUse | null;
  readonly family: "light" | "heavy";
  readonly mixUse: "prime" | "backup" | "both";
}): SecondsTarget["id"] {
  if (use === "single") return "one-bucket";
  if (use === "seal") return "seal";
  const isPrime = use === "prime" || (use === null && mixUse === "prime");
  if (!isPrime) return "backup";
  return family === "heavy" ? "prime-heavy" : "prime-light";
}

function bandOf(
  target: SecondsTarget,
  cupKind: string | null,
): { readonly low: number; readonly high: number } | null {
  if (cupKind === null || cupKind === "zahn-4") return target.zahn4S;
  return cupKind === "zahn-5" ? target.zahn5S : null;
}
