import { useEffect, useState } from "react";
import { askToNotify, notifyPermission, type NotifyPermission } from "../../../device/notify.ts";

/** Whether notifications are allowed, looked at again when the person comes back from the browser's settings. */
export function useNotifyPermission(): readonly [NotifyPermission, () => Promise<void>] {
  const [permission, setPermission] = useState(notifyPermission);
  useEffect(() => {
    const look = (): void => setPermission(notifyPermission());
    document.addEventListener("visibilitychange", look);
    return () => document.removeEventListener("visibilitychange", look);
  }, []);
  return [permission, async () => setPermission(await askToNotify())];
}
