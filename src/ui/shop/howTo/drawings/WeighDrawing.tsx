import { Cut, Drawing, Label, Shell } from "./Drawing.tsx";
import css from "./drawing.module.css";

/** A shell on its hook over the scale, and the three weights of one coat. */
export function WeighDrawing() {
  return (
    <Drawing
      height={230}
      says="A shell hangs from a stand on a scale; beside it the three weights of a coat."
    >
      <Cut d="M4 204H216V222H4Z" />
      <path className={css["bold"]} d="M22 174H176L186 204H12Z" />
      <path className={css["bold"]} d="M14 162H184V174H14Z" />
      <rect className={css["glow"]} x={64} y={180} width={70} height={18} rx={3} />
      <path className={css["line"]} d="M76 189H98M104 189H112M118 189H124" />
      <path className={css["line"]} d="M30 162V16H104M24 162H52" />
      <path className={css["line"]} d="M104 16V28C104 36 112 36 112 30" />
      <path className={css["line"]} d="M104 34V46" />
      <path className={css["bold"]} d="M116 40L134 34L138 46L120 52Z" />
      <path className={css["thin"]} d="M104 38L117 44" />
      <Shell d="M76 46L132 46L127 60C124 70 136 82 142 102C148 124 134 150 104 150C74 150 60 124 66 102C72 82 84 70 81 60Z M88 54L93 66C95 78 82 90 78 106C74 124 84 138 104 138C124 138 134 124 130 106C126 90 113 78 115 66L120 54Z" />
      <Label x={146} y={34}>
        same hook,
      </Label>
      <Label x={146} y={52}>
        same tag
      </Label>
      <path className={css["line"]} d="M224 204H352" />
      <path className={css["prime"]} d="M230 130H256V204H230Z" />
      <path className={css["slurry"]} d="M271 110H297V204H271Z" />
      <Shell d="M312 84H338V204H312Z" />
      <path className={css["point"]} d="M244 122C248 108 258 100 270 100M263 95L271 100L264 106" />
      <path className={css["point"]} d="M285 100C289 84 298 74 311 74M304 69L312 74L305 80" />
      <Label x={243} y={222} middle>
        dry
      </Label>
      <Label x={284} y={222} middle>
        wet
      </Label>
      <Label x={330} y={222} middle>
        stucco
      </Label>
    </Drawing>
  );
}
