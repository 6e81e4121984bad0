import type { bodiesByKind, bodySchemas } from "./allBodies.ts";
import type { Bodies } from "./bodyParts.ts";

/** One immutable line of the log. `at` is when it happened, `recordedAt` when it was written; both epoch ms. */
export type Entry = { readonly [T in EntryType]: EntryOf<T> }[EntryType];

export type EntryOf<T extends EntryType> = {
  readonly id: string;
  readonly stream: string;
  readonly type: T;
  readonly at: number;
  readonly recordedAt: number;
  /** IANA zone of the device when it wrote the line. */
  readonly zone: string;
  readonly device: string;
  /** Schema version the body was written in; older ones are lifted on read. */
  readonly version: number;
  /** What one tap wrote in several streams carries this; left out of a line that was written alone. */
  readonly act?: ActMark | undefined;
  readonly body: EntryBodies[T];
};

/** Which act a line belongs to: the id of the act's first line, which alone lists all of them, itself the first. */
export type ActMark = { readonly id: string; readonly lines?: readonly string[] | undefined };

export type EntryType = keyof EntryBodies;

export type StreamKind = Exclude<keyof typeof bodiesByKind, "any">;

/** `piece/<id>`, `room/<id>` and so on; the shop has one stream, `shop/own`. */
export const streamOf = (kind: StreamKind, id: string): string => `${kind}/${id}`;
export const shopStream = "shop/own";

/** What each type of entry carries. */
export type EntryBodies = Bodies<typeof bodySchemas>;

/** The order of a log: when it happened, then when it was written, then the id. */
export function compareEntries(
  a: Pick<Entry, "at" | "recordedAt" | "id">,
  b: Pick<Entry, "at" | "recordedAt" | "id">,
): number {
  return a.at - b.at || a.recordedAt - b.recordedAt || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}
