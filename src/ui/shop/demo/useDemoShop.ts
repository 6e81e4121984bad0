import { useLiveQuery } from "dexie-react-hooks";
import { useState } from "react";
import { hasDemo, loadDemo, removeDemo } from "../../../storage/demo.ts";
import { useShop } from "../../base/state/shop.tsx";
import { demoPhotos } from "./demoPhoto.ts";
import { demoEntries } from "./demoShop.ts";

/** The demo shop: whether it is in, and the ways to put it in and take it out; `fault` says why that did not work. */
export function useDemoShop() {
  const { db, moment } = useShop();
  const isIn = useLiveQuery(() => hasDemo(db), [db]);
  const [fault, setFault] = useState<string | null>(null);
  const run = async (work: () => Promise<void>): Promise<void> => {
    try {
      await work();
      setFault(null);
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
  };
  return {
    isIn,
    fault,
    load: () =>
      run(async () => {
        const { now, zone } = moment();
        return loadDemo(db, demoEntries(now, zone), await demoPhotos());
      }),
    remove: () => run(() => removeDemo(db)),
  };
}
