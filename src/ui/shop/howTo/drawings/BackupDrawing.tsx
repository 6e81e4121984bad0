import { Drawing, Label } from "./Drawing.tsx";
import css from "./drawing.module.css";

/** One file, off the phone, in two places. */
export function BackupDrawing() {
  return (
    <Drawing height={220} says="A backup file goes from the phone to a computer and to a stick.">
      <rect className={css["bold"]} x={18} y={34} width={84} height={150} rx={11} />
      <path className={css["thin"]} d="M27 50H93V164H27Z" />
      <path className={css["line"]} d="M36 64H72M36 76H84M36 88H66" />
      <rect className={css["key"]} x={36} y={120} width={48} height={26} rx={4} />
      <path className={css["bold"]} d="M138 76H170L184 90V140H138Z" />
      <path className={css["line"]} d="M170 76V90H184M147 104H175M147 114H175M147 124H165" />
      <path className={css["point"]} d="M106 108H130M123 102L131 108L123 114" />
      <path className={css["point"]} d="M192 98C204 82 210 74 224 68M212 68L225 67L219 78" />
      <path className={css["point"]} d="M192 122C206 140 214 150 232 160M218 160L233 161L229 149" />
      <path className={css["bold"]} d="M236 24H332V86H236ZM222 94H346L338 86H230Z" />
      <path className={css["yes"]} d="M268 56L280 68L302 42" />
      <path className={css["bold"]} d="M244 150H300V180H244Z" />
      <path className={css["line"]} d="M300 156H322V174H300M308 161H313M308 169H313" />
      <path className={css["yes"]} d="M262 164L268 171L281 157" />
      <Label x={60} y={206} middle>
        the only copy
      </Label>
      <Label x={161} y={160} middle>
        one file
      </Label>
      <Label x={284} y={116} middle>
        another computer
      </Label>
      <Label x={284} y={202} middle>
        a stick
      </Label>
    </Drawing>
  );
}
