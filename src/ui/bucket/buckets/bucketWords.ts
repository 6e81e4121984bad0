import { millisecondsInDay as dayMs, millisecondsInHour as hourMs } from "date-fns/constants";
import type { ReadingStanding } from "../../../logbook/bucket/bucketReading.ts";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import { duration } from "../../base/format/time.ts";
import type { Format } from "../../base/format/units.ts";

/** "12.5 to 16 s in Blue tape"; null where no band was set. */
export function bandText({ bandS, cup }: BucketStanding["aim"], format: Format): string | null {
  if (bandS === null) return null;
  const cupText = cup === null ? "" : ` in ${cup.name}`;
  return `${format.number(bandS.lowS, 1)} to ${format.show("s", bandS.highS)}${cupText}`;
}

/** The last reading that measured something; the last look where none did. */
export const lastMeasured = ({ readings, last }: BucketStanding): ReadingStanding | null =>
  readings.findLast(({ seconds, density, reading }) => (seconds ?? density ?? reading.pH) != null) ?? last;

/** What the bucket is meant to be, line by line; what is not known is left out. */
export function aimLines(
  { aim, bucket: { targets } }: BucketStanding,
  format: Format,
): readonly (readonly [name: string, value: string])[] {
  const { densityGCm3, slurryC, ratio, fullL, leastL, flourGCm3 } = aim;
  const band = bandText(aim, format);
  const tell = (name: string, value: string | null) => (value === null ? [] : [[name, value] as const]);
  const reckoned = densityGCm3?.basis === "reckoned" ? ", calculated from the mix" : "";
  const usual = slurryC?.basis === "reckoned" ? ", as it usually is" : "";
  return [
    ...tell("Viscosity", band),
    ...tell("Density", densityGCm3 && `${format.show("density", densityGCm3.value)}${reckoned}`),
    ...tell("Temperature", slurryC && `${format.show("temp", slurryC.value)}${usual}`),
    ...tell("Flour to binder", ratio && `${format.number(ratio.value, 2)} by mass`),
    ...tell("Flour density", flourGCm3 && format.show("density", flourGCm3.value)),
    ...tell("Full", fullL === null ? null : format.show("litre", fullL)),
    ...tell("Minimum volume to dip", leastL === null ? null : format.show("litre", leastL)),
    ...tell("Open surface", targets.openM2 === undefined ? null : format.show("m2", targets.openM2)),
  ];
}

/** Age, mixing, turnover and what is in it, line by line. */
export function lifeLines(
  { madeAt, now, mixing, steadiness, turnover, volume, ledger, learned }: BucketStanding,
  format: Format,
): readonly (readonly [name: string, value: string])[] {
  const lines: (readonly [string, string])[] = [];
  if (madeAt !== null) lines.push(["Made", `${duration(now - madeAt)} ago`]);
  if (mixing !== null) lines.push(["Mixed", mixingWords(mixing, steadiness.steady, format)]);
  if (volume !== null)
    lines.push(["In it", `${format.show("litre", volume.volumeL)}, ${volumeBasis[volume.basis]}`]);
  if (ledger !== null && ledger.waterLostKg !== null && Math.abs(ledger.waterLostKg) >= 0.05) {
    const kg = format.show("kg", Math.abs(ledger.waterLostKg));
    lines.push([
      "By its density",
      ledger.waterLostKg > 0 ? `${kg} of water has evaporated` : `${kg} of water too much`,
    ]);
  }
  if (turnover !== null)
    lines.push([
      "Replaced",
      `${format.show("percent", turnover.weeklyShare)} a week; ${format.show("percent", turnover.firstMakeLeft)} of the first mix is still in it`,
    ]);
  for (const [name, loss] of [
    ["Evaporation, lid off", learned.lidOff],
    ["Evaporation, lid on", learned.lidOn],
  ] as const)
    if (loss.lossLDay !== null)
      lines.push([name, `${format.show("litre", loss.lossLDay)} a day, from ${loss.topUps} top-ups`]);
  return lines;
}

const volumeBasis = {
  ledger: "by what went in and out",
  counted: "as last measured",
  full: "if it is full",
} as const;

function mixingWords(
  { hours, neededH }: NonNullable<BucketStanding["mixing"]>,
  steady: boolean | null,
  format: Format,
): string {
  if (steady === true) return "three checks agree: it has settled";
  if (hours >= neededH)
    return hours * hourMs > 4 * dayMs
      ? "long enough"
      : `${format.show("h", hours)}, ${format.show("h", neededH)} wanted`;
  return `${format.show("h", hours)} of ${format.show("h", neededH)}, or until three checks an hour apart agree`;
}
