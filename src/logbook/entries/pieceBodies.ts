import type { CoatKind } from "../../trade/coats.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import type { PatternMaterial } from "../../trade/patternMaterials.ts";

export type WallPart =
  | { readonly kind: "flat"; readonly widthMm: number; readonly lengthMm: number }
  | { readonly kind: "round"; readonly diameterMm: number };

/** What is known of a piece beyond its name. A key that is absent is not known; null in a change clears it. */
export type PiecePlan = {
  readonly name: string;
  readonly material?: PatternMaterial | undefined;
  readonly alloyId?: string | undefined;
  readonly metalKg?: number | undefined;
  readonly metalLitre?: number | undefined;
  readonly headM?: number | undefined;
  readonly part?: WallPart | undefined;
  readonly areaM2?: number | undefined;
  readonly recipeId?: string | undefined;
  readonly geometry?: GeometryClass | undefined;
  /** Further places that dry more slowly than the body of the piece; the slowest decides the final dry. */
  readonly pockets?: readonly GeometryClass[] | undefined;
  /** The mesh the piece was begun from, by the hash of its file. */
  readonly patternId?: string | undefined;
  readonly note?: string | undefined;
};
export type PlanChanges = { readonly [K in keyof PiecePlan]?: PiecePlan[K] | null };

/** What the maker was told and accepted with the same tap: a coat over one that was not dry. */
export type AcceptedDamp = {
  readonly coatId: string;
  /** Water still to go, as a share of what had to go, 0–1; null when it could not be reckoned. */
  readonly leftShare: number | null;
};

export type CrackKind = "hairline" | "open" | "chip" | "lift";
export type CrackStage = "coating" | "burnout" | "firing" | "other";

/** Where in the life of a shell the procedure stops until someone has looked. */
export type HoldPoint = "prime-coverage" | "after-second-coat" | "mid-shell" | "before-seal" | "cup-rim";

/** What was measured on the mesh, with the version of the sums that measured it. */
export type PatternMeasured = {
  readonly patternId: string;
  readonly fileName: string;
  readonly sumsVersion: number;
  readonly triangles: number;
  readonly watertight: boolean;
  /** Millimetres for one unit of the file, the shrink or fit scale included. */
  readonly mmPerUnit: number;
  /** Null on an open mesh: the range stands instead. */
  readonly volumeMm3: number | null;
  readonly volumeLowMm3?: number | undefined;
  readonly volumeHighMm3?: number | undefined;
  readonly areaMm2: number;
  readonly boxMm: readonly [number, number, number];
  /** Which way is up when metal goes in, a unit vector in the file's axes. */
  readonly up: readonly [number, number, number];
  readonly headM: number | null;
  readonly tips: number;
  readonly vents: number;
  readonly drains: number;
  readonly trappedMl: number | null;
  readonly gatingMm3: number | null;
  readonly thinnestMm: number | null;
  readonly thickestMm: number | null;
  readonly photos?: readonly string[] | undefined;
};

/** How wax leaves a shell. `staged` is melting it out in the kiln from cold. */
export type DewaxWay = "flash" | "steam" | "hot-water" | "staged";
/** What an eye or a lamp saw in the shell. */
export type ShellInside = "clean" | "residue";

export type PieceBodies = {
  readonly "piece-started": { readonly plan: PiecePlan; readonly roomId: string };
  readonly "piece-changed": { readonly changes: PlanChanges };
  readonly "piece-moved": { readonly roomId: string };
  readonly "pattern-measured": PatternMeasured;
  readonly "coat-dipped": {
    /** 1 for the first coat on the piece, counting every coat that stands. */
    readonly number: number;
    /** Place in the recipe, 0-based; null for a coat beyond or beside the recipe. */
    readonly step: number | null;
    readonly kind: CoatKind;
    readonly stuccoId: string | null;
    readonly bucketId: string | null;
    readonly roomId: string;
    readonly prewet: boolean;
    readonly drainS?: number | undefined;
    readonly dipId?: string | undefined;
    readonly acceptedDamp?: AcceptedDamp | undefined;
    readonly note?: string | undefined;
    readonly photos?: readonly string[] | undefined;
  };
  /** A second dip of the coat that is outermost: more water, no new layer. */
  readonly "coat-redipped": { readonly coatId: string; readonly note?: string | undefined };
  readonly "coat-skipped": { readonly step: number; readonly reason: string };
  /** Put on the balance before a dip: the bare pattern, or the shell as it hangs dry. */
  readonly "piece-weighed": { readonly massG: number; readonly note?: string | undefined };
  readonly "dryness-seen":
    | { readonly method: "touch"; readonly verdict: "dry" | "damp" | "wet"; readonly coatId: string }
    | { readonly method: "colour"; readonly verdict: "dry" | "damp" | "wet"; readonly coatId: string }
    | {
        readonly method: "weight";
        readonly massG: number;
        readonly coatId: string;
        /** Just drained of slurry, just stuccoed, or while it dries; left out: while it dries. */
        readonly moment?: "drained" | "stuccoed" | "drying" | undefined;
        /** The scale's step, g; left out: by the digits of the weights. */
        readonly scaleG?: number | undefined;
      }
    | {
        readonly method: "surface";
        readonly surfaceC: number;
        readonly coatId: string;
        /** The same thermometer on a dry shell hanging beside it. */
        readonly dryShellC?: number | undefined;
        /** Where it was read; left out: on the outer face. */
        readonly place?: GeometryClass | undefined;
      }
    | {
        readonly method: "resistance";
        readonly ohm: number;
        readonly coatId: string;
        /** True for the reading just after the coat set, against which later ones are taken. */
        readonly reference?: boolean | undefined;
        readonly shellC?: number | undefined;
        /** Where the contacts sit; left out: on the outer face. */
        readonly place?: GeometryClass | undefined;
      }
    | {
        readonly method: "bag";
        /** Humidity closed in with the shell, 0–1, and the room's beside it. */
        readonly rh: number;
        readonly roomRh: number;
        readonly minutes: number;
        readonly coatId: string;
      };
  readonly "hold-passed": { readonly point: HoldPoint; readonly name?: string | undefined };
  readonly "wall-measured": { readonly wallMm: number; readonly where?: string | undefined };
  readonly "crack-found": {
    readonly kind: CrackKind;
    readonly stage: CrackStage;
    readonly where: string;
    readonly photos?: readonly string[] | undefined;
    /** The run it was found in. */
    readonly runId?: string | undefined;
    /** True when it lies in what is trimmed away before metal goes in, such as the rim of the cup. */
    readonly trimmedOff?: boolean | undefined;
  };
  readonly "crack-patched": { readonly crackId: string; readonly how: string };
  readonly "wire-wrapped": { readonly note: string };
  readonly "review-signed": {
    readonly name: string;
    readonly verdict: "hold" | "watch" | "clear";
    /** Rules at hold that were passed, each with the written reason. */
    readonly passed: readonly { readonly rule: string; readonly reason: string }[];
    readonly safety: number | null;
  };
  readonly "burnout-started": { readonly note?: string | undefined; readonly runId?: string | undefined };
  readonly "burnout-read": { readonly kilnC: number; readonly note?: string | undefined };
  readonly "burnout-ended": {
    readonly result: "clean" | "residue" | "stopped";
    readonly note?: string | undefined;
  };
  /** The pattern was melted out; a film of it stays until fire has burnt it. */
  readonly dewaxed: {
    readonly way: DewaxWay;
    /** Null where nobody looked at the clock. */
    readonly minutes: number | null;
    /** What ran out, on the balance. */
    readonly waxBackG?: number | undefined;
    /** Water was poured through the shell afterwards. */
    readonly rinsed?: boolean | undefined;
    readonly note?: string | undefined;
    readonly runId?: string | undefined;
  };
  /** Water went through the shell: ash rinsed out, or wax. */
  readonly "shell-rinsed": { readonly note?: string | undefined };
  /** Someone looked into the shell. */
  readonly "shell-inspected": {
    readonly inside: ShellInside;
    readonly note?: string | undefined;
    readonly photos?: readonly string[] | undefined;
  };
  readonly "shell-fired": {
    readonly peakC: number;
    readonly holdMin: number;
    /** Left out where nobody looked in. */
    readonly inside?: ShellInside | undefined;
    readonly runId?: string | undefined;
  };
  readonly "shell-preheated": {
    readonly shellC: number;
    /** How long it has stood there; left out where nobody said. */
    readonly heldMin?: number | undefined;
    readonly runId?: string | undefined;
    readonly note?: string | undefined;
  };
  readonly "shell-out-of-kiln": { readonly shellC: number | null; readonly pourId?: string | undefined };
  readonly "pour-begun": { readonly metalC: number | null; readonly pourId?: string | undefined };
  /** The shell is full. */
  readonly "metal-poured": {
    readonly metalC: number | null;
    readonly shellC: number | null;
    readonly massKg: number | null;
    /** Minutes from leaving the kiln to metal. */
    readonly outOfKilnMin: number | null;
    readonly note?: string | undefined;
    readonly pourId?: string | undefined;
  };
  readonly "shell-knocked-out": { readonly note?: string | undefined };
  readonly "piece-finished": { readonly note: string };
  readonly "outcome-told": {
    readonly result: "sound" | "flawed" | "lost";
    readonly defects: readonly string[];
    readonly note?: string | undefined;
    readonly photos?: readonly string[] | undefined;
  };
  readonly "piece-scrapped": { readonly reason: string };
  readonly "piece-archived": { readonly archived: boolean };
  readonly "note-written": { readonly text: string; readonly photos?: readonly string[] | undefined };
};
