import { streamOf } from "../../logbook/entry.ts";
import { blocksOfFile, type AirFile } from "../../storage/roomLines.ts";
import { useFleeting } from "../app/fleeting.ts";
import { useShop } from "../app/shop.tsx";

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
