import { useState } from "react";
import { streamOf } from "../../logbook/entry.ts";
import type { AirReading } from "../../logbook/piece.ts";
import { useShop } from "../app/shop.tsx";
import { useFormat } from "../app/useFormat.ts";
import { Button } from "../parts/Button.tsx";
import { Card } from "../parts/Card.tsx";
import { When } from "../parts/When.tsx";
import { readingWords } from "./airWords.ts";
import styles from "./rooms.module.css";

const firstShown = 8;

/** What was read here, newest first. A wrong reading is struck; the log keeps it, the sums leave it out. */
export function ReadingList(props: { readonly roomId: string; readonly readings: readonly AirReading[] }) {
  const { roomId, readings } = props;
  const { log } = useShop();
  const format = useFormat();
  const [all, setAll] = useState(false);
  const newest = [...readings].sort((a, b) => b.at - a.at);
  const shown = all ? newest : newest.slice(0, firstShown);
  const strike = (entryId: string) =>
    log({ do: "strike", stream: streamOf("room", roomId), entryId, reason: "wrong reading" });
  return (
    <Card title="Readings">
      <ul className={styles["readings"]}>
        {shown.map((reading) => (
          <li key={reading.id}>
            <span>
              <span className={styles["soft"]}>
                <When at={reading.at} />
              </span>
              <br />
              {readingWords(reading, format)}
              {reading.note !== undefined && <em> “{reading.note}”</em>}
            </span>
            <Button
              kind="quiet"
              label={`Strike the reading ${readingWords(reading, format)}`}
              onPress={() => strike(reading.id)}
            >
              Strike
            </Button>
          </li>
        ))}
      </ul>
      {newest.length > firstShown && (
        <Button kind="quiet" onPress={() => setAll(!all)}>
          {all ? "Only the newest" : `All ${newest.length} readings`}
        </Button>
      )}
    </Card>
  );
}
