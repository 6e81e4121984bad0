import { Link } from "wouter";
import type { Melt } from "../../../logbook/fire/fireStates.ts";
import { cameOf } from "../../../logbook/piece/pourCame.ts";
import { piecesOfMelt } from "../../../logbook/pour/meltTie.ts";
import { useArchive, usePours, useRack, useMelts } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { useNow } from "../../base/state/useNow.ts";
import { pouredWords } from "../../base/format/pourCameWords.ts";
import { dayTime } from "../../base/format/time.ts";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";

/** The pieces a melt fills, archived ones too: how each came, or that it is still to be poured. */
export function MeltFills({ melt }: { readonly melt: Melt }) {
  const format = useFormat();
  const now = useNow();
  const rack = useRack();
  const archive = useArchive();
  const melts = useMelts();
  const pours = usePours();
  if (rack === undefined || archive === undefined || melts === undefined || pours === undefined) return null;
  const known = [...rack.map(({ standing }) => standing.piece), ...archive];
  const pieces = piecesOfMelt(melt, known, { melts, pours });
  const missing = melt.pieceIds.filter((id) => !known.some((piece) => piece.id === id)).length;
  if (pieces.length === 0 && missing === 0) return null;
  return (
    <Card title="Pieces from this melt">
      <ul className={`${sheet["stack1"]} ${sheet["list"]}`}>
        {pieces.map(({ id, plan, pours: own }) => {
          const last = own.at(-1);
          return (
            <li key={id}>
              <Link href={paths.piece(id)}>{plan.name}</Link>
              {last === undefined
                ? ", to be poured"
                : `, ${pouredWords[cameOf(last)]} ${dayTime(last.at, now, format.locale)}`}
              {last?.massKg == null ? "" : `, ${format.show("kg", last.massKg)} in it`}
            </li>
          );
        })}
        {missing > 0 && <li>{missing === 1 ? "1 piece" : `${missing} pieces`} not on this device</li>}
      </ul>
    </Card>
  );
}
