import { Bluetooth } from "lucide-react";
import { Link } from "wouter";
import type { Room } from "../../../logbook/piece/piece.ts";
import { paths } from "../../base/state/paths.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import { valueWords } from "../sensors/sensorWords.ts";
import { useSensor } from "../sensors/useSensor.ts";
import sheet from "../../base/styles/sheet.module.css";
import styles from "./rooms.module.css";

/** What this room's sensor says now, if one is linked; nothing where none is. */
export function SensorChip({ room }: { readonly room: Room }) {
  const format = useFormat();
  const { state, told, isLinked } = useSensor("air", room.id);
  if (state.is === "idle" || state.is === "stopped") return null;
  const words = isLinked ? told && valueWords(told.value, format) : null;
  return (
    <Link href={paths.roomSensor(room.id)} className={`${sheet["link"]} ${styles["chip"]}`}>
      <Bluetooth aria-hidden="true" size={18} />
      {words ?? (isLinked ? "Sensor linked" : state.is === "waiting" ? "Sensor lost" : "Sensor…")}
    </Link>
  );
}
