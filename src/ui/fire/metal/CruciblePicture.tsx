import { useFormat } from "../../base/state/useFormat.ts";
import plot from "../../base/charts/plot.module.css";
import css from "./metal.module.css";

const top = 34;
const foot = 170;
const mid = 120;
const halfTop = 76;
const halfFoot = 50;

/** A crucible in section, filled as far as the melt reaches, with the line it should stay under. */
export function CruciblePicture({ share, limit }: { readonly share: number; readonly limit: number }) {
  const format = useFormat();
  const shown = Math.min(1, share);
  const level = heightOf(shown);
  const limitY = heightOf(limit);
  const half = (y: number): number => halfFoot + ((halfTop - halfFoot) * (foot - y)) / (foot - top);
  return (
    <svg
      className={`${plot["svg"]} ${css["picture"]}`}
      viewBox="0 0 340 186"
      role="img"
      aria-label={`Crucible ${format.show("percent", share)} full; the limit is ${format.show("percent", limit)}`}
    >
      <path
        className={css["shell"]}
        d={`M${mid - halfTop - 10} ${top}L${mid - halfFoot - 8} ${foot + 10}H${mid + halfFoot + 8}L${mid + halfTop + 10} ${top}H${mid + halfTop}L${mid + halfFoot} ${foot}H${mid - halfFoot}L${mid - halfTop} ${top}Z`}
      />
      <path
        className={css["metalFill"]}
        d={`M${mid - half(level)} ${level}L${mid - halfFoot} ${foot}H${mid + halfFoot}L${mid + half(level)} ${level}Z`}
      />
      <path className={css["dashed"]} d={`M${mid - half(limitY) - 14} ${limitY}H218`} />
      <text x={224} y={limitY + 4}>
        limit {format.show("percent", limit)}
      </text>
      <path className={css["line"]} d={`M${mid + half(level)} ${level}H218`} />
      <text
        className={plot["strong"]}
        x={224}
        y={Math.abs(level - limitY) < 16 ? (level > limitY ? limitY + 22 : limitY - 12) : level + 4}
      >
        melt {format.show("percent", share)}
      </text>
      <text x={224} y={top - 8}>
        brim
      </text>
      <path className={css["thin"]} d={`M${mid + halfTop + 12} ${top}H240`} />
    </svg>
  );
}

/** Where a share of the brim volume stands in a cone's frustum. */
function heightOf(share: number): number {
  const volume = (y: number): number => {
    const h = (foot - y) / (foot - top);
    const r = halfFoot + (halfTop - halfFoot) * h;
    return h * (halfFoot * halfFoot + halfFoot * r + r * r);
  };
  let [low, high] = [top, foot];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (volume(middle) > share * volume(top)) low = middle;
    else high = middle;
  }
  return low;
}
