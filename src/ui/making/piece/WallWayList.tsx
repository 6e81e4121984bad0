import type { JudgedWall } from "../../../logbook/piece/standing.ts";
import { wayFigures } from "../../../rules/wayFigures.ts";
import { sayOf } from "../../base/format/findingSay.ts";
import { noSingleWay, wayWords } from "../../base/format/wallWayWords.ts";
import { useFormat } from "../../base/state/useFormat.ts";
import sheet from "../../base/styles/sheet.module.css";

/** What would make a shell carry its pour, any one of them; nothing where it does. */
export function WallWayList({ judged }: { readonly judged: JudgedWall }) {
  const format = useFormat();
  if (judged.ways === null) return null;
  const lines = wayWords(sayOf({ figures: wayFigures(judged.ways), texts: {} }, format));
  if (lines.length === 0) return <p>{noSingleWay}</p>;
  return (
    <div className={sheet["stack2"]}>
      <p>{lines.length === 1 ? "This would be enough:" : "Any one of these would be enough:"}</p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
