import { useMemo, useState } from "react";
import { hotSandC } from "../../../physics/heat/heat.ts";
import type { Alloy, MeltFigures } from "../../../trade/metals/alloy.ts";
import type { PourShell } from "../../../logbook/pour/pourShells.ts";
import {
  faceAt,
  leaveKilnC,
  mayBeOut,
  minutesToFull,
  shellCooling,
  type ShellBed,
} from "../../../logbook/fire/shellOut.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { CoolingChart } from "./CoolingChart.tsx";
import { MisrunLines } from "./MisrunLines.tsx";
import { stopRule } from "./stopWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

type Props = {
  readonly shells: readonly PourShell[];
  readonly alloy: Alloy | null;
  readonly figures: MeltFigures | null;
  readonly startC: number;
  readonly metalC: number;
  readonly carryMin: number;
  readonly place: ShellBed;
};

const beds = ["air", "cold-sand", "hot-sand"] as const;
const bedNames = { air: "free in air", "cold-sand": "in cold sand", "hot-sand": "in hot sand" } as const;

/** Out of the kiln: how the face that metal meets cools, and how long there is. */
export function CoolingCard({ shells, alloy, figures, startC, metalC, carryMin, place }: Props) {
  const format = useFormat();
  const [askedId, setAsked] = useState<string | null>(null);
  const shell = shells.find(({ id }) => id === askedId) ?? shells[0];
  const { bed, sandC, airC, family } = place;
  const wallMm = shell?.wallMm ?? 8;
  const curves = useMemo(
    () =>
      beds.map((one) => ({
        bed: one,
        rows: shellCooling({
          wallMm,
          startC,
          airC,
          family,
          bed: one,
          sandC: one === "hot-sand" ? (sandC ?? hotSandC) : undefined,
        }),
      })),
    [wallMm, startC, airC, family, sandC],
  );
  if (shell === undefined) return null;
  const rows = curves.find((curve) => curve.bed === bed)?.rows ?? [];
  const out =
    alloy === null ? null : mayBeOut({ ...place, alloy, wallMm, thinnestMm: shell.thinnestMm, startC });
  const [usual, latest] = [out?.heat ?? null, out?.latest ?? null];
  const minutes = minutesToFull(carryMin);
  const face = faceAt(rows, minutes);
  const leaveC =
    usual === null || face === null || face.likelyC >= usual.lowC
      ? null
      : leaveKilnC({ ...place, wallMm, aimC: usual.lowC, minutes });
  const temp = (c: number): string => format.show("temp", c);
  const min = (value: number): string => `${format.number(value, 1)} min`;
  return (
    <Card title={latest?.neverWarmEnough === true ? "Shell too cold for this plan" : "Out of the kiln"}>
      {shells.length > 1 && (
        <Choice
          label="Shell"
          options={shells.map(({ id, name }) => ({ value: id, label: name }))}
          value={shell.id}
          onChange={setAsked}
        />
      )}
      {latest !== null && usual !== null && (
        <p
          className={
            latest.neverWarmEnough ? `${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}` : sheet["strong"]
          }
        >
          {latest.neverWarmEnough
            ? `Shell too cold: it leaves the kiln at ${temp(startC)} and needs ${temp(usual.lowC)} at the pour.`
            : latest.surelyMin === null
              ? `Pour at any time in the first ${latest.reachedMin} min: the shell stays above ${temp(usual.lowC)}.`
              : stopRule(latest, null).text}
        </p>
      )}
      {face !== null && (
        <p>
          After {min(minutes)} {bedNames[bed]} the inner face is at about{" "}
          <strong>{temp(Math.round(face.likelyC))}</strong> ({temp(Math.round(face.lowC))} to{" "}
          {temp(Math.round(face.highC))}).
        </p>
      )}
      {usual !== null && face !== null && face.likelyC < usual.lowC && (
        <p className={styles["warn"]}>
          {leaveC === null
            ? `No kiln temperature keeps the usual ${temp(usual.lowC)} for that long. Shorten the way, or bed it in hot sand.`
            : `Take it from the kiln at ${temp(leaveC)}: it then still has the usual ${temp(usual.lowC)} when full.`}
        </p>
      )}
      {!shell.isWallKnown && (
        <p className={`${sheet["soft"]} ${styles["soft"]}`}>
          No shell thickness in the log: calculated with {format.show("mm", wallMm)}, a starting value.
        </p>
      )}
      {usual !== null && !usual.isSectionKnown && (
        <p className={`${sheet["soft"]} ${styles["soft"]}`}>
          Its thinnest section is not set: calculated with {format.show("mm", usual.sectionMm)}, a starting
          value.
        </p>
      )}
      <CoolingChart curves={curves} bed={bed} leastC={usual?.lowC ?? null} />
      {alloy !== null && figures !== null && (
        <MisrunLines
          alloy={alloy}
          figures={figures}
          shell={shell}
          metalC={metalC}
          faceC={face?.likelyC ?? startC}
        />
      )}
      <details>
        <summary>How this is calculated</summary>
        <p>
          Heat conduction through a shell of {format.show("mm", wallMm)}, from {temp(startC)} throughout, air
          at {temp(airC)}; outside it loses heat to air by radiation and convection, or to sand. No heat
          enters from the cavity. One dimension: edges and thin lips are colder. The band shows the
          uncertainty of the shell’s properties. Derived; still-air film 8 W/(m²·K) after Churchill &amp; Chu.
        </p>
        {usual !== null && <p>Usual shell temperature at the pour: {usual.source}.</p>}
      </details>
      <p className={`${sheet["soft"]} ${styles["soft"]}`}>
        Cold sand cools it faster than air in the first minutes. Hot sand helps. This is an estimate: the pour
        sheet decides.
      </p>
    </Card>
  );
}
