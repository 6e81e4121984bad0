import { useEffect } from "react";
import { useFleeting } from "./fleeting.ts";

/** While `bare` holds, the phone's bottom bar is put away, so that no target lies near the edge. */
export function useBareFrame(bare: boolean): void {
  const setBare = useFleeting((fleeting) => fleeting.setBare);
  useEffect(() => {
    setBare(bare);
    return () => setBare(false);
  }, [bare, setBare]);
}
