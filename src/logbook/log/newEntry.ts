import type { Moment } from "./command.ts";
import type { ActMark, Entry, EntryBodies, EntryType } from "../entries/entry.ts";
import { schemaVersion } from "../entries/lifts.ts";

/** A line of the log as this device writes it now. */
export function newEntry<T extends EntryType>(
  {
    id,
    stream,
    type,
    body,
    at,
    act,
  }: {
    readonly id?: string | undefined;
    readonly stream: string;
    readonly type: T;
    readonly body: EntryBodies[T];
    readonly at: number;
    readonly act?: ActMark | undefined;
  },
  { now, zone, device, newId }: Moment,
): Entry {
  const entry = {
    id: id ?? newId(),
    stream,
    type,
    at,
    recordedAt: now,
    zone,
    device,
    version: schemaVersion,
    ...(act === undefined ? {} : { act }),
    body,
  };
  // Type and body belong together by the signature; the compiler loses that pairing in the union.
  return entry as unknown as Entry;
}
