import { useState } from "react";
import { Link } from "wouter";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./run.module.css";
import { burnoutIn, crackIn } from "../../../logbook/acts/endRun.ts";
import { beginBurnout } from "../../../logbook/acts/startRun.ts";
import type { Run } from "../../../logbook/fire/fireStates.ts";
import type { Piece } from "../../../logbook/piece/piece.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { phaseWords } from "../../base/format/phaseWords.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { CrackHere } from "./CrackHere.tsx";

/** What is in the kiln; a crack that shows sends its piece back to the coats. */
export function RunPieces({
  run,
  pieces,
  isLive,
}: {
  readonly run: Run;
  readonly pieces: readonly Piece[];
  readonly isLive: boolean;
}) {
  const { log } = useShop();
  const [cracking, setCracking] = useState<string | null>(null);
  const remaining = pieces.filter((piece) => crackIn(run, piece) === null);
  const { basis } = run.plan;
  const melts = basis?.pattern?.material === "wax" && basis.isFilm !== true;
  // A run begun before its start was one act can lack the burnout of a piece.
  const begin = (piece: Piece) => log(beginBurnout(run, piece));
  return (
    <Card title={isLive ? `In the kiln: ${remaining.length} of ${run.pieceIds.length}` : "Pieces"}>
      <ul className={`${sheet["stack3"]} ${sheet["list"]} ${styles["pieces"]}`}>
        {pieces.map((piece) => {
          const crack = crackIn(run, piece);
          const isUnbegun =
            isLive && run.plan.purpose === "burnout" && crack === null && burnoutIn(run, piece) === null;
          return (
            <li key={piece.id}>
              <div className={styles["pieceHead"]}>
                <Link href={paths.piece(piece.id)}>{piece.plan.name}</Link>
                <span className={sheet["soft"]}>
                  {crack === null
                    ? phaseWords[piece.phase]
                    : `cracked in this run (${crack.where}): back to its coats`}
                </span>
              </div>
              {isUnbegun && <Button onPress={() => begin(piece)}>Log its burnout</Button>}
              {isLive && melts && crack === null && !piece.dewaxes.some(({ runId }) => runId === run.id) && (
                <Link href={paths.logFor(piece.id, "dewaxed")}>Log the dewax</Link>
              )}
              {crack === null && cracking !== piece.id && run.startedAt !== null && (
                <Button onPress={() => setCracking(piece.id)} label={`Crack found in ${piece.plan.name}`}>
                  Crack found
                </Button>
              )}
              {crack === null && cracking === piece.id && (
                <CrackHere run={run} piece={piece} onClose={() => setCracking(null)} />
              )}
            </li>
          );
        })}
      </ul>
      {pieces.length < run.pieceIds.length && (
        <p className={sheet["soft"]}>
          {run.pieceIds.length - pieces.length} of its pieces are archived or not on this device.
        </p>
      )}
    </Card>
  );
}
