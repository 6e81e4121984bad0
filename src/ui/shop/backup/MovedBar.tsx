import { useSettings } from "../../base/state/live.ts";
import sheet from "../../base/styles/sheet.module.css";
import bar from "../../base/styles/bar.module.css";
import { Button } from "../../base/parts/Button.tsx";

/** Says on every screen that this log has moved and takes no more entries, until that is taken back. */
export function MovedBar() {
  const [{ movedTo }, change] = useSettings();
  if (movedTo === "") return null;
  return (
    <div className={`${sheet["row24"]} ${bar["bar"]}`} role="status">
      <p>This log has moved to {movedTo}. Here it can only be read.</p>
      <Button onPress={() => change({ movedTo: "" })}>Use it here again</Button>
    </div>
  );
}
