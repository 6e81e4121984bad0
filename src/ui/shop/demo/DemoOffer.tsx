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
        Eight invented pieces at different stages, with rooms and their air, buckets, a store, a kiln, a
        furnace and a pour planned for tomorrow. Their names begin with “Demo”. Taking them out touches
        nothing of yours.
      </p>
      {fault !== null && <p role="alert">It did not work: {fault}</p>}
      {isIn === true ? (
        <>
          <p role="status">
            The demo shop is in. <Link href={paths.rack}>See the rack</Link>
          </p>
          <Button onPress={remove}>Take the demo shop out</Button>
        </>
      ) : (
        <Button onPress={load}>Look at a demo shop</Button>
      )}
    </Card>
  );
}
