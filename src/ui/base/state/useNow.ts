import { useEffect, useState } from "react";
import { useShop } from "./shop.tsx";

/** Epoch ms now, looked at again every so often, and at once when the page is seen again. */
export function useNow(everyMs = 30_000): number {
  const { clock } = useShop();
  const [now, setNow] = useState(clock);
  useEffect(() => {
    const look = (): void => setNow(clock());
    const timer = setInterval(look, everyMs);
    document.addEventListener("visibilitychange", look);
    window.addEventListener("pageshow", look);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", look);
      window.removeEventListener("pageshow", look);
    };
  }, [clock, everyMs]);
  return now;
}
