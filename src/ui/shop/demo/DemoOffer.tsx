import { useLiveQuery } from "dexie-react-hooks";
import { useState } from "react";
import { Link } from "wouter";
import { hasDemo, loadDemo, removeDemo } from "../../../storage/demo.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { demoPhotos } from "./demoPhoto.ts";
import { demoEntries } from "./demoShop.ts";

/** An invented shop to look at, beside the real ones and never mixed with them. */
export function DemoOffer() {
  const { db, moment } = useShop();
  const there = useLiveQuery(() => hasDemo(db), [db]);
  const [fault, setFault] = useState<string | null>(null);
  const run = async (work: () => Promise<void>) => {
    try {
      await work();
      setFault(null);
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error));
    }
  };
  const load = () =>
    run(async () => {
      const { now, zone } = moment();
      return loadDemo(db, demoEntries(now, zone), await demoPhotos());
    });
  return (
    <Card title="Demo shop">
      <p>
        Invented pieces, from a first coat to sold and scrapped, with rooms and their air, buckets, a store, a
        kiln, a furnace and a pour planned for tomorrow. Their names begin with “Demo”. Taking them out
        touches nothing of yours.
      </p>
      {fault !== null && <p role="alert">It did not work: {fault}</p>}
      {there === true ? (
        <>
          <p role="status">
            The demo shop is in. <Link href={paths.rack}>See the rack</Link>
          </p>
          <Button onPress={() => run(() => removeDemo(db))}>Take the demo shop out</Button>
        </>
      ) : (
        <Button onPress={load}>Load the demo shop</Button>
      )}
    </Card>
  );
}
