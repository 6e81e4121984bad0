import type { CoatDrying, NoReadyReason } from "../../../logbook/piece/standing.ts";
import { reasonTexts, verdictTexts } from "../words/readyTexts.ts";

const reasonWords: Record<NoReadyReason, string> = reasonTexts;

export const noReadyWords = (reason: NoReadyReason): string => reasonWords[reason];

/** One word of a coat's state and, under it, what the word rests on. */
export const verdictWords: Record<CoatDrying["verdict"], string> = verdictTexts;
