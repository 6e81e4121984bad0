import type { RunHeat } from "../../../logbook/fire/runHeat.ts";
import type { Format } from "./units.ts";

export type EntryNames = {
  readonly format: Format;
  readonly room: (id: string) => string;
  readonly bucket: (id: string) => string;
  readonly recipe: (id: string) => string;
  /** Its name in this shop, which may have alloys of its own. */
  readonly alloy: (id: string) => string;
  /** How hot a run was by all that is known of it now, beside what was given at its end; left out where no run is known. */
  readonly runHeat?: ((runId: string, given: RunHeat) => RunHeat | null) | undefined;
};
