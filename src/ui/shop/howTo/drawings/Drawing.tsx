import { createContext, useContext, useId, type ReactNode } from "react";
import { grainPath } from "../../../base/charts/wallShape.ts";
import css from "./drawing.module.css";

const tilePx = 48;
/** Grains of stucco as in the wall drawings, one tile of them. */
const grains = grainPath({
  seed: 4711,
  leftPx: 2,
  widthPx: tilePx - 4,
  topPx: 2,
  heightPx: tilePx - 4,
  finePx: 2.5,
  coarsePx: 6,
});

const Fills = createContext("");

/** A picture of work by hand, 360 by `height`, with the two fills that stand for what is cut through. */
export function Drawing({
  says,
  height,
  children,
}: {
  readonly says: string;
  readonly height: number;
  readonly children: ReactNode;
}) {
  const id = useId();
  return (
    <svg className={css["svg"]} viewBox={`0 0 360 ${height}`} role="img" aria-label={says}>
      <defs>
        <pattern id={`${id}-shell`} width={tilePx} height={tilePx} patternUnits="userSpaceOnUse">
          <rect className={css["wall"]} width={tilePx} height={tilePx} />
          <path className={css["grains"]} d={grains} />
        </pattern>
        <pattern id={`${id}-solid`} width="7" height="7" patternUnits="userSpaceOnUse">
          <path className={css["hatch"]} d="M-1 8L8 -1M-1 1L1 -1M6 8L8 6" />
        </pattern>
      </defs>
      <Fills value={id}>{children}</Fills>
    </svg>
  );
}

/** Shell in section: stucco and slurry, its rough face drawn. */
export function Shell({ d }: { readonly d: string }) {
  const id = useContext(Fills);
  return (
    <>
      <path d={d} fill={`url(#${id}-shell)`} />
      <path className={css["edge"]} d={d} />
    </>
  );
}

/** Anything else in section: hatched as a draughtsman hatches it. */
export function Cut({ d }: { readonly d: string }) {
  const id = useContext(Fills);
  return <path className={css["cut"]} d={d} fill={`url(#${id}-solid)`} />;
}

/** A label, at the right end of `x` where it is told so. */
export function Label(props: {
  readonly x: number;
  readonly y: number;
  readonly end?: boolean;
  readonly middle?: boolean;
  readonly children: ReactNode;
}) {
  const { x, y, end = false, middle = false, children } = props;
  return (
    <text x={x} y={y} textAnchor={middle ? "middle" : end ? "end" : "start"}>
      {children}
    </text>
  );
}
