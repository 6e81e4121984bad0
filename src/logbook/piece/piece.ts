import type { CoatKind } from "../../trade/coats.ts";
import type { FinalDryPlace } from "../../trade/dryMinimums.ts";
import type { EntryBodies } from "../entries/entry.ts";
import type { OwnBucketLimits } from "../entries/bucketLimitRules.ts";
import type { BucketTargets, BucketUse } from "../entries/bucketBodies.ts";
import type {
  AcceptedDamp,
  CrackKind,
  CrackStage,
  HoldPoint,
  PatternMeasured,
  PiecePlan,
  SaidOfBeneath,
} from "../entries/pieceBodies.ts";
import type { DewaxWay, ShellInside } from "../entries/shellFireBodies.ts";
import type {
  Cup,
  Furnace,
  Kiln,
  Material,
  OwnAlloy,
  OwnByKind,
  ShrinkMeasured,
  StockMove,
} from "../shop/shopThings.ts";

/** Where a piece stands in its life. It can go back: a crack in burnout returns it to `coating`. */
export type Phase =
  | "coating"
  | "reviewed"
  | "dewaxed"
  | "burnout"
  | "burnt-out"
  | "fired"
  | "preheated"
  | "poured"
  | "knocked-out"
  | "finished"
  | "scrapped";

export type Coat = {
  readonly id: string;
  readonly number: number;
  readonly step: number | null;
  readonly kind: CoatKind;
  readonly stuccoId: string | null;
  readonly bucketId: string | null;
  readonly roomId: string;
  readonly prewet: boolean;
  /** When the slurry went on. */
  readonly dippedAt: number;
  /** Later dips of the same coat; each adds water. */
  readonly redips: readonly { readonly id: string; readonly at: number }[];
  readonly acceptedDamp: AcceptedDamp | null;
  /** What was said of the coat beneath before this one covered it; left out where its entry keeps nothing of it. */
  readonly said?: SaidOfBeneath | undefined;
  /** Left out for a coat that was logged as it went on; `undated`: when it went on is not known. */
  readonly beforeLog?: EntryBodies["coat-dipped"]["beforeLog"];
  readonly note: string | null;
  readonly photos: readonly string[];
  /** True for a coat put on after a burnout: such a wall has no pattern behind it any more. */
  readonly afterBurnout: boolean;
};

export type DrynessSeen = EntryBodies["dryness-seen"] & { readonly id: string; readonly at: number };
export type Crack = {
  readonly id: string;
  readonly at: number;
  readonly kind: CrackKind;
  readonly stage: CrackStage;
  readonly where: string;
  readonly photos: readonly string[];
  /** True when it was found after a burnout had begun. */
  readonly afterBurnout: boolean;
  readonly patched: { readonly id: string; readonly at: number; readonly how: string } | null;
  /** When the patch was last found dry; left out where it never was. */
  readonly patchDry?: { readonly id: string; readonly at: number } | undefined;
  /** The kiln run it was found in; null when it was found elsewhere, or nobody said. */
  readonly runId: string | null;
  /** True when it lies in what is trimmed away before metal goes in, such as the rim of the cup. */
  readonly trimmedOff?: boolean | undefined;
};

/** A weighing before a dip: the bare pattern while `coats` is 0, else the shell with that many on it. */
export type Weighing = {
  readonly id: string;
  readonly at: number;
  readonly massG: number;
  readonly coats: number;
  readonly note: string | null;
};

/** A piece as its log tells it. Times are epoch ms. */
export type Piece = {
  readonly id: string;
  readonly plan: PiecePlan;
  readonly phase: Phase;
  readonly startedAt: number;
  /** Where it hung and since when, in order; never empty. */
  readonly rooms: readonly { readonly roomId: string; readonly from: number }[];
  readonly coats: readonly Coat[];
  readonly skipped: readonly {
    readonly id: string;
    readonly step: number;
    readonly at: number;
    readonly reason: string;
  }[];
  readonly dryness: readonly DrynessSeen[];
  readonly wall: readonly {
    readonly id: string;
    readonly at: number;
    readonly wallMm: number;
    readonly where: string | null;
    readonly coats: number;
  }[];
  readonly weighings: readonly Weighing[];
  readonly holdsPassed: readonly {
    readonly id: string;
    readonly at: number;
    readonly point: HoldPoint;
    readonly name: string | null;
    readonly coats: number;
  }[];
  /** What was measured on its mesh, the newest last. */
  readonly patterns: readonly (PatternMeasured & { readonly id: string; readonly at: number })[];
  readonly cracks: readonly Crack[];
  readonly wires: readonly { readonly id: string; readonly at: number; readonly note: string }[];
  readonly reviews: readonly (EntryBodies["review-signed"] & {
    readonly id: string;
    readonly at: number;
    readonly coats: number;
  })[];
  readonly burnouts: readonly {
    readonly id: string;
    readonly runId: string | null;
    readonly startedAt: number;
    readonly readings: readonly { readonly id: string; readonly at: number; readonly kilnC: number }[];
    readonly ended: {
      readonly id: string;
      readonly at: number;
      readonly result: "clean" | "residue" | "stopped";
    } | null;
  }[];
  readonly firings: readonly {
    readonly id: string;
    readonly at: number;
    readonly peakC: number;
    readonly holdMin: number;
    readonly inside: ShellInside | null;
    readonly runId: string | null;
  }[];
  readonly dewaxes: readonly {
    readonly id: string;
    readonly at: number;
    readonly way: DewaxWay;
    readonly minutes: number | null;
    readonly waxBackG: number | null;
    readonly rinsed: boolean;
    readonly runId: string | null;
  }[];
  /** Each time water went through the shell. */
  readonly rinses: readonly { readonly id: string; readonly at: number }[];
  /** Each time someone looked into the shell. */
  readonly inspections: readonly {
    readonly id: string;
    readonly at: number;
    readonly inside: ShellInside;
  }[];
  /** Kiln runs it was in, each once, in the order they are first spoken of. */
  readonly runIds: readonly string[];
  readonly preheats: readonly {
    readonly id: string;
    readonly at: number;
    readonly shellC: number;
    readonly heldMin: number | null;
    readonly runId: string | null;
  }[];
  /** Each time it left the kiln for a pour, and each time metal began to run into it. */
  readonly outOfKiln: readonly {
    readonly id: string;
    readonly at: number;
    readonly shellC: number | null;
    readonly pourId: string | null;
  }[];
  readonly pourBegun: readonly {
    readonly id: string;
    readonly at: number;
    readonly metalC: number | null;
    readonly pourId: string | null;
  }[];
  readonly pours: readonly (EntryBodies["metal-poured"] & { readonly id: string; readonly at: number })[];
  readonly outcome: (EntryBodies["outcome-told"] & { readonly id: string; readonly at: number }) | null;
  readonly archived: boolean;
  readonly lastAt: number;
  /** Time zone of the device that wrote its newest line; left out in a state kept from before it was told. */
  readonly zone?: string | undefined;
};

export type Room = {
  readonly id: string;
  readonly name: string;
  readonly altitudeM: number;
  readonly retired: boolean;
  readonly last: AirReading | null;
};
export type AirReading = EntryBodies["air-read"] & { readonly id: string; readonly at: number };

type Dated<T> = T & { readonly id: string; readonly at: number };
export type BucketReading = Dated<EntryBodies["bucket-read"]>;
export type BucketMix = Dated<EntryBodies["bucket-mixed"]>;
export type BucketTop = Dated<EntryBodies["bucket-topped"]>;

/** A bucket as its log tells it; each list oldest first, only what stands. */
export type Bucket = {
  readonly id: string;
  readonly name: string;
  readonly use: BucketUse;
  readonly slurry: string;
  readonly retired: boolean;
  readonly targets: BucketTargets;
  readonly last: BucketReading | null;
  readonly readings: readonly BucketReading[];
  readonly mixes: readonly BucketMix[];
  readonly tops: readonly BucketTop[];
  readonly losses: readonly Dated<EntryBodies["bucket-lost"]>[];
  readonly counts: readonly Dated<EntryBodies["bucket-counted"]>[];
  readonly passes: readonly Dated<EntryBodies["bucket-passed"]>[];
};

export type Recipe = EntryBodies["recipe-set"] & {
  readonly id: string;
  /** True while it is one of the starting recipes, unchanged. */
  readonly starting: boolean;
};

/** What one poured shell bore: the strength it would just have needed, MPa, and whether it held. */
export type ProvenLoad = {
  readonly pieceId: string;
  readonly recipeId: string;
  readonly loadMPa: number;
  readonly held: boolean;
};

/** The shop's own figures and things. A figure is null, or its kind absent, where the starting value still serves. */
export type Shop = {
  readonly dryingFactor: number | null;
  readonly morMPa: number | null;
  /** What its poured shells bore, joined to it where it is read; no line of its log. */
  readonly proven?: readonly ProvenLoad[] | undefined;
  readonly slurryKgM2: OwnByKind;
  readonly stuccoKgM2: OwnByKind;
  readonly buildMm: OwnByKind;
  /** Hours a coat dries at the least, by its kind. Rows folded before there were such figures lack it. */
  readonly leastDryH?: OwnByKind | undefined;
  /** Hours the last coat hangs at the least before fire, by the slowest place. */
  readonly finalDryH?: { readonly [P in FinalDryPlace]?: number | undefined } | undefined;
  /** What its buckets are judged by, and how long they mix; rows folded before there were such figures lack it. */
  readonly bucketLimits?: OwnBucketLimits | undefined;
  /** Coats whose drying the factor is not learned from, each with the reason a person gave. */
  readonly pairsLeftOut: readonly {
    readonly id: string;
    readonly at: number;
    readonly coatId: string;
    readonly reason: string;
  }[];
  /** Things in the order they were first set, retired ones too. */
  readonly cups: readonly Cup[];
  readonly materials: readonly Material[];
  readonly kilns: readonly Kiln[];
  readonly furnaces: readonly Furnace[];
  readonly alloys: readonly OwnAlloy[];
  /** Oldest first. */
  readonly stockMoves: readonly StockMove[];
  readonly shrinks: readonly ShrinkMeasured[];
};
