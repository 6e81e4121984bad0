import type { StreamKind } from "../logbook/entry.ts";
import type { ProjectionRow, RowOf, Shelf } from "./projection.ts";
import type { ShopDb } from "./shopDb.ts";

const everywhere: readonly Shelf[] = ["work", "done", "archived"];

/** The states of a kind that lie on these shelves, shelf after shelf. */
export async function statesOf<K extends StreamKind>(
  db: ShopDb,
  kind: K,
  shelves: readonly Shelf[] = everywhere,
): Promise<readonly RowOf<K>["state"][]> {
  // A question a shelf: one for several would go through the rows by cursor, one at a time.
  const lying = await Promise.all(
    shelves.map((shelf) => db.projections.where("[kind+shelf]").equals([kind, shelf]).toArray()),
  );
  return lying.flat().flatMap((row) => (isKind(row, kind) ? [row.state] : []));
}

const isKind = <K extends StreamKind>(row: ProjectionRow, kind: K): row is ProjectionRow & RowOf<K> =>
  row.kind === kind;
