import sheet from "../styles/sheet.module.css";
import css from "./Tick.module.css";

export function Tick({
  label,
  ticked,
  onChange,
}: {
  readonly label: string;
  readonly ticked: boolean;
  readonly onChange: (ticked: boolean) => void;
}) {
  return (
    <label className={`${sheet["line3"]} ${css["tick"]}`}>
      <input type="checkbox" checked={ticked} onChange={(event) => onChange(event.target.checked)} />
      {label}
    </label>
  );
}
