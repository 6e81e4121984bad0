import { useLiveQuery } from "dexie-react-hooks";
import { hasDrafts } from "../../storage/drafts.ts";
import { Button } from "../base/parts/Button.tsx";
import { useFleeting } from "../base/state/fleeting.ts";
import { useShop } from "../base/state/shop.tsx";
import sheet from "../base/styles/sheet.module.css";
import styles from "../base/styles/bar.module.css";

/** Tells of a version that waits; it never takes over by itself. */
export function UpdateBar() {
  const takeUpdate = useFleeting((fleeting) => fleeting.takeUpdate);
  const { db } = useShop();
  const drafts = useLiveQuery(() => hasDrafts(db), [db], false);
  if (takeUpdate === null) return null;
  return (
    <div className={`${sheet["row24"]} ${styles["bar"]}`} role="status">
      <p>
        A new version of Dipbook is ready.{" "}
        {drafts
          ? "What you are writing is kept and will be there after it."
          : "Nothing logged is touched by it."}
      </p>
      <Button onPress={takeUpdate}>Use it now</Button>
    </div>
  );
}
