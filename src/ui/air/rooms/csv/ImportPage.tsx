import { useState } from "react";
import { useParams } from "wouter";
import type { Room } from "../../../../logbook/piece/piece.ts";
import { useRoom } from "../../../base/state/live.ts";
import { paths } from "../../../base/state/paths.ts";
import { useShop } from "../../../base/state/shop.tsx";
import { Page } from "../../../base/parts/Page.tsx";
import { NoRoom } from "../NoRoom.tsx";
import { airCommands, readingCount } from "./airCommands.ts";
import sheet from "../../../base/styles/sheet.module.css";
import { DoneCard, type Done } from "./DoneCard.tsx";
import { FilePick } from "./FilePick.tsx";
import { notGuessedWords } from "./importWords.ts";
import { OpenDateCard } from "./OpenDateCard.tsx";
import { PlanFields } from "./PlanFields.tsx";
import { PreviewTable } from "./PreviewTable.tsx";
import { ReadCard } from "./ReadCard.tsx";
import type { FileQuestion, FileResult } from "./readFile.ts";
import { storedSeconds, useAirFile } from "./useAirFile.ts";

/** Rows of the file's start that are shown: the head and a screenful of readings. */
const shownRows = 14;

export function ImportPage() {
  const { id = "" } = useParams();
  // Only the room's name is wanted here, so no reading need come with it.
  const [since] = useState(useShop().clock);
  const found = useRoom(id, since);
  if (found === undefined) return null;
  if (found === null) return <NoRoom />;
  return <ImportInto key={id} room={found.room} />;
}

function ImportInto({ room }: { readonly room: Room }) {
  const { db, logAll } = useShop();
  const { state, refused, choose, change, stop, again, putAway } = useAirFile(room.id);
  const [done, setDone] = useState<Done | null>(null);

  const bringIn = async (
    file: File,
    { air, bad, merged }: FileResult,
    { moves }: FileQuestion,
  ): Promise<void> => {
    // Asked anew: another tab may have brought the same file in meanwhile.
    const stored = new Set(await storedSeconds(db, room.id));
    const commands = airCommands(air, { roomId: room.id, source: file.name, moves, stored });
    const result = await logAll(commands);
    const [first] = result.ok ? result.entries : [];
    if (!result.ok) return;
    const count = readingCount(commands);
    setDone({
      source: file.name,
      recordedAt: first?.recordedAt ?? 0,
      count,
      from: (air.atS[0] ?? 0) * 1000,
      to: (air.atS.at(-1) ?? 0) * 1000,
      bad,
      merged: { ...merged, stored: merged.stored + air.count - count },
    });
    putAway();
  };

  return (
    <Page title="A logger’s file" back={paths.room(room.id)}>
      {done !== null && <DoneCard done={done} room={room} onMore={() => setDone(null)} />}
      {done === null && (
        <>
          <p className={sheet["lead"]}>
            Readings of {room.name} from a data logger, as text. The file stays on this device.
          </p>
          <FilePick another={state !== null} onFile={(file) => void choose(file)} />
          {refused !== null && <p role="alert">{notGuessedWords(refused)}</p>}
        </>
      )}
      {done === null && state !== null && (
        <>
          <p className={`${sheet["title"]} ${sheet["breaks"]}`}>{state.file.name}</p>
          {state.isOrderOpen && state.guess.openDate !== null && (
            <OpenDateCard openDate={state.guess.openDate} plan={state.plan} change={change} />
          )}
          <PlanFields
            state={state}
            change={change}
            onDelimiter={(delimiter) => void choose(state.file, delimiter)}
          />
          <PreviewTable rows={state.rows.slice(0, shownRows)} isOrderOpen={state.isOrderOpen} />
          <ReadCard
            state={state}
            onStop={stop}
            onAgain={again}
            onBringIn={(result, asked) => bringIn(state.file, result, asked)}
          />
        </>
      )}
    </Page>
  );
}
