import { sentence } from "./sentence.ts";
import type { CrackState } from "../../../logbook/piece/crackStates.ts";
import { crackTexts as t, stateTexts, kindTexts } from "../words/crackTexts.ts";
import { counts } from "../words/counts.ts";

const stateWords: Readonly<Record<CrackState["state"], string>> = stateTexts;

const kindWords: Readonly<Record<CrackState["crack"]["kind"], string>> = kindTexts;

/** Its state alone: "repaired, not yet dry". A coat over a patch answers for it, so that is what is said. */
export const crackStateWords = ({ state, by, isTrimmedOff }: CrackState): string => {
  const words =
    by === "coat"
      ? t["crackState.patchedACoatOver"]
      : by === "fire"
        ? t["crackState.patchedDriedByFire"]
        : stateWords[state];
  return isTrimmedOff ? t["crackState.wordsInAPart"]({ words }) : words;
};

/** "Hairline crack, left ear: repaired, not yet dry". */
export const crackLine = (state: CrackState): string => {
  const kind = kindWords[state.crack.kind];
  const place = state.crack.where.trim() === "" ? "" : `, ${state.crack.where}`;
  return `${sentence(kind)}${place}: ${crackStateWords(state)}`;
};

const order = ["open", "patch-wet", "patch-dry"] as const;

/** How many, each as `crackStateWords` says it: "1 crack, repaired, not yet dry"; "3 cracks: 1 open; 2 repaired, dry". */
export function cracksWords(states: readonly CrackState[]): string {
  if (states.length === 0) return t["cracks.noCrack"];
  const groups = new Map<string, number>();
  for (const one of order.flatMap((state) => states.filter((crack) => crack.state === state))) {
    const words = crackStateWords(one);
    groups.set(words, (groups.get(words) ?? 0) + 1);
  }
  const [first] = groups.keys();
  const all = counts.cracks(states.length);
  return groups.size === 1 && first !== undefined
    ? `${all}, ${first}`
    : `${all}: ${[...groups].map(([words, count]) => `${count} ${words}`).join("; ")}`;
}
