import { Link } from "wouter";
import type { Melt, Run } from "../../../logbook/fire/fireStates.ts";
import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { chargedKg } from "../../../logbook/fire/furnaceMemory.ts";
import { alloyName } from "../../../logbook/shop/ownAlloy.ts";
import { shellThermal, type StuccoFamily } from "../../../trade/shellThermal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { Choice } from "../../base/forms/Choice.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { pourRanges, type PourDay, type PourDraft, type Reckoned } from "./pourDraft.ts";
import type { PourParts } from "./pourParts.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./pour.module.css";

const purposeNames = { burnout: "Burnout", firing: "Firing", preheat: "Preheat" } as const;

type Props = {
  readonly draft: PourDraft;
  readonly set: (changes: Partial<PourDraft>) => void;
  readonly parts: PourParts;
  readonly day: PourDay;
  readonly runs: readonly Run[];
  readonly melts: readonly Melt[];
};

/** Kiln, bed and melt: how hot, how long, and where that figure comes from. */
export function PlanHeat({ draft, set, parts, day, runs, melts }: Props) {
  const format = useFormat();
  const { minutes } = day;
  const minutesHint = (one: Reckoned, from: string): string => {
    const min = format.show("min", one.min);
    return one.from === "told"
      ? "As you say."
      : one.from === "starting"
        ? `Starting value: ${min}.`
        : `${from}: ${min}.`;
  };
  return (
    <>
      <Card title="Shell and kiln">
        <Choice
          label="The shell is heated"
          options={[
            { value: "heat", label: "For this pour" },
            { value: "hot", label: "Hot already" },
          ]}
          value={draft.isHotAlready ? "hot" : "heat"}
          onChange={(one) => set({ isHotAlready: one === "hot" })}
        />
        {!draft.isHotAlready && (
          <>
            <SelectField
              label="Kiln run"
              options={runs.map(({ id, plan, startedAt }) => ({
                value: id,
                label: `${purposeNames[plan.purpose]}, ${startedAt === null ? "planned" : `begun ${dayTime(startedAt, day.plan.pourAt, format.locale)}`}`,
              }))}
              value={draft.runId}
              onChange={(runId) => set({ runId })}
              empty="None planned here"
              hint="Its own plan and readings then move this track."
            />
            {minutes.kiln !== null && (
              <NumberField
                label="From cold kiln to soaked shell"
                quantity="min"
                min={0}
                max={pourRanges.minutes.high}
                value={draft.kilnMin}
                onChange={(kilnMin) => set({ kilnMin })}
                hint={minutesHint(minutes.kiln, "By the kiln run")}
              />
            )}
          </>
        )}
        <NumberField
          label="Shell as it leaves the kiln"
          quantity="temp"
          min={pourRanges.shellC.low}
          max={pourRanges.shellC.high}
          value={draft.shellC}
          onChange={(shellC) => set({ shellC })}
          hint={
            day.preheat === null
              ? `Starting value: ${format.show("temp", day.shellC)}; no practice is known for this metal.`
              : `${draft.shellC === null ? `Starting value: ${format.show("temp", day.shellC)}. ` : ""}At the pour ${format.show("temp", day.preheat.lowC)} to ${format.show("temp", day.preheat.highC)} is usual for ${format.show("mm", day.preheat.sectionMm)}.`
          }
        />
        <Choice
          label="It stands"
          options={[
            { value: "air", label: "Free, in air" },
            { value: "cold-sand", label: "In cold sand" },
            { value: "hot-sand", label: "In hot sand" },
          ]}
          value={draft.bed}
          onChange={(bed) => set({ bed })}
        />
        {minutes.sand !== null && day.sandC !== null && (
          <div className={styles["fields"]}>
            <NumberField
              label="Sand"
              quantity="temp"
              min={pourRanges.sandC.low}
              max={pourRanges.sandC.high}
              value={draft.sandC}
              onChange={(sandC) => set({ sandC })}
              hint={draft.sandC === null ? `Starting value: ${format.show("temp", day.sandC)}.` : undefined}
            />
            <NumberField
              label="To heat the sand"
              quantity="min"
              min={0}
              max={pourRanges.minutes.high}
              value={draft.sandMin}
              onChange={(sandMin) => set({ sandMin })}
              hint={minutesHint(minutes.sand, "")}
            />
          </div>
        )}
        <SelectField
          label="Most of the wall is"
          options={Object.entries(shellThermal).map(([value, { label }]) => ({ value, label }))}
          value={draft.family}
          onChange={(family) => set({ family: (family ?? "fused-silica") as StuccoFamily })}
          empty={null}
        />
      </Card>
      <Card title="Metal">
        <SelectField
          label="Melt"
          options={melts
            .filter(({ ended }) => ended === null)
            .map((melt) => ({
              value: melt.id,
              label: `${format.show("kg", chargedKg(melt))} of ${alloyName(melt.plan.alloyId, parts.shop)}`,
            }))}
          value={draft.meltId}
          onChange={(meltId) => set({ meltId })}
          empty="None planned here"
          hint="Its readings then move this track, and its mass is what there is to pour."
        />
        {draft.meltId === null && (
          <>
            <NumberField
              label="Metal in the crucible"
              quantity="kg"
              min={0}
              value={draft.metalKg}
              onChange={(metalKg) => set({ metalKg })}
              hint={
                parts.wantedKg === null
                  ? undefined
                  : `The shells hold ${format.show("kg", parts.wantedKg)} together.`
              }
            />
            <p className={`${sheet["soft"]} ${styles["soft"]}`}>
              <Link href={paths.newMelt}>Plan a melt</Link> for charge, hazards and its own log.
            </p>
          </>
        )}
        <div className={styles["fields"]}>
          <NumberField
            label="Metal at the pour"
            quantity="temp"
            min={pourRanges.metalC.low}
            max={pourRanges.metalC.high}
            value={draft.metalC}
            onChange={(metalC) => set({ metalC })}
            hint={metalHint()}
          />
          <NumberField
            label="To melt"
            quantity="min"
            min={0}
            max={pourRanges.minutes.high}
            value={draft.meltMin}
            onChange={(meltMin) => set({ meltMin })}
            hint={minutesHint(minutes.melt, `By ${parts.furnace?.name ?? "the furnace"}`)}
          />
          <NumberField
            label="To warm crucible and ingots"
            quantity="min"
            min={0}
            max={pourRanges.minutes.high}
            value={draft.crucibleMin}
            onChange={(crucibleMin) => set({ crucibleMin })}
            hint={minutesHint(minutes.crucible, "")}
          />
        </div>
        {parts.fill !== null && (
          <p
            className={
              parts.fill.fits
                ? `${sheet["soft"]} ${styles["soft"]}`
                : `${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`
            }
          >
            The crucible is {format.show("percent", parts.fill.share)} full
            {parts.fill.fits ? "." : `: too full to lift. It takes ${format.show("kg", parts.fill.mostKg)}.`}
          </p>
        )}
      </Card>
      <Card title="People">
        <div className={styles["fields"]}>
          <NumberField
            label="People at the pour"
            quantity="plain"
            min={1}
            max={20}
            value={draft.people}
            onChange={(people) => set({ people })}
            hint={`${draft.people === null ? "Starting value: 2. " : ""}Nobody pours alone.`}
          />
          <NumberField
            label="From kiln door to metal"
            quantity="min"
            min={0.1}
            max={60}
            value={draft.carryMin}
            onChange={(carryMin) => set({ carryMin })}
            hint={draft.carryMin === null ? "Starting value: 1.5 min. Walk it once and time it." : undefined}
          />
        </div>
      </Card>
    </>
  );

  function metalHint(): string {
    const { alloy, figures, melt } = parts;
    const heat = alloy === null ? null : pourHeatOf({ alloy, figures, thinnestMm: day.thinnestMm });
    const from =
      draft.metalC !== null
        ? ""
        : `${melt === null ? "Starting value" : "By the melt"}: ${format.show("temp", day.metalC)}. `;
    return alloy === null || heat === null
      ? `${from}No metal is planned for these shells.`
      : `${from}${alloy.name} is poured at ${format.show("temp", heat.lowC)} to ${format.show("temp", heat.highC)} in ${heat.work} work.`;
  }
}
