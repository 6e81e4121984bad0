/** A line of the shop's own stream as far as it is looked at to tell whether it is the demo's. */
type ShopLine = {
  readonly id: string;
  readonly body?: unknown;
};

/** True for the id of a thing of the demo. */
export const isDemoId = (id: string): boolean => id.startsWith("demo-");

/** By these a line of the shop names a thing; a thing of the demo has an id that starts with `demo-`. */
const nameFields = [
  "cupId",
  "materialId",
  "bucketId",
  "kilnId",
  "furnaceId",
  "alloyId",
  "copiedFrom",
  "pieceId",
];

/**
 * The ids of all lines of the shop's stream that go with the demo: those that name one of its things or judge one of its
 * coats, and strikes of any of them. `own` are the ids of everything in the demo's own streams.
 */
export function demoLinesOf(lines: readonly ShopLine[], own: ReadonlySet<string>): ReadonlySet<string> {
  const gone = new Set(lines.filter(({ body }) => isDemoThing(body, own)).map(({ id }) => id));
  // A strike may be struck in its turn, so it is gone through until nothing more is found.
  for (let before = -1; gone.size > before;) {
    before = gone.size;
    for (const { id, body } of lines) if (gone.has(textIn(body, "struckId"))) gone.add(id);
  }
  return gone;
}

/** True for a body that names a thing of the demo, or speaks of one of its coats. */
export const isDemoThing = (body: unknown, own: ReadonlySet<string>): boolean =>
  nameFields.some((field) => isDemoId(textIn(body, field))) || own.has(textIn(body, "coatId"));

function textIn(body: unknown, field: string): string {
  if (typeof body !== "object" || body === null || !Object.hasOwn(body, field)) return "";
  const value = (body as Readonly<Record<string, unknown>>)[field];
  return typeof value === "string" ? value : "";
}
