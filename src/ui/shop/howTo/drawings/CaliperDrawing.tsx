import { Drawing, Label, Shell } from "./Drawing.tsx";
import css from "./drawing.module.css";

/** Jaws square on the broken rim of the cup. */
export function CaliperDrawing() {
  return (
    <Drawing height={240} says="The jaws of a caliper close on the broken edge of a pour cup.">
      <Shell d="M104 128L110 126L118 129L126 126L132 128L134 160C136 186 150 200 170 208L162 232C128 220 108 196 106 162Z" />
      <path
        className={css["prime"]}
        d="M127 127L132 128L134 160C136 186 150 200 170 208L168 214C144 206 130 188 128 162Z"
      />
      <Shell d="M316 128L310 126L302 129L294 126L288 128L286 160C284 186 270 200 250 208L258 232C292 220 312 196 314 162Z" />
      <path
        className={css["prime"]}
        d="M293 127L288 128L286 160C284 186 270 200 250 208L252 214C276 206 290 188 292 162Z"
      />
      <path className={css["bold"]} d="M20 30H344V52H20Z" />
      <path
        className={css["thin"]}
        d="M150 52V45M162 52V45M174 52V40M186 52V45M198 52V45M210 52V40M222 52V45M234 52V45M246 52V40M258 52V45M270 52V45M282 52V40M294 52V45M306 52V45M318 52V40"
      />
      <path className={css["bold"]} d="M76 52H104V164L96 176L84 120Z" />
      <path className={css["bold"]} d="M134 24H196V60H168L160 120L142 176L134 164Z" />
      <rect className={css["glow"]} x={144} y={32} width={44} height={18} rx={3} />
      <path className={css["line"]} d="M152 41H162M168 41H180" />
      <path className={css["thin"]} d="M104 52V100M134 60V100" />
      <path className={css["point"]} d="M66 88H100M93 82L101 88L93 94M172 88H138M145 82L137 88L145 94" />
      <Label x={60} y={93} end>
        shell
      </Label>
      <path className={css["point"]} d="M226 108C246 96 276 104 296 122M285 121L297 123L295 111" />
      <Label x={182} y={94}>
        a clean edge,
      </Label>
      <Label x={226} y={150} middle>
        no wax,
      </Label>
      <Label x={226} y={168} middle>
        no loose grains
      </Label>
      <Label x={210} y={230} middle>
        pour cup
      </Label>
    </Drawing>
  );
}
