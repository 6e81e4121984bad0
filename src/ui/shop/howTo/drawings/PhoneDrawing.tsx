import { Cut, Drawing, Label } from "./Drawing.tsx";
import css from "./drawing.module.css";

/** The phone on its arm over the bucket, and the switch under the foot. */
export function PhoneDrawing() {
  return (
    <Drawing height={260} says="A phone clamped at eye height beside the bucket; a foot switch on the floor.">
      <Cut d="M4 240H356V254H4Z" />
      <Cut d="M4 12H18V240H4Z" />
      <path className={css["bold"]} d="M18 40H70V48H18ZM70 36H78V96H70Z" />
      <rect className={css["bold"]} x={76} y={26} width={58} height={98} rx={8} />
      <path className={css["thin"]} d="M82 36H128V110H82Z" />
      <path className={css["line"]} d="M88 46H116M88 56H106" />
      <rect className={css["key"]} x={86} y={68} width={38} height={34} rx={4} />
      <path className={css["thin"]} d="M70 18C82 14 132 14 142 20L146 126C136 138 84 138 68 130Z" />
      <path className={css["thin"]} d="M105 124V140C105 160 18 150 18 176" />
      <path className={css["slurry"]} d="M56 178C74 174 92 182 112 178S138 176 144 178V232H56Z" />
      <Cut d="M48 160H56V232H144V160H152V240H48Z" />
      <path className={css["bold"]} d="M226 232L232 216H288L294 232V240H226Z" />
      <path className={css["key"]} d="M238 216L243 208H277L282 216Z" />
      <path
        className={css["line"]}
        d="M272 120V168C268 184 248 190 238 198C234 204 240 208 248 208H300C306 208 308 200 306 190V120"
      />
      <path className={css["point"]} d="M218 214C196 200 172 160 146 96M144 108L145 94L156 103" />
      <path className={css["thin"]} d="M142 62H228" />
      <path className={css["line"]} d="M236 62C246 50 262 50 272 62C262 74 246 74 236 62Z" />
      <circle className={css["dark"]} cx={254} cy={62} r={5} />
      <Label x={282} y={67}>
        eye height
      </Label>
      <Label x={158} y={22}>
        thin clear bag
      </Label>
      <Label x={302} y={222}>
        foot
      </Label>
      <Label x={302} y={237}>
        switch
      </Label>
      <Label x={192} y={152}>
        Enter
      </Label>
    </Drawing>
  );
}
