import { isPutAway, type Run } from "../../../logbook/fire/fireStates.ts";
import type { RunPurpose } from "../../../logbook/entries/fireBodies.ts";
import { useFigures, useRuns } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import type { Format } from "../../base/format/units.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { FireSection, type FireLine } from "./FireSection.tsx";

const purposes: Readonly<Record<RunPurpose, string>> = {
  burnout: "Burnout",
  firing: "Firing",
  preheat: "Preheat",
};

export function RunsSection() {
  const format = useFormat();
  const runs = useRuns();
  const kilns = useFigures()?.kilns ?? [];
  const kilnName = (id: string | null): string =>
    kilns.find((kiln) => kiln.id === id)?.name ?? "no kiln chosen";
  return (
    <FireSection
      title="Kiln runs"
      none="No run yet. A schedule fits the pattern, the shell and the kiln."
      plan={{ href: paths.newRun, label: "Plan a run" }}
      lines={runs?.map((run) => lineOf(run, { kiln: kilnName(run.plan.kilnId), format }))}
    />
  );
}

function lineOf(run: Run, { kiln, format }: { readonly kiln: string; readonly format: Format }): FireLine {
  const { id, plan, pieceIds, startedAt, readings, ended, lastAt } = run;
  const pieces = pieceIds.length === 1 ? "1 piece" : `${pieceIds.length} pieces`;
  const last = readings.at(-1);
  return {
    id,
    href: paths.run(id),
    title: `${purposes[plan.purpose]}, ${pieces}`,
    state: ended !== null ? "ended" : startedAt !== null ? "under way" : "planned",
    word: isPutAway(run) ? "cancelled" : ended?.result === "stopped" ? "stopped" : undefined,
    says: (
      <>
        {kiln}
        {last === undefined ? "" : `, ${format.show("temp", last.kilnC)}`}, <Ago at={lastAt} />
      </>
    ),
  };
}
