import { z } from "zod";
import type { Entry, EntryType } from "../logbook/entries/entry.ts";
import { kindOfType } from "../logbook/entries/entryKinds.ts";
import { liftEntry, schemaVersion } from "../logbook/entries/lifts.ts";
import { bodySchemas } from "../logbook/entries/allBodies.ts";

/** Where an entry fails and what was expected there; `found` is short and never the whole value. */
export type ParseFault = {
  readonly code: "malformed" | "newer-version";
  /** Path of the field, such as `body.rh`; empty when the entry as a whole is wrong. */
  readonly field: string;
  readonly expected: string;
  readonly found: string;
  /** For text or a number outside its limits: the length or value found, and the limits. */
  readonly limits?: { readonly found: number; readonly low: number; readonly high: number } | undefined;
};
export type Parsed =
  { readonly ok: true; readonly entry: Entry } | { readonly ok: false; readonly fault: ParseFault };

const latestMs = Date.UTC(2200, 0, 1);
const time = z.int().min(0).max(latestMs);
const id = z.string().min(1).max(64);

/** What every stored row has whatever its version: enough to index it, order it and keep it. */
export const envelopeSchema = z.looseObject({
  id,
  stream: z.string().regex(/^(piece|room|bucket|recipe|shop|run|melt|pour)\/[A-Za-z0-9_.:-]{1,64}$/),
  type: z.string().min(1).max(64),
  at: time,
  recordedAt: time,
  version: z.int().min(1),
});

const act = z.strictObject({ id, lines: z.array(id).min(1).max(10_000).optional() });

const schemaOf = <T extends EntryType>(type: T) =>
  z.strictObject({
    ...envelopeSchema.shape,
    type: z.literal(type),
    zone: z.string().max(100),
    device: z.string().max(64),
    act: act.optional(),
    body: bodySchemas[type],
  });
const schemas = new Map<string, z.ZodType>(
  Object.keys(bodySchemas).map((type) => [type, schemaOf(type as EntryType)]),
);

/**
 * A stored or imported value as an entry: lifted to today's schema, then checked. Never throws. The value itself is
 * not changed; what the log keeps is what was first written.
 */
export function parseEntry(stored: unknown): Parsed {
  if (typeof stored !== "object" || stored === null || Array.isArray(stored))
    return fault({ field: "", expected: "an entry", found: shown(stored) });
  if ("version" in stored && typeof stored.version === "number" && stored.version > schemaVersion)
    return fault({
      code: "newer-version",
      field: "version",
      expected: `at most ${schemaVersion}`,
      found: String(stored.version),
    });
  let lifted: unknown;
  try {
    lifted = liftEntry(stored);
  } catch {
    return fault({ field: "", expected: "an entry of a known version", found: "one that can't be lifted" });
  }
  const type = at(lifted, "type");
  const schema = typeof type === "string" ? schemas.get(type) : undefined;
  if (schema === undefined) return fault({ field: "type", expected: "a known type", found: shown(type) });
  const parsed = schema.safeParse(lifted);
  if (!parsed.success) return issueFault(parsed.error.issues, lifted);
  const entry = parsed.data as Entry;
  const kind = kindOfType[entry.type];
  if (kind !== "any" && !entry.stream.startsWith(`${kind}/`))
    return fault({ field: "stream", expected: `a ${kind}`, found: shown(entry.stream) });
  return { ok: true, entry };
}

function issueFault(issues: readonly z.core.$ZodIssue[], value: unknown): Parsed {
  const issue = issues[0];
  if (issue === undefined) return fault({ field: "", expected: "an entry", found: "something else" });
  const found = issue.path.reduce<unknown>(at, value);
  const field = issue.path.join(".");
  if (issue.code === "unrecognized_keys")
    return fault({ field, expected: "no other fields", found: shown(issue.keys[0]) });
  if (issue.code === "too_big" || issue.code === "too_small") {
    const limit = Number(issue.code === "too_big" ? issue.maximum : issue.minimum);
    const isMost = issue.code === "too_big";
    const size = typeof found === "number" ? found : lengthOf(found);
    return fault({
      field,
      expected: `${isMost ? "at most" : "at least"} ${limit}`,
      found: String(size),
      limits: { found: size, low: isMost ? 0 : limit, high: isMost ? limit : Infinity },
    });
  }
  return fault({
    field,
    expected: issue.message.replace(/^Invalid (input|option): expected /, ""),
    found: shown(found),
  });
}

const fault = (f: Omit<ParseFault, "code"> & { readonly code?: ParseFault["code"] }): Parsed => ({
  ok: false,
  fault: { code: "malformed", ...f },
});

const at = (value: unknown, key: PropertyKey): unknown =>
  typeof value === "object" && value !== null && Object.hasOwn(value, key)
    ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
    : undefined;

const lengthOf = (value: unknown): number =>
  typeof value === "string" || Array.isArray(value) ? value.length : 0;

/** A found value in at most 60 characters, for a message. */
export function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "object" && value !== null) return Array.isArray(value) ? "a list" : "an object";
  const text = JSON.stringify(value) ?? typeof value;
  return text.length > 60 ? `${text.slice(0, 59)}…` : text;
}
