import { airRows } from "./airRows.ts";
import { beliefRows } from "./beliefRows.ts";
import { dryingRows } from "./dryingRows.ts";
import { firingRows } from "./firingRows.ts";
import { gatingRows } from "./gatingRows.ts";
import { heatRows } from "./heatRows.ts";
import { metalRows } from "./metalRows.ts";
import type { Rows } from "./numberRow.ts";
import { slurryRows } from "./slurryRows.ts";

/** Every function of the sums with one call that makes sense. */
export const allRows: Rows = {
  ...airRows,
  ...beliefRows,
  ...dryingRows,
  ...firingRows,
  ...gatingRows,
  ...heatRows,
  ...metalRows,
  ...slurryRows,
};
