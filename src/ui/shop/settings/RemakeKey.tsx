import { useState } from "react";
import { rebuildProjections } from "../../../storage/rebuild.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";

/** Makes every summary again from the log, and says how it went. */
export function RemakeKey() {
  const { db } = useShop();
  const [told, setTold] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const rebuild = async (): Promise<void> => {
    setBusy(true);
    try {
      const { streams, setAside } = await rebuildProjections(db);
      const unread =
        setAside.length === 0 ? "" : ` ${setAside.length} lines could not be read and were left as they are.`;
      setTold(`Summaries made again from the log: ${streams} pieces, rooms, buckets and recipes.${unread}`);
    } catch (error) {
      setTold(
        `It failed, and nothing was changed: ${error instanceof Error ? error.message : String(error)}`,
      );
    }
    setBusy(false);
  };
  return (
    <>
      <Button disabledReason={busy ? "Working. A long log takes a while." : null} onPress={rebuild}>
        Rebuild the summaries
      </Button>
      {told !== null && <p role="status">{told}</p>}
    </>
  );
}
