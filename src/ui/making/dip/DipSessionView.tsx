import { useState } from "react";
import { useLocation } from "wouter";
import type { BucketStanding } from "../../../logbook/bucket/bucketStanding.ts";
import type { Bucket, Shop } from "../../../logbook/piece/piece.ts";
import { useSettings } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { AskHold } from "./AskHold.tsx";
import { DipMenu } from "./DipMenu.tsx";
import type { DipSession } from "../../../logbook/dip/dipSession.ts";
import { DipTiles } from "./DipTiles.tsx";
import type { DipTile } from "./dipTile.ts";
import { planTitle } from "./dipWords.ts";
import { guideSteps, type GuideStep } from "../../../logbook/dip/guide.ts";
import { doneText } from "./doneDipping.ts";
import { GuideScreen } from "./GuideScreen.tsx";
import { PieceChoice } from "./PieceChoice.tsx";
import { PieceScreen } from "./PieceScreen.tsx";
import { type ReadAgain, readAgainWords } from "../../../logbook/dip/readAgain.ts";
import { TimerScreen } from "./TimerScreen.tsx";
import { TimeScreen } from "./TimeScreen.tsx";
import { useAwake } from "../../base/alarm/useAwake.ts";
import { useReadAgain } from "./useReadAgain.ts";
import { timerWords, useDipTimer, usualLengths } from "./useDipTimer.ts";
import type { DipVisit } from "./useDipVisit.ts";
import type { Signals } from "../../base/glove/useSignals.ts";

type View =
  | { readonly at: "tiles" | "menu" | "pieces" | "timers" }
  | { readonly at: "piece" | "time" | "ask"; readonly pieceId: string }
  // The steps stay as they were when it began: the coat goes into the log half way through them.
  | { readonly at: "guide"; readonly pieceId: string; readonly steps: readonly GuideStep[] };

/** A visit under way: the tiles, and the screens one step beside them. */
export function DipSessionView(props: {
  readonly session: DipSession;
  readonly visit: DipVisit;
  readonly buckets: readonly Bucket[];
  readonly signals: Signals;
  /** Where its bucket stands; undefined for one that is gone. */
  readonly look: BucketStanding | undefined;
  readonly shop: Shop;
}) {
  const { session, visit, buckets, signals, look, shop } = props;
  const { told } = signals;
  const [{ keepAwake, guideDip }, changeSettings] = useSettings();
  const [, goTo] = useLocation();
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
  const out = {
    text: doneText,
    onPress: async (): Promise<void> => {
      if (timer.running !== null) timer.stop();
      await visit.leave();
      goTo(paths.rack);
    },
  };
  const toTiles = (): void => setView({ at: "tiles" });
  const toMenu = (): void => setView({ at: "menu" });
  const guide = (tile: DipTile): readonly GuideStep[] | null => {
    const standing = visit.standingOf(tile.pieceId);
    if (standing === null) return null;
    const { coatsDone, coatsPlanned } = standing;
    return guideSteps({ kind: session.kind, prewet: session.prewet, coatsDone, coatsPlanned });
  };
  const tap = async (tile: DipTile): Promise<boolean> => {
    const done = await visit.tap(tile, drainedS);
    if (done) setDrainedS(null);
    return done;
  };
  const isOpen = (tile: DipTile): boolean => tile.given === null && !tile.leftOut;
  const ask = async (tile: DipTile): Promise<void> => {
    if (tile.hold !== null && isOpen(tile)) setView({ at: "ask", pieceId: tile.pieceId });
    else await start(tile);
  };
  const start = async (tile: DipTile): Promise<void> => {
    const steps = guideDip && isOpen(tile) ? guide(tile) : null;
    if (steps === null) await tap(tile);
    else setView({ at: "guide", pieceId: tile.pieceId, steps });
  };

  const again = useReadAgain({ session, visit, look, shop, buckets });

  if (view.at === "menu")
    return (
      <DipMenu
        told={told}
        out={out}
        prewet={session.prewet}
        onPieces={() => setView({ at: "pieces" })}
        onTimers={() => setView({ at: "timers" })}
        onPrewet={visit.setPrewet}
        guided={guideDip}
        onGuided={(guided) => void changeSettings({ guideDip: guided })}
        onOver={visit.stop}
        onBack={toTiles}
      />
    );
  if (view.at === "pieces")
    return (
      <PieceChoice
        tiles={visit.tiles}
        told={told}
        out={out}
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
        out={out}
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
        out={out}
        onSave={(at) => visit.retime(tile, at)}
        onBack={toTiles}
      />
    );
  if (view.at === "ask" && tile !== undefined && tile.hold !== null && isOpen(tile))
    return (
      <AskHold
        tile={{ ...tile, hold: tile.hold }}
        told={told}
        out={out}
        onGoOn={() => {
          toTiles();
          return start(tile);
        }}
        onBack={toTiles}
      />
    );
  if (view.at === "guide" && tile !== undefined && view.steps.length > 0)
    return (
      <GuideScreen
        key={tile.pieceId}
        tile={tile}
        steps={view.steps}
        timer={timer}
        lengths={lengths}
        told={told}
        out={out}
        onCoat={() => tap(tile)}
        onHold={(command, says) => visit.act(tile.pieceId, command, says)}
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
        out={out}
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
      sub={subWords({ awake: awake.words, drainedS, timer, prewet: session.prewet, again })}
      told={told}
      out={out}
      page={page}
      onPage={setPage}
      onTap={ask}
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
  readonly again: ReadAgain | null;
}): string {
  const { awake, drainedS, timer, prewet, again } = state;
  if (timer.running !== null) return `${timerWords[timer.running.kind].running}: ${timer.leftS} s`;
  // Two short lines at most: what the next tap will log, else whether the screen stays on.
  const notes = [
    prewet ? "Prewet." : "",
    drainedS === null ? "" : `Drained ${drainedS} s, for the next coat.`,
  ];
  return notes.join(" ").trim() || (again === null ? awake : readAgainWords(again));
}
