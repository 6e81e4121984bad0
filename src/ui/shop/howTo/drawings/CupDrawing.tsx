import { useFormat } from "../../../base/state/useFormat.ts";
import { Cut, Drawing, Label } from "./Drawing.tsx";
import css from "./drawing.module.css";

/** The cup lifted out of the bucket: where the time begins and where it ends. */
export function CupDrawing() {
  const { units } = useFormat();
  return (
    <Drawing height={250} says="A flow cup held over the bucket; its stream breaks below the hole.">
      <path
        className={css["slurry"]}
        d="M48 190C64 186 84 194 104 190S146 186 170 190S204 193 212 190V236H48Z"
      />
      <Cut d="M40 160H50V234H210V160H220V244H40Z" />
      <path className={css["line"]} d="M98 62C98 10 162 10 162 62" />
      <path className={css["thin"]} d="M104 62C104 18 156 18 156 62" />
      <path className={css["slurry"]} d="M99 76H161V98C161 114 148 122 134 124H126C112 122 99 114 99 98Z" />
      <path
        className={css["bold"]}
        d="M92 62H99V98C99 113 112 120 127 122V128H122C104 126 92 116 92 98Z M168 62H161V98C161 113 148 120 133 122V128H138C156 126 168 116 168 98Z"
      />
      <path className={css["slurry"]} d="M127.5 128H132.5L131.5 152C131 158 129 158 128.5 152Z" />
      <path
        className={css["slurry"]}
        d="M130 162C133 167 133 171 130 172C127 171 127 167 130 162ZM130 177C133 182 133 186 130 187C127 186 127 182 130 177Z"
      />
      <path className={css["point"]} d="M244 158H142M150 152L142 158L150 164" />
      <Label x={250} y={154}>
        stop: first
      </Label>
      <Label x={250} y={172}>
        break
      </Label>
      <path className={css["thin"]} d="M72 128H124M72 190H84" />
      <path className={css["line"]} d="M78 130V188M74 136L78 129L82 136M74 182L78 189L82 182" />
      <Label x={66} y={134} end>
        {units === "us" ? "6 in" : "15 cm"}
      </Label>
      <Label x={66} y={151} end>
        at most
      </Label>
      <path className={css["point"]} d="M192 92V52M186 60L192 51L198 60" />
      <Label x={204} y={56}>
        start: the rim
      </Label>
      <Label x={204} y={74}>
        leaves the slurry
      </Label>
      <Label x={230} y={220}>
        slurry, stirred
      </Label>
    </Drawing>
  );
}
