import type { BodyFault } from "../entries/bodyFaults.ts";
import type { Entry, EntryBodies, EntryType, StreamKind } from "../entries/entry.ts";
import type { Phase } from "../piece/piece.ts";

/** What a person asks of the log. `at` is left out for "now"; it may lie in the past, never in the future. */
export type Command =
  { readonly [T in EntryType]: LogCommand<T> }[EntryType] | StrikeCommand | CorrectCommand;

export type LogCommand<T extends EntryType> = {
  readonly do: "log";
  readonly stream: string;
  readonly type: T;
  readonly body: EntryBodies[T];
  readonly at?: number | undefined;
};
export type StrikeCommand = {
  readonly do: "strike";
  readonly stream: string;
  readonly entryId: string;
  readonly reason: string;
};
/** Strikes an entry and writes the right one in the same transaction; what is not given stays as it was. */
export type CorrectCommand = {
  readonly do: "correct";
  readonly stream: string;
  readonly entryId: string;
  readonly at?: number | undefined;
  readonly body?: EntryBodies[EntryType] | undefined;
  readonly reason: string;
};

/** Why a command was not done, with what was found and what was expected. The page makes the sentence. */
export type Refusal =
  | BodyFault
  | { readonly code: "no-such-stream"; readonly stream: string }
  | { readonly code: "already-started"; readonly stream: string }
  | {
      readonly code: "already-logged";
      readonly entryId: string;
      readonly at: number;
      readonly number: number;
    }
  | { readonly code: "coat-out-of-turn"; readonly found: number; readonly expected: number }
  | { readonly code: "wrong-phase"; readonly phase: Phase; readonly allowed: readonly Phase[] }
  | { readonly code: "in-future"; readonly at: number; readonly now: number }
  | { readonly code: "before-start"; readonly at: number; readonly startedAt: number }
  /** The time would put it before what it follows, or after what follows it; null where that side is open. */
  | {
      readonly code: "out-of-order";
      readonly at: number;
      readonly after: number | null;
      readonly before: number | null;
    }
  /** A start can't be struck while other entries stand on it. */
  | {
      readonly code: "start-carries-entries";
      readonly kind: StreamKind;
      readonly entryId: string;
      readonly count: number;
    }
  /** A run or a melt that was planned but never started. */
  | { readonly code: "not-started" }
  | { readonly code: "already-ended"; readonly endedAt: number }
  | { readonly code: "no-such-step"; readonly step: string }
  | { readonly code: "not-found"; readonly entryId: string }
  | { readonly code: "already-struck"; readonly entryId: string }
  | { readonly code: "not-replaceable"; readonly entryId: string };

/** What a command comes to: entries to append in the same transaction, or why not. */
export type Decision =
  | { readonly ok: true; readonly entries: readonly Entry[] }
  | { readonly ok: false; readonly refusal: Refusal };

/** What a decision needs of the world; nothing here is read from a clock inside the core. */
export type Moment = {
  readonly now: number;
  readonly zone: string;
  readonly device: string;
  readonly newId: () => string;
};
