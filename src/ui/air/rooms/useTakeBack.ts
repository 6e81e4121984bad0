import { streamOf } from "../../../logbook/entries/entry.ts";
import { blocksOfFile, type AirFile } from "../../../storage/roomLines.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";

/** Strikes all that came from one file, in one transaction; true when it is done. */
export function useTakeBack(roomId: string): (file: AirFile) => Promise<boolean> {
  const { db, logAll } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  return async (file) => {
    const ids = await blocksOfFile(db, roomId, file);
    const stream = streamOf("room", roomId);
    const result = await logAll(
      ids.map((entryId) => ({ do: "strike", stream, entryId, reason: "file taken back" })),
    );
    if (result.ok) say(`Taken back: ${file.source}`);
    return result.ok;
  };
}
