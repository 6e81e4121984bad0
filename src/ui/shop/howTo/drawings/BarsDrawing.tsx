import { Drawing, Label, Shell } from "./Drawing.tsx";
import css from "./drawing.module.css";

/** A bar on two rods with the bucket of sand, and the section that is measured. */
export function BarsDrawing() {
  return (
    <Drawing height={250} says="A test bar lies on two rods; a bucket of sand hangs at its middle.">
      <path className={css["bold"]} d="M18 76H66V240H18ZM182 76H230V240H182Z" />
      <circle className={css["bold"]} cx={54} cy={68} r={8} />
      <circle className={css["bold"]} cx={194} cy={68} r={8} />
      <Shell d="M30 42L62 43L98 41L140 43L180 42L218 43V60L176 59L132 60L86 59L30 60Z" />
      <path className={css["prime"]} d="M30 56H218V60H30Z" />
      <path className={css["line"]} d="M118 36H130V70H118ZM124 70V112" />
      <path className={css["line"]} d="M92 138C92 104 156 104 156 138" />
      <path className={css["sand"]} d="M93 160C108 148 134 146 155 160L150 206H98Z" />
      <path className={css["line"]} d="M88 138H160L152 210H96Z" />
      <path className={css["point"]} d="M146 82C140 100 134 120 130 140M124 134L129 143L138 138" />
      <Label x={142} y={80}>
        sand
      </Label>
      <path className={css["thin"]} d="M54 56V10M194 56V10" />
      <path className={css["line"]} d="M56 18H192M64 14L55 18L64 22M184 14L193 18L184 22" />
      <Label x={90} y={35} middle>
        L
      </Label>
      <Shell d="M262 92L286 91L312 93L338 92V134L312 133L288 135L262 134Z" />
      <path className={css["prime"]} d="M262 126H338V134H262Z" />
      <path className={css["thin"]} d="M262 140V158M338 140V158M344 92H358M344 134H358" />
      <path className={css["line"]} d="M264 152H336M271 148L263 152L271 156M329 148L337 152L329 156" />
      <path className={css["line"]} d="M352 94V132M348 101L352 93L356 101M348 125L352 133L356 125" />
      <Label x={300} y={172} middle>
        b
      </Label>
      <Label x={352} y={84} middle>
        d
      </Label>
      <Label x={300} y={196} middle>
        prime face
      </Label>
      <Label x={300} y={214} middle>
        always down
      </Label>
      <path className={css["point"]} d="M274 182C266 168 268 152 276 134M268 140L277 131L282 141" />
    </Drawing>
  );
}
