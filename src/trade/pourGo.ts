import type { Published } from "./published.ts";

const judgement = (why: string): string => `judgement: ${why}`;

/** When a go may be given, and how long a go, a tick and a reading hold, min. */
export const pourGo = {
  /** A go opens this long before the planned pour. */
  opensMin: {
    value: 60,
    basis: "judgement",
    source: judgement("kiln, melt and people are in place within the last hour"),
  },
  /** A go given this long ago is asked again. */
  holdsMin: { value: 60, basis: "judgement", source: judgement("as long as it is open before the pour") },
  /** Past the planned pour by this, with no shell out, the plan no longer tells what is. */
  lateMin: {
    value: 30,
    basis: "judgement",
    source: judgement("a dressed crew and skimmed metal keep about as long"),
  },
  /** A kiln or metal reading, and a tick by hand in its stead. */
  heatMin: {
    value: 30,
    basis: "judgement",
    source: judgement("a kiln or a melt can move 100 K in half an hour"),
  },
  /** Ingot mould and tools, ticked as hot and dry. */
  hotToolsMin: {
    value: 60,
    basis: "judgement",
    source: judgement("they stay on the heat; damp comes back once they cool"),
  },
  /** People, gear, path, and what is looked at once on the day. */
  peopleMin: { value: 120, basis: "judgement", source: judgement("people come and go, and floors get wet") },
  /** The look over the shell, which is done cold, before its preheat. */
  shellLookMin: {
    value: 720,
    basis: "judgement",
    source: judgement("looked over cold on the same day; nothing moves it in the kiln"),
  },
  /** A shell heat that was logged this long ago still says that its preheat has begun. */
  preheatBegunMin: {
    value: 120,
    basis: "judgement",
    source: judgement("a shell out of the heat is cold by then"),
  },
  /** A reading this far under the heat that was planned counts as at it, K. */
  nearHeatK: { value: 15, basis: "judgement", source: judgement("swing of a controller and its sensor") },
} as const satisfies Record<string, Published>;
