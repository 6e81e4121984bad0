import { effective } from "../../logbook/effective.ts";
import type { Entry } from "../../logbook/entry.ts";
import { useShop } from "../app/shop.tsx";
import { Button } from "../parts/Button.tsx";
import { When } from "../parts/When.tsx";
import { ReadingLine } from "./ReadingLine.tsx";

const listed = 20;

/** The last readings, newest first; a wrong one is struck, and stays in the log as struck. */
export function ReadingList({ entries }: { readonly entries: readonly Entry[] }) {
  const shop = useShop();
  const readings = effective(entries).filter((entry) => entry.type === "bucket-read");
  if (readings.length === 0)
    return (
      <p>None yet. Time the cup before each session: a bucket that thickens builds thicker, weaker walls.</p>
    );
  return (
    <>
      <table>
        <thead>
          <tr>
            <th scope="col">When</th>
            <th scope="col">Reading</th>
            <th scope="col">
              <span className="visually-hidden">Strike</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {readings
            .toReversed()
            .slice(0, listed)
            .map(({ id, at, stream, body }) => (
              <tr key={id}>
                <td>
                  <When at={at} />
                </td>
                <td>
                  <ReadingLine reading={body} />
                </td>
                <td>
                  <Button
                    kind="quiet"
                    onPress={() => shop.log({ do: "strike", stream, entryId: id, reason: "wrong reading" })}
                  >
                    Strike
                  </Button>
                </td>
              </tr>
            ))}
        </tbody>
      </table>
      {readings.length > listed && <p>{readings.length - listed} older ones are in the log.</p>}
    </>
  );
}
