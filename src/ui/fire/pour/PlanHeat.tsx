import { Link } from "wouter";
import type { Melt, Run } from "../../../logbook/fire/fireStates.ts";
import { pourHeatOf } from "../../../logbook/pour/pourHeat.ts";
import { meltTitle } from "../metal/meltWords.ts";
import { wantedCharge } from "../../../logbook/casting/wantedCharge.ts";
import { usualChargeKind } from "../../../trade/metals/losses.ts";
import { pourHeatReason } from "../metal/pourHeatWords.ts";
import { shellThermal, type StuccoFamily } from "../../../trade/shellThermal.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { dayTime } from "../../base/format/time.ts";
import { SelectField } from "../../base/forms/SelectField.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { pourRanges, type PourDay, type PourDraft, type Reckoned } from "./pourDraft.ts";
import type { PourParts } from "./pourParts.ts";
import sheet from "../../base/styles/sheet.module.css";
import type { Bound } from "../../base/forms/bound.ts";
import { NumberOf, PickOf, SelectOf, YesNoOf } from "../../base/forms/BoundFields.tsx";
import styles from "./pour.module.css";

const purposeNames = { burnout: "Burnout", firing: "Firing", preheat: "Preheat" } as const;

type Props = {
  readonly form: Bound<PourDraft>;
  readonly parts: PourParts;
  readonly day: PourDay;
  readonly runs: readonly Run[];
  readonly melts: readonly Melt[];
};

/** Kiln, bed and melt: how hot, how long, and where that figure comes from. */
export function PlanHeat({ form, parts, day, runs, melts }: Props) {
  const { draft, set } = form;
  const format = useFormat();
  const { minutes } = day;
  const minutesHint = (one: Reckoned, from: string): string => {
    const min = format.show("min", one.min);
    return one.from === "told"
      ? "Your own value."
      : one.from === "starting"
        ? `Starting value: ${min}.`
        : `${from}: ${min}.`;
  };
  return (
    <>
      <Card title="Shell and kiln">
        <YesNoOf form={form} at="isHotAlready" label="Shell is heated" no="For this pour" yes="Already hot" />
        {!draft.isHotAlready && (
          <>
            <SelectOf
              form={form}
              at="runId"
              label="Kiln run"
              options={runs.map(({ id, plan, startedAt }) => ({
                value: id,
                label: `${purposeNames[plan.purpose]}, ${startedAt === null ? "planned" : `started ${dayTime(startedAt, day.plan.pourAt, format.locale)}`}`,
              }))}
              empty="None"
              hint="Its plan and readings then set this track."
            />
            {minutes.kiln !== null && (
              <NumberOf
                form={form}
                at="kilnMin"
                label="From cold kiln to soaked shell"
                quantity="min"
                min={0}
                max={pourRanges.minutes.high}
                hint={minutesHint(minutes.kiln, "By the kiln run")}
              />
            )}
          </>
        )}
        <NumberOf
          form={form}
          at="shellC"
          label="Shell temperature out of the kiln"
          quantity="temp"
          min={pourRanges.shellC.low}
          max={pourRanges.shellC.high}
          hint={
            day.preheat === null
              ? `Starting value: ${format.show("temp", day.shellC)}; no usual figure for this metal.`
              : `${draft.shellC === null ? `Starting value: ${format.show("temp", day.shellC)}. ` : ""}At the pour ${format.show("temp", day.preheat.lowC)} to ${format.show("temp", day.preheat.highC)} is usual for ${format.show("mm", day.preheat.sectionMm)}.`
          }
        />
        <PickOf
          form={form}
          at="bed"
          label="Placed in"
          options={[
            { value: "air", label: "Air" },
            { value: "cold-sand", label: "Cold sand" },
            { value: "hot-sand", label: "Hot sand" },
          ]}
        />
        {minutes.sand !== null && day.sandC !== null && (
          <div className={styles["fields"]}>
            <NumberOf
              form={form}
              at="sandC"
              label="Sand temperature"
              quantity="temp"
              min={pourRanges.sandC.low}
              max={pourRanges.sandC.high}
              hint={draft.sandC === null ? `Starting value: ${format.show("temp", day.sandC)}.` : undefined}
            />
            <NumberOf
              form={form}
              at="sandMin"
              label="To heat the sand"
              quantity="min"
              min={0}
              max={pourRanges.minutes.high}
              hint={minutesHint(minutes.sand, "")}
            />
          </div>
        )}
        <SelectField
          label="Main stucco"
          options={Object.entries(shellThermal).map(([value, { label }]) => ({ value, label }))}
          value={draft.family}
          onChange={(family) => set({ family: (family ?? "fused-silica") as StuccoFamily })}
          empty={null}
        />
      </Card>
      <Card title="Metal">
        <SelectOf
          form={form}
          at="meltId"
          label="Melt"
          options={melts
            .filter(({ ended }) => ended === null)
            .map((melt) => ({
              value: melt.id,
              label: meltTitle(melt, { shop: parts.shop, format }),
            }))}
          empty="None"
          hint="Its readings then set this track, and its mass is used."
        />
        {draft.meltId === null && (
          <>
            <NumberOf
              form={form}
              at="metalKg"
              label="Metal in the crucible"
              quantity="kg"
              min={0}
              hint={chargeHint()}
            />
            <p className={`${sheet["soft"]} ${styles["soft"]}`}>
              <Link href={paths.newMelt}>Plan a melt</Link> for charge, hazards and log.
            </p>
          </>
        )}
        <div className={styles["fields"]}>
          <NumberOf
            form={form}
            at="metalC"
            label="Metal at the pour"
            quantity="temp"
            min={pourRanges.metalC.low}
            max={pourRanges.metalC.high}
            hint={metalHint()}
          />
          <NumberOf
            form={form}
            at="meltMin"
            label="To melt"
            quantity="min"
            min={0}
            max={pourRanges.minutes.high}
            hint={minutesHint(minutes.melt, `By ${parts.furnace?.name ?? "the furnace"}`)}
          />
          <NumberOf
            form={form}
            at="crucibleMin"
            label="To warm crucible and ingots"
            quantity="min"
            min={0}
            max={pourRanges.minutes.high}
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
          <NumberOf
            form={form}
            at="people"
            label="People at the pour"
            quantity="plain"
            min={1}
            max={20}
            hint={`${draft.people === null ? "Starting value: 2. " : ""}Never pour alone.`}
          />
          <NumberOf
            form={form}
            at="carryMin"
            label="From kiln to pour"
            quantity="min"
            min={0.1}
            max={60}
            hint={draft.carryMin === null ? "Starting value: 1.5 min. Walk it once and time it." : undefined}
          />
        </div>
      </Card>
    </>
  );

  function chargeHint(): string | undefined {
    const { alloy, items, shop } = parts;
    if (alloy === null) return undefined;
    const wanted = wantedCharge({
      pieces: items.map(({ standing }) => standing.piece),
      alloy,
      chargeKind: usualChargeKind,
      lossShare: null,
      melts: melts.filter(({ ended }) => ended !== null),
      shop,
    });
    if (wanted === null || wanted.unknown.length > 0) return undefined;
    const kg = (value: number): string => format.show("kg", value);
    const { castingKg, meltKg, chargeKg } = wanted.parts;
    return `The shells hold ${kg(castingKg)} together. With the margin ${kg(meltKg)} must melt: ${kg(chargeKg)} to weigh in.`;
  }

  function metalHint(): string {
    const { alloy, figures, melt } = parts;
    const heat = alloy === null ? null : pourHeatOf({ alloy, figures, thinnestMm: day.thinnestMm });
    const from =
      draft.metalC !== null
        ? ""
        : melt === null
          ? `Starting value: ${format.show("temp", day.metalC)}. `
          : day.metalC > melt.plan.pourC
            ? `Starting value: ${format.show("temp", day.metalC)}. The melt is planned for ${format.show("temp", melt.plan.pourC)}: too cold for the last shell. `
            : `By the melt: ${format.show("temp", day.metalC)}. `;
    return alloy === null || heat === null
      ? `${from}No metal is planned for these shells.`
      : `${from}${alloy.name} is poured at ${format.show("temp", heat.lowC)} to ${format.show("temp", heat.highC)} in ${heat.work} work. A plan starts at ${format.show("temp", heat.startC)}, ${pourHeatReason(heat, format)}.`;
  }
}
