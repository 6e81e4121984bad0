import { Cut, Drawing, Label, Shell } from "./Drawing.tsx";
import css from "./drawing.module.css";

const shell = (x: number): string =>
  `M${x - 12} 70H${x + 12}L${x + 9} 84C${x + 28} 100 ${x + 28} 140 ${x + 4} 150H${x - 4}C${x - 28} 140 ${x - 28} 100 ${x - 9} 84Z` +
  `M${x - 4} 78L${x - 2} 90C${x - 18} 104 ${x - 18} 132 ${x} 141C${x + 18} 132 ${x + 18} 104 ${x + 2} 90L${x + 4} 78Z`;

/** Among the pieces, and the places where it must not hang. */
export function HygrometerDrawing() {
  return (
    <Drawing height={220} says="A hygrometer hangs between shells, away from fan and window.">
      <Cut d="M340 14H354V204H340Z" />
      <rect className={css["bold"]} x={334} y={66} width={12} height={70} />
      <path className={css["thin"]} d="M340 66V136" />
      <path className={css["bold"]} d="M70 36H326V43H70Z" />
      <path className={css["line"]} d="M104 43V70M268 43V70M186 43V84" />
      <Shell d={shell(104)} />
      <Shell d={shell(268)} />
      <circle className={css["bold"]} cx={186} cy={112} r={28} />
      <path className={css["thin"]} d="M166 124A24 24 0 1 1 206 124" />
      <path className={css["line"]} d="M186 92V97M168 104L172 106M204 104L200 106" />
      <path className={css["point"]} d="M186 114L198 100" />
      <circle className={css["dark"]} cx={186} cy={114} r={2.5} />
      <path className={css["thin"]} d="M130 156V176M158 156V176M214 156V176M242 156V176" />
      <path className={css["line"]} d="M132 170H156M138 166L131 170L138 174M150 166L157 170L150 174" />
      <path className={css["line"]} d="M216 170H240M222 166L215 170L222 174M234 166L241 170L234 174" />
      <Label x={186} y={196} middle>
        an arm’s length on each side
      </Label>
      <path className={css["bold"]} d="M20 166H44M32 166V136" />
      <circle className={css["bold"]} cx={32} cy={112} r={24} />
      <path
        className={css["line"]}
        d="M32 112C22 104 24 94 32 92M32 112C44 108 52 114 50 122M32 112C30 124 20 128 14 120"
      />
      <path className={css["no"]} d="M60 76L72 88M72 76L60 88" />
      <path className={css["no"]} d="M312 92L328 108M328 92L312 108" />
      <Label x={32} y={188} middle>
        fan
      </Label>
      <Label x={334} y={164} end>
        window
      </Label>
      <Label x={186} y={24} middle>
        level with the pieces
      </Label>
    </Drawing>
  );
}
