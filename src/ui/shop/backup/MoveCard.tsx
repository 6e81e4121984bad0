import { useState } from "react";
import { useSettings } from "../../base/state/live.ts";
import { Button } from "../../base/parts/Button.tsx";
import { Card } from "../../base/parts/Card.tsx";
import { TextField } from "../../base/forms/TextField.tsx";
import sheet from "../../base/styles/sheet.module.css";
import css from "./backup.module.css";

/** From an old phone to a new one, or from one web address to another, without a server. */
export function MoveCard() {
  const [{ movedTo }, change] = useSettings();
  const [place, setPlace] = useState("");
  if (movedTo !== "") return null;
  return (
    <Card title="Move to another device or address">
      <details>
        <summary>How to move this log</summary>
        <ol className={`${sheet["stack3"]} ${css["steps"]}`}>
          <li>Here: save a backup of everything, above, and see that the file arrived.</li>
          <li>
            There: open Dipbook on the new device or at the new address. In Settings, choose the file under
            “Restore or check a backup” and add it.
          </li>
          <li>There: look at a piece you know. Its coats and photos should be as they are here.</li>
          <li>
            Here: say where it has moved to. This place becomes read-only, so that no coat is logged in the
            old log by mistake.
            <TextField
              label="Moved to"
              value={place}
              onChange={setPlace}
              hint="For example: the new phone, or the new address."
            />
            <Button
              onPress={() => change({ movedTo: place.trim().slice(0, 200) })}
              disabledReason={place.trim() === "" ? "Write where it has moved to first." : null}
            >
              Make this place read-only
            </Button>
          </li>
        </ol>
      </details>
    </Card>
  );
}
