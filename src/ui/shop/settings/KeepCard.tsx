import { useEffect, useState } from "react";
import { askToKeep, keeping, space, type Keeping, type Space } from "../../../device/persistence.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import sheet from "../../base/styles/sheet.module.css";

const words: Record<Keeping, string> = {
  kept: "Kept. The browser has promised not to clear this log to make room.",
  "may-be-cleared":
    "Not promised. The browser may clear this log when the device runs out of room. Save a backup.",
  missing: "This browser can't promise anything here (it can only over https). Save backups.",
};

export function KeepCard() {
  const format = useFormat();
  const [state, setState] = useState<Keeping | null>(null);
  const [room, setRoom] = useState<Space | null>(null);
  const [asked, setAsked] = useState(false);
  useEffect(() => {
    let gone = false;
    const look = async () => {
      const [kept, free] = [await keeping(), await space()];
      if (gone) return;
      setState(kept);
      setRoom(free);
    };
    void look();
    return () => {
      gone = true;
    };
  }, []);
  const megabytes = (bytes: number) => `${format.number(bytes / 1e6, bytes < 1e7 ? 1 : 0)} MB`;
  return (
    <Card title="Kept on this device">
      <p role="status">{state === null ? "Asking the browser…" : words[state]}</p>
      {asked && state === "may-be-cleared" && (
        <p>
          It was asked and said no. Adding the app to the home screen, or using it for some days, often
          changes that answer.
        </p>
      )}
      {room !== null && (
        <p className={sheet["soft"]}>
          {megabytes(room.usedBytes)} used of about {megabytes(room.quotaBytes)} allowed, by the browser's
          estimate.
        </p>
      )}
      {state === "may-be-cleared" && (
        <Button
          onPress={async () => {
            setState(await askToKeep());
            setAsked(true);
          }}
        >
          Ask the browser to keep it
        </Button>
      )}
    </Card>
  );
}
