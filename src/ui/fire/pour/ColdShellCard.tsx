import type { PourShell } from "../../../logbook/pour/pourShells.ts";
import type { ShellAtPour, ShellBed } from "../../../logbook/fire/shellOut.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";

/** Stands first where a shell is too cold by the time it is full; nothing where none is. */
export function ColdShellCard({
  tooCold,
  shells,
  bed,
}: {
  readonly tooCold: readonly ShellAtPour[];
  readonly shells: readonly PourShell[];
  readonly bed: ShellBed["bed"];
}) {
  const format = useFormat();
  if (tooCold.length === 0) return null;
  const ways = bed === "hot-sand" ? "pour sooner" : "pour sooner, or bed it in hot sand";
  return (
    <Card title="Shell too cold at the pour" tone="hold">
      {tooCold.map(({ id, faceC, leastC, leaveC }) => (
        <p key={id} className={`${sheet["held"]} ${sheet["firm"]} ${sheet["inset"]}`}>
          {shells.length > 1 && `${shells.find((shell) => shell.id === id)?.name ?? id}: `}
          Shell too cold by {format.show("tempDiff", Math.max(1, Math.round(leastC - faceC)))} at the pour:{" "}
          {leaveC === null
            ? `no kiln heat is enough, so ${ways}.`
            : `leave the kiln at ${format.show("temp", leaveC)}, ${ways}.`}
        </p>
      ))}
    </Card>
  );
}
