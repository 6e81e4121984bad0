import type { BurnoutMaterial } from "../../trade/patternBurnout.ts";
import type { StuccoFamily } from "../../trade/shellThermal.ts";

export type RunPurpose = "burnout" | "firing" | "preheat";

/** One step of a kiln's plan. `reason` names the limit that set its slope or its length. */
export type RunSegment =
  | {
      readonly kind: "ramp";
      readonly toC: number;
      readonly rateKPerH: number;
      readonly reason?: string | undefined;
    }
  | {
      readonly kind: "hold";
      readonly atC: number;
      readonly minutes: number;
      readonly reason?: string | undefined;
    }
  | {
      readonly kind: "instruction";
      readonly code: string;
      readonly minutes?: number | undefined;
      readonly text?: string | undefined;
    };

/**
 * What a run was planned for: all that its limits rest on, of the pieces together. It is written with the plan, so that
 * a run keeps its limits whatever is logged later.
 */
export type RunBasis = {
  readonly route: "flash" | "staged";
  /** What is still inside the shells; null for nothing. */
  readonly pattern: { readonly material: BurnoutMaterial; readonly massKg: number } | null;
  /**
   * Where wax goes that melts in the kiln: through a hole in the floor, onto a tray that is taken out, or nowhere (all
   * of it burns inside). Left out in plans made before this was asked, and for patterns that are not wax.
   */
  readonly waxLeaves?: "floor" | "tray" | "no" | undefined;
  /** The wax is out already and only its film is inside. */
  readonly isFilm?: boolean | undefined;
  /** The thickest wall of all. */
  readonly wallMm: number;
  readonly family: StuccoFamily;
  readonly shellKg: number;
  readonly damp: "dry" | "damp" | "patched-wet";
  readonly firedBefore: boolean;
  readonly seenAbove1100: boolean;
  readonly blindMm: number;
  readonly kiln: {
    readonly powerKW: number;
    readonly maxC: number;
    readonly volumeL: number;
    readonly maxRateKPerH?: number | undefined;
  };
  readonly after: "inspect" | "pour";
  readonly preheatC: number | null;
  readonly fireC: number | null;
};

/** `run-logged` holds the readings of a logger packed: whole seconds after the entry’s own time, and the value of each. */
export type RunBodies = {
  readonly "run-planned": {
    readonly kilnId: string | null;
    readonly purpose: RunPurpose;
    readonly pieceIds: readonly string[];
    readonly startC: number;
    readonly segments: readonly RunSegment[];
    /** Left out where nobody said what the plan is for: then only its time can be judged. */
    readonly basis?: RunBasis | undefined;
    readonly note?: string | undefined;
  };
  readonly "run-changed": { readonly segments: readonly RunSegment[]; readonly note?: string | undefined };
  readonly "run-started": { readonly kilnC: number | null };
  readonly "run-read": { readonly kilnC: number };
  readonly "run-logged": {
    readonly source: string;
    readonly afterS: readonly number[];
    readonly kilnC: readonly number[];
  };
  /** An instruction of the plan that was carried out, by its place in the segments. */
  readonly "run-step-done": { readonly segment: number; readonly note?: string | undefined };
  /** Stopped before it was started: the plan was put away. */
  readonly "run-ended": {
    readonly result: "done" | "stopped";
    readonly energyKWh?: number | undefined;
    readonly fuelKg?: number | undefined;
    readonly note?: string | undefined;
  };
};

export type ChargeItem = {
  readonly name: string;
  readonly massKg: number;
  /** Null for scrap of unknown make. */
  readonly alloyId: string | null;
};

export type MeltBodies = {
  readonly "melt-planned": {
    readonly furnaceId: string | null;
    readonly alloyId: string;
    readonly pieceIds: readonly string[];
    readonly items: readonly ChargeItem[];
    readonly pourC: number;
    /** What the charge may hold, as calculated from what was weighed in; fractions. Absent in older logs. */
    readonly mayHold?: readonly ElementShare[] | undefined;
    readonly note?: string | undefined;
  };
  /** `hotFurnace`: the lining was still hot from the melt before. `weighedKg`: the charge on the scale; left out where it was not weighed. */
  readonly "melt-started": { readonly hotFurnace: boolean; readonly weighedKg?: number | undefined };
  readonly "melt-read": { readonly metalC: number };
  readonly "melt-ended": {
    readonly pouredKg: number;
    readonly piggedKg: number;
    /** The plan was put away before the fire was lit: nothing was poured, nothing pigged. */
    readonly dropped?: boolean | undefined;
    readonly energyKWh?: number | undefined;
    readonly fuelKg?: number | undefined;
    readonly note?: string | undefined;
  };
};

/** An element and the least and most of it, fractions. */
export type ElementShare = { readonly element: string; readonly low: number; readonly high: number };

export type PourTrack = "shell" | "sand" | "tools" | "metal" | "people";

export type PourStep = {
  readonly id: string;
  readonly track: PourTrack;
  readonly minutes: number;
  /** How long its result keeps; null when it keeps as long as one likes. */
  readonly keepsMin: number | null;
};

/** What a person told for a pour that no other log has: a plan keeps it, so that every device reckons alike. */
export type PourTold = {
  /** Most of the walls. */
  readonly family: StuccoFamily;
  readonly people: number;
  /** From the kiln's door to metal. */
  readonly carryMin: number;
  /** Melted metal at hand where no melt is named; null where nobody said. */
  readonly metalKg: number | null;
  /** Thinnest section of each shell, in the order of the plan's pieces; null where nobody said. */
  readonly thinnestMm: readonly (number | null)[];
};

/** What a go was given on. A go holds only while all of it stands; see `rules/pourGo.ts`. */
export type GoBound = {
  readonly pourAt: number;
  readonly pieceIds: readonly string[];
  readonly shellC: number;
  readonly metalC: number;
  readonly alloyId: string | null;
  readonly meltId: string | null;
  /** Stop warnings of the pieces that were there and were passed with a reason. */
  readonly holds: readonly {
    readonly pieceId: string;
    readonly rule: string;
    readonly variant: string;
    readonly entries: readonly string[];
  }[];
  /** Lines that were not OK and were passed with a reason, each with the codes of what stood against it. */
  readonly open: readonly { readonly item: string; readonly why: readonly string[] }[];
  /** Ticks by hand it rested on, by their entries. */
  readonly ticks: readonly string[];
};

export type PourBodies = {
  readonly "pour-planned": {
    readonly pourAt: number;
    /** In the order they are to be poured. */
    readonly pieceIds: readonly string[];
    readonly runId?: string | undefined;
    readonly meltId?: string | undefined;
    readonly bed: "air" | "cold-sand" | "hot-sand";
    readonly sandC?: number | undefined;
    readonly shellC: number;
    readonly metalC: number;
    readonly steps: readonly PourStep[];
    /** Left out where nobody said anything: then the starting values hold. */
    readonly told?: PourTold | undefined;
    readonly note?: string | undefined;
  };
  readonly "pour-step-marked": { readonly step: string; readonly state: "started" | "done" };
  readonly "pour-item-checked": {
    readonly item: string;
    readonly ok: boolean;
    readonly note?: string | undefined;
  };
  readonly "pour-decided": {
    readonly go: boolean;
    readonly name: string;
    readonly passed: readonly { readonly item: string; readonly reason: string }[];
    /** Left out for a no-go, and where an older program wrote it. */
    readonly bound?: GoBound | undefined;
  };
  /** Dropped: the plan was put away before any shell was poured. */
  readonly "pour-ended": { readonly dropped?: boolean | undefined; readonly note?: string | undefined };
};
