import { Link } from "wouter";
import { paths } from "../../base/state/paths.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { useDemoShop } from "./useDemoShop.ts";

/** An invented shop to look at, beside the real ones and never mixed with them. */
export function DemoOffer() {
  const { isIn, fault, load, remove } = useDemoShop();
  return (
    <Card title="Demo shop">
      <p>
        Invented pieces, from a first coat to sold and scrapped, with rooms, buckets, a store, a kiln and a
        furnace. A pour is planned for tomorrow. Their names begin with “Demo”. You can remove it without
        touching your own log.
      </p>
      {fault !== null && <p role="alert">It did not work: {fault}</p>}
      {isIn === true ? (
        <>
          <p role="status">
            Demo shop loaded. <Link href={paths.rack}>See the rack</Link>
          </p>
          <Button onPress={remove}>Remove the demo shop</Button>
        </>
      ) : (
        <Button onPress={load}>Look at a demo shop</Button>
      )}
    </Card>
  );
}
