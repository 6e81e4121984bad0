import { useState } from "react";
import type { Bucket } from "../../logbook/piece.ts";
import { useSettings } from "../app/live.ts";
import { DipMenu } from "./DipMenu.tsx";
import type { DipSession } from "./dipSession.ts";
import { DipTiles } from "./DipTiles.tsx";
import type { DipTile } from "./dipTile.ts";
import { planTitle } from "./dipWords.ts";
import { PieceChoice } from "./PieceChoice.tsx";
import { PieceScreen } from "./PieceScreen.tsx";
import { TimerScreen } from "./TimerScreen.tsx";
import { TimeScreen } from "./TimeScreen.tsx";
import { useAwake } from "./useAwake.ts";
import { timerWords, useDipTimer, usualLengths } from "./useDipTimer.ts";
import type { DipVisit } from "./useDipVisit.ts";
import type { Signals } from "./useSignals.ts";

type View =
  | { readonly at: "tiles" | "menu" | "pieces" | "timers" }
  | { readonly at: "piece" | "time"; readonly pieceId: string };

/** A visit under way: the tiles, and the screens one step beside them. */
export function DipDesk(props: {
  readonly session: DipSession;
  readonly visit: DipVisit;
  readonly buckets: readonly Bucket[];
  readonly signals: Signals;
}) {
  const { session, visit, buckets, signals } = props;
  const { told } = signals;
  const [{ keepAwake }] = useSettings();
  const awake = useAwake(keepAwake);
  const [view, setView] = useState<View>({ at: "tiles" });
  const [page, setPage] = useState(0);
  const [lengths, setLengths] = useState(usualLengths(session.kind));
  // A drain that was timed goes into the log with the coat tapped next.
  const [drainedS, setDrainedS] = useState<number | null>(null);
  const timer = useDipTimer((kind, lengthS) => {
    if (kind === "drain") setDrainedS(lengthS);
    signals.ring(timerWords[kind].over);
  });
  const toTiles = (): void => setView({ at: "tiles" });
  const toMenu = (): void => setView({ at: "menu" });
  const tap = async (tile: DipTile): Promise<void> => {
    if (await visit.tap(tile, drainedS)) setDrainedS(null);
  };

  if (view.at === "menu")
    return (
      <DipMenu
        told={told}
        prewet={session.prewet}
        onPieces={() => setView({ at: "pieces" })}
        onTimers={() => setView({ at: "timers" })}
        onPrewet={visit.setPrewet}
        onOver={visit.stop}
        onBack={toTiles}
      />
    );
  if (view.at === "pieces")
    return (
      <PieceChoice
        tiles={visit.tiles}
        told={told}
        onPiece={({ pieceId }) => setView({ at: "piece", pieceId })}
        onBack={toMenu}
      />
    );
  if (view.at === "timers")
    return (
      <TimerScreen
        timer={timer}
        lengths={lengths}
        onLengths={setLengths}
        awakeWords={awake.words}
        told={told}
        onBack={toTiles}
      />
    );
  const tile = "pieceId" in view ? visit.tiles.find(({ pieceId }) => pieceId === view.pieceId) : undefined;
  if (view.at === "time" && tile?.given)
    return (
      <TimeScreen
        name={tile.name}
        coatNumber={tile.given.number}
        from={tile.given.dippedAt}
        told={told}
        onSave={(at) => visit.retime(tile, at)}
        onBack={toTiles}
      />
    );
  const standing = tile === undefined ? null : visit.standingOf(tile.pieceId);
  if (view.at === "piece" && tile !== undefined && standing !== null)
    return (
      <PieceScreen
        tile={tile}
        standing={standing}
        told={told}
        onAct={(command, says) => visit.act(tile.pieceId, command, says)}
        onLeaveOut={() => {
          visit.leaveOut(tile.pieceId);
          toTiles();
        }}
        onTime={() => setView({ at: "time", pieceId: tile.pieceId })}
        onBack={toTiles}
      />
    );
  return (
    <DipTiles
      visit={visit}
      title={planTitle(session, buckets)}
      sub={subWords({ awake: awake.words, drainedS, timer, prewet: session.prewet })}
      told={told}
      page={page}
      onPage={setPage}
      onTap={tap}
      onChange={({ pieceId }) => setView({ at: "time", pieceId })}
      onElse={toMenu}
    />
  );
}

function subWords(state: {
  readonly awake: string;
  readonly drainedS: number | null;
  readonly timer: ReturnType<typeof useDipTimer>;
  readonly prewet: boolean;
}): string {
  const { awake, drainedS, timer, prewet } = state;
  if (timer.running !== null) return `${timerWords[timer.running.kind].running}: ${timer.leftS} s`;
  // Two short lines at most: what the next tap will log, else whether the screen stays on.
  const notes = [
    prewet ? "Prewet." : "",
    drainedS === null ? "" : `Drained ${drainedS} s, for the next coat.`,
  ];
  return notes.join(" ").trim() || awake;
}
