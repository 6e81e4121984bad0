import { useFleeting } from "./fleeting.ts";
import { useShop, type LogResult } from "./shop.tsx";

/** What the key beside "done" does: takes back all that the tap has just written. Undefined where it wrote nothing. */
export function useUndoing(): (done: LogResult) => (() => void) | undefined {
  const { takeBack } = useShop();
  const say = useFleeting((fleeting) => fleeting.say);
  return (done) => {
    const entryId = done.ok ? done.entries[0]?.id : undefined;
    if (entryId === undefined) return undefined;
    const undo = async (): Promise<void> => {
      if ((await takeBack(entryId, "tapped by mistake")).ok) say("Taken back.");
    };
    return () => void undo();
  };
}
