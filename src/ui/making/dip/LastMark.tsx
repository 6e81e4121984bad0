import type { ReactNode } from "react";
import type { LastState } from "./dipWords.ts";

/** How wet the last coat is, as a shape: a full drop, half a drop, a tick, a question. The words stand beside it. */
export function LastMark({ state }: { readonly state: LastState }) {
  const shape = shapes[state];
  if (shape === null) return null;
  return (
    <svg viewBox="0 0 24 24" width="28" height="28" aria-hidden="true" fill="none" stroke="currentColor">
      {shape}
    </svg>
  );
}

const drop = "M12 2.5c4 5 6.5 8.2 6.5 12a6.5 6.5 0 0 1-13 0c0-3.8 2.5-7 6.5-12z";

const shapes: Record<LastState, ReactNode> = {
  first: null,
  dry: <path d="m4.5 13 5 5L20 6.5" strokeWidth="3.2" strokeLinecap="round" strokeLinejoin="round" />,
  maybe: (
    <>
      <path d={drop} strokeWidth="2.2" />
      <path d="M5.5 15h13a6.5 6.5 0 0 1-13 0z" fill="currentColor" stroke="none" />
    </>
  ),
  wet: <path d={drop} fill="currentColor" strokeWidth="2.2" />,
  unknown: (
    <path
      d="M7.5 8.5a4.5 4.5 0 1 1 6.2 4.2c-1.1.5-1.7 1.3-1.7 2.8m0 4v.3"
      strokeWidth="3"
      strokeLinecap="round"
    />
  ),
};
