/** Why the app can't be shown, with what is known of it. The page makes the sentence (`rescueWords.ts`). */
export type StartProblem =
  /** The browser has no IndexedDB at all, as in some private windows. */
  | { readonly kind: "no-store" }
  /** The browser has one and does not let this page use it. */
  | { readonly kind: "store-refused"; readonly detail: string }
  | { readonly kind: "store-failed"; readonly detail: string }
  /** Neither opened nor refused within the wait. */
  | { readonly kind: "no-answer"; readonly afterS: number }
  | { readonly kind: "older-tab" }
  | { readonly kind: "upgrading"; readonly done: number; readonly of: number | null }
  /** Written by a newer program; `found` and `known` are versions of the store. */
  | { readonly kind: "newer-store"; readonly found: number; readonly known: number }
  /** The store was cleared while the app ran. */
  | { readonly kind: "store-gone" }
  /** The program itself could not be loaded or drawn. */
  | { readonly kind: "app-failed"; readonly detail: string };

/** What a person can do from the plain page. */
export type Offer = "try-again" | "save-backup" | "remake-summaries" | "look-for-update";

/** Thrown by whoever opens the store and finds it newer than the program. */
export class NewerStoreError extends Error {
  readonly found: number;
  readonly known: number;
  constructor({ found, known }: { readonly found: number; readonly known: number }) {
    super(`the store has version ${found}, this program knows ${known}`);
    this.name = "NewerStoreError";
    this.found = found;
    this.known = known;
  }
}

/**
 * What an error at the start says. Names of store errors are those of the IndexedDB standard and of the library that
 * opens it, which wraps them; anything unknown counts as the store's failing while the store is being opened
 * (`from: "store"`), and as the program's after that.
 */
export function problemOf(error: unknown, from: "store" | "app"): StartProblem {
  if (error instanceof NewerStoreError)
    return { kind: "newer-store", found: error.found, known: error.known };
  const detail = error instanceof Error ? error.message : String(error);
  const name = nameOf(error);
  if (name === "MissingAPIError" || name === "NotSupportedError") return { kind: "no-store" };
  if (name === "SecurityError" || name === "InvalidStateError") return { kind: "store-refused", detail };
  return from === "store" ? { kind: "store-failed", detail } : { kind: "app-failed", detail };
}

/** The innermost name: the library gives "OpenFailedError" and keeps the browser's own as `inner`. */
function nameOf(error: unknown): string {
  if (typeof error !== "object" || error === null) return "";
  if ("inner" in error && typeof error.inner === "object" && error.inner !== null) return nameOf(error.inner);
  return "name" in error && typeof error.name === "string" ? error.name : "";
}

const offers: { readonly [K in StartProblem["kind"]]: readonly Offer[] } = {
  "no-store": ["try-again", "look-for-update"],
  "store-refused": ["try-again", "save-backup", "look-for-update"],
  "store-failed": ["try-again", "save-backup", "look-for-update"],
  "no-answer": ["try-again", "save-backup", "look-for-update"],
  "older-tab": ["try-again", "look-for-update"],
  upgrading: [],
  "newer-store": ["look-for-update", "save-backup", "try-again"],
  "store-gone": ["try-again"],
  "app-failed": ["try-again", "remake-summaries", "save-backup", "look-for-update"],
};

/** What helps with a problem, the likeliest first. While an upgrade runs, starting again would only begin it anew. */
export const offersFor = ({ kind }: StartProblem): readonly Offer[] => offers[kind];
