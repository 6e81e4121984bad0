import { useState } from "react";
import { pressureAtAltitudePa } from "../../../physics/air/air.ts";
import { streamOf } from "../../../logbook/entries/entry.ts";
import type { Room } from "../../../logbook/piece/piece.ts";
import { useFleeting } from "../../base/state/fleeting.ts";
import { useShop } from "../../base/state/shop.tsx";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { NumberField } from "../../base/forms/NumberField.tsx";
import { TextField } from "../../base/forms/TextField.tsx";

const lowestM = -400;
const highestM = 5000;

export function RoomSettings({ room }: { readonly room: Room }) {
  const { log } = useShop();
  const format = useFormat();
  const say = useFleeting((fleeting) => fleeting.say);
  const [name, setName] = useState(room.name);
  const [altitudeM, setAltitudeM] = useState<number | null>(room.altitudeM);
  const fits = altitudeM !== null && altitudeM >= lowestM && altitudeM <= highestM;
  const set = async (retired: boolean): Promise<void> => {
    if (altitudeM === null) return;
    const result = await log({
      do: "log",
      stream: streamOf("room", room.id),
      type: "room-set",
      body: { name: name.trim(), altitudeM, retired },
    });
    if (result.ok) say(retired ? `${name} retired` : `${name} saved`);
  };
  const same = name.trim() === room.name && altitudeM === room.altitudeM;
  const reason =
    name.trim() === ""
      ? "Give the room a name first."
      : fits
        ? same
          ? "Nothing is changed."
          : null
        : `The altitude must be from ${format.show("m", lowestM)} to ${format.show("m", highestM)}.`;
  return (
    <Card title="About this room">
      <TextField label="Name" value={name} onChange={setName} />
      <NumberField
        label="Altitude"
        quantity="m"
        value={altitudeM}
        onChange={setAltitudeM}
        min={lowestM}
        max={highestM}
        hint={
          fits
            ? `Air pressure there is about ${format.show("hPa", pressureAtAltitudePa(altitudeM) / 100)}.`
            : "Within 100 m is good enough."
        }
      />
      <Button onPress={() => set(room.retired)} disabledReason={reason}>
        Save
      </Button>
      <Button kind="quiet" onPress={() => set(!room.retired)}>
        {room.retired ? "Use it again" : "Retire this room"}
      </Button>
    </Card>
  );
}
