import { useSyncExternalStore } from "react";
import { RackSide } from "../rack/RackSide.tsx";
import { PiecePage } from "./PiecePage.tsx";
import styles from "./PieceBesideRack.module.css";

/** From this width on both have room: the rail, a rack of 18 rem and a piece in two columns. */
const wide = "(min-width: 1100px)";

/** A piece, on a wide screen with the rack beside it, so that the next piece is one click away. */
export function PieceBesideRack() {
  const isWide = useSyncExternalStore(listen, () => matchMedia(wide).matches);
  if (!isWide) return <PiecePage />;
  return (
    <div className={styles["both"]}>
      <RackSide />
      <div className={styles["piece"]}>
        <PiecePage />
      </div>
    </div>
  );
}

function listen(changed: () => void): () => void {
  const query = matchMedia(wide);
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}
