import { useState } from "react";
import { Link, useLocation } from "wouter";
import { v7 as uuidv7 } from "uuid";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Room } from "../../../logbook/piece/piece.ts";
import { useRooms } from "../../base/state/live.ts";
import { paths } from "../../base/state/paths.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Ago } from "../../base/parts/Ago.tsx";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { Page } from "../../base/parts/Page.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import { readingWords, thirstWords } from "./airWords.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./rooms.module.css";

export function RoomsPage() {
  const rooms = useRooms();
  const [adding, setAdding] = useState(false);
  return (
    <Page
      title="Rooms"
      actions={<Button onPress={() => setAdding(!adding)}>{adding ? "Not now" : "Add a room"}</Button>}
    >
      {adding && <AddRoom />}
      <p className={sheet["lead"]}>
        Drying times follow the air of the room. Log it when you dip, and whenever weather, heating or a fan
        changes.
      </p>
      <ul className={`${sheet["stack3"]} ${sheet["list"]}`}>
        {rooms?.map((room) => (
          <li key={room.id}>
            <RoomLine room={room} />
          </li>
        ))}
      </ul>
    </Page>
  );
}

function RoomLine({ room }: { readonly room: Room }) {
  const format = useFormat();
  const { last } = room;
  return (
    <Link href={paths.room(room.id)} className={`${sheet["lines"]} ${sheet["panel"]} ${styles["room"]}`}>
      <span className={`${sheet["title"]} ${sheet["breaks"]}`}>
        {room.name}
        {room.retired && <small> (retired)</small>}
      </span>
      {last === null ? (
        <span>No reading yet, so no drying time.</span>
      ) : (
        <>
          <span>{readingWords(last, format)}</span>
          <span className={sheet["soft"]}>
            Read <Ago at={last.at} />; {thirstWords(last, format)}
          </span>
        </>
      )}
    </Link>
  );
}

function AddRoom() {
  const { log } = useShop();
  const [, go] = useLocation();
  const [name, setName] = useState("");
  const [altitudeM, setAltitudeM] = useState<number | null>(0);
  const add = async (): Promise<void> => {
    const id = uuidv7();
    const body = { name: name.trim(), altitudeM: altitudeM ?? 0 };
    const result = await log({ do: "log", stream: streamOf("room", id), type: "room-set", body });
    if (result.ok) go(paths.room(id));
  };
  return (
    <Card title="A new room">
      <TextField label="Name" value={name} onChange={setName} hint="Such as “Cellar” or “Drying cupboard”" />
      <NumberField
        label="Altitude"
        quantity="m"
        value={altitudeM}
        onChange={setAltitudeM}
        min={-400}
        max={5000}
        hint="Thin air dries a little faster. Within 100 m is good enough."
      />
      <Button
        kind="primary"
        onPress={add}
        disabledReason={name.trim() === "" ? "Give the room a name first." : null}
      >
        Add it
      </Button>
    </Card>
  );
}
