import { millisecondsInMinute as minuteMs } from "date-fns/constants";
import { useEffect, useRef } from "react";

/** Does it every so many minutes while the caller is shown; 0 for never. Always the newest `act`. */
export function useAutoLog(everyMin: number, act: () => void): void {
  const newest = useRef(act);
  useEffect(() => {
    newest.current = act;
  });
  useEffect(() => {
    if (everyMin === 0) return undefined;
    const timer = setInterval(() => newest.current(), everyMin * minuteMs);
    return () => clearInterval(timer);
  }, [everyMin]);
}
