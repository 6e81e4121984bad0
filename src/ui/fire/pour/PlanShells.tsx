import { Link } from "wouter";
import type { RackItem } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { phaseWords } from "../../base/format/phaseWords.ts";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import type { PourDraft } from "./pourDraft.ts";
import type { PourParts } from "./pourParts.ts";
import sheet from "../../base/styles/sheet.module.css";
import { TickOf } from "../../base/forms/BoundFields.tsx";
import type { Bound } from "../../base/forms/bound.ts";
import styles from "./pour.module.css";

/** Which shells, and what nobody measured of them. */
export function PlanShells({
  form,
  pieces,
  parts,
}: {
  readonly form: Bound<PourDraft>;
  readonly pieces: readonly RackItem[];
  readonly parts: PourParts;
}) {
  const { draft, set } = form;
  const format = useFormat();
  const { shells, items } = parts;
  const alloys = new Set(items.flatMap(({ standing }) => standing.piece.plan.alloyId ?? []));
  return (
    <Card title="Which shells">
      {pieces.length === 0 ? (
        <p>
          No shell is ready for a pour yet. <Link href={paths.rack}>To the rack</Link>
        </p>
      ) : (
        <TickOf
          form={form}
          at="pieceIds"
          label="Poured together"
          options={pieces.map(({ standing: { piece } }) => ({
            value: piece.id,
            label: piece.plan.name,
            hint: phaseWords[piece.phase],
          }))}
        />
      )}
      {alloys.size > 1 && (
        <p className={styles["warn"]}>They are planned in different metals. One crucible holds one metal.</p>
      )}
      {shells.map((shell) => (
        <div key={shell.id} className={styles["stack"]}>
          <NumberField
            label={`Thinnest section of ${shell.name}`}
            quantity="mm"
            min={0.3}
            max={200}
            value={draft.thinnestMm[shell.id] ?? null}
            onChange={(mm) => set({ thinnestMm: { ...draft.thinnestMm, [shell.id]: mm } })}
            hint={
              shell.thinnestFrom === "mesh" && shell.thinnestMm !== null
                ? `From the 3D file: ${format.show("mm", shell.thinnestMm)}.`
                : "It sets how hot the shell must be. Measure the pattern."
            }
          />
          <p className={`${sheet["soft"]} ${styles["soft"]}`}>
            Shell {format.show("mm", shell.wallMm)}.{" "}
            {shell.metalKg === null ? (
              <>
                Its metal mass is not set: <Link href={paths.metal(shell.id)}>work it out</Link>.
              </>
            ) : (
              `Holds ${format.show("kg", shell.metalKg)}.`
            )}
          </p>
        </div>
      ))}
    </Card>
  );
}
