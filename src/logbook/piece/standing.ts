import type { WallWays } from "../../physics/shell/wallWays.ts";
import type { WallVerdict } from "../../physics/shell/wallVerdict.ts";
import type { ReadySpread } from "../../physics/stats/spread.ts";
import type { AirClass } from "../../trade/airClasses.ts";
import type { RecipeCoat } from "../../trade/coats.ts";
import type { FinalDryPlace } from "../../trade/dryMinimums.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";
import type { SaidOfBeneath } from "../entries/pieceBodies.ts";
import type { SaidThen } from "../drying/said.ts";
import type { Said, Unsaid } from "../drying/coatSaid.ts";
import type { DippedFrom } from "../bucket/dippedFrom.ts";
import type { DryBy } from "../drying/dryEvidence.ts";
import type { Run } from "../fire/fireStates.ts";
import type { WeighToTell } from "../drying/weighToTell.ts";
import type { MetalBar } from "../fire/metalReady.ts";
import type { NextAction } from "./action.ts";
import type { CrackState } from "./crackStates.ts";
import type { WallStrength } from "./wallBasis.ts";
import type { AirReading, Coat, DrynessSeen, Piece, Recipe, Room, Shop } from "./piece.ts";

/** The learned factor a ready time rests on: 90 % interval, the pairs of its own group, and those of the shop. */
export type LearnedBasis = {
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  readonly pairs: number;
  readonly shopPairs: number;
};

/** Sum and observations of a coat as one: what they leave of its water, and what each said. */
export type CoatBelief = {
  /** Water at the time of judgement, kg/m²: one in ten is drier than `low`, one in ten wetter than `high`. */
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Chance that it is ready, 0–1. */
  readonly dryChance: number;
  /** The coat's own factor on time. */
  readonly factor: ReadySpread;
  readonly heard: readonly { readonly seenId: string; readonly at: number; readonly said: Said }[];
  readonly unheard: readonly { readonly seenId: string; readonly at: number; readonly why: Unsaid }[];
  /** Observations that do not go with the rest. */
  readonly conflicts: readonly {
    readonly seenId: string;
    readonly why: "apart" | "widens";
    readonly apart: number;
  }[];
};

/** What measures a coat dry, in place of the hours and the air. */
export type MeasuredDry = Exclude<DryBy, "felt">;

/** `before-log`: the coat was covered before the piece's log began, or dried in air of that time. */
export type NoReadyReason =
  "no-readings" | "air-too-damp" | "condensing" | "frost" | "beyond-forecast" | "before-log";

/** What is known of one coat's drying, up to the next coat or to now. */
export type CoatDrying = {
  readonly coat: Coat;
  readonly targetDryness: number;
  /** Water to go, as a share of what must go, at the next coat or at now: 1 when wet, 0 when dry, null when not known. */
  readonly leftShare: number | null;
  /** The same by the early and the late guess: eight in ten lie between. */
  readonly leftLow?: number | undefined;
  readonly leftHigh?: number | undefined;
  /** What was said of it before the tap that covered it; left out for the outer coat, and where nothing was kept. */
  readonly said?: SaidThen | undefined;
  readonly waterKgM2: number | null;
  /** Water the coat started with, its own and what was carried over from beneath. */
  readonly startKgM2: number;
  /** Water at which it is dry enough for the next coat. */
  readonly readyKgM2: number;
  readonly carriedKgM2: number;
  readonly depthM: number;
  readonly readyAt: {
    readonly early: number | null;
    readonly likely: number | null;
    readonly late: number | null;
  };
  readonly reason: NoReadyReason | null;
  readonly basis: {
    readonly readings: number;
    /** Age of the newest reading used, ms before now (a covered coat: before the next dip); null when there is none. */
    readonly lastReadingAgeMs: number | null;
    readonly longestGapMs: number;
    /** Some of its air was never read: there the sum takes an ordinary room, and the times are wide. */
    readonly assumed: boolean;
    readonly forecast: "repeat-yesterday" | "hold-last" | null;
    /** The factor a person set; it stands before what was learned. */
    readonly ownFactor: number | null;
    readonly learned: LearnedBasis | null;
    readonly air: AirClass | null;
  };
  readonly doseNeededGHM3: number | null;
  readonly doseSuppliedGHM3: number;
  readonly condensed: boolean;
  /**
   * When the coat's wet surface first fell below 1 °C, where a sol freezes, and its coldest, °C; a time to come is the
   * room's forecast. Null where it stayed above, or was dry by then.
   */
  readonly frozen: { readonly at: number; readonly surfaceC: number } | null;
  /**
   * The newest plain word on this coat. "wet" and what was measured dry override the sum; "felt" (a hand found it dry)
   * makes a wet coat a perhaps and no more. `whole`: it speaks for the slowest place of the shell, not only for the
   * place the times are for. Null when only sum and belief speak.
   */
  readonly evidence:
    | { readonly says: "wet"; readonly seen: DrynessSeen }
    | { readonly says: "dry"; readonly seen: DrynessSeen; readonly by: DryBy; readonly whole: boolean }
    | null;
  /** When a weighing can tell of the whole shell; null for a covered coat, and once one has. */
  readonly toTell: WeighToTell | null;
  /** Null while nothing that was seen speaks of its water: then the sum speaks alone. */
  readonly belief: CoatBelief | null;
  /** What the checks but a hand's said where they leave no belief: none could be read, or there is no sum for them. */
  readonly saidAlone: Pick<CoatBelief, "heard" | "unheard"> | null;
  /** `dry` and `wet` are certain enough to act on; `maybe` lies within the spread. */
  readonly verdict: "dry" | "maybe" | "wet" | "unknown";
  /** Water left against time for the picture: epoch ms and kg/m². */
  readonly curve: readonly { readonly at: number; readonly waterKgM2: number }[];
};

/** A wall's verdict with what it was worked out from. */
export type JudgedWall = WallVerdict & {
  /** What would make it carry; null where it does. */
  readonly ways: WallWays | null;
  readonly headPressurePa: number;
  /** Bending strength the verdict counts with, MPa. */
  readonly morMPa: number;
  readonly strengthFrom: WallStrength["from"];
  /** That strength is known to × or ÷ this. */
  readonly strengthSpread: number;
  /** Share of its load the wall bears after damp coats or a poor firing, 1 where nothing weakened it; `morMPa` counts it. */
  readonly loadShare: number;
};

export type WallStanding = {
  /** Wall by the coats' table or own caliper readings, mm. */
  readonly reachedMm: number;
  readonly perCoatMm: readonly number[];
  /** `measured` when a caliper reading carries the figure. */
  readonly basis: "table" | "measured";
  /** The same to a tenth of a millimetre, and its middle nine in ten. */
  readonly likelyMm: number;
  readonly lowMm: number;
  readonly highMm: number;
  /** What handling and burnout ask, mm; 0 where no recipe says. */
  readonly floorMm: number;
  /** Null with the missing figures when it can't be judged. */
  readonly judged: JudgedWall | null;
  readonly missing: readonly ("alloy" | "head" | "part" | "coats")[];
  /** The wall once the recipe is through; null where no coat of one is to come. */
  readonly planned: { readonly likelyMm: number; readonly judged: JudgedWall | null } | null;
};

/** One kind of place on a piece, and how the outer coat dries there. */
export type DryPlace = {
  readonly geometry: GeometryClass;
  /** True for the place the plan says dries last: its times are those of the piece. */
  readonly isNamed: boolean;
  readonly drying: CoatDrying;
};

/** The drying of a whole shell before fire. */
export type FinalDry = {
  readonly water: {
    /** All that went on with its coats, kg/m². */
    readonly putOnKgM2: number;
    /** What the sum leaves in it where it dries slowest, what came up from coats beneath included; null when not known. */
    readonly leftKgM2: number | null;
    /** At most this much more, in the last of the coats that were covered when dry. */
    readonly beneathKgM2: number;
    /** Grams over the piece's area; null when either is not known. */
    readonly leftG: number | null;
  };
  /** Slowest first; never empty. */
  readonly places: readonly DryPlace[];
  /** When the outer coat was last wetted. */
  readonly wettedAt: number;
  /** When the sum says, late guess, that the slowest place is dry; null when it can't. */
  readonly sumAt: number | null;
  readonly practice: {
    readonly hours: number;
    readonly until: number;
    readonly why: FinalDryPlace | "thick";
    /** True where the shop's own minimum stands in for the starting value. */
    readonly isOwn: boolean;
    /** Mean humidity over the shorter of the usual waits, fraction; null when not read. Over the limit the longer one counts. */
    readonly meanRh: number | null;
    readonly leastH: number;
    readonly mostH: number;
  };
  /** The least wait by air and hours, nothing measured, and what sets it; without a time it says why. */
  readonly least:
    | { readonly at: number; readonly reason: "sum" | "practice" | "damp-air" }
    | { readonly at: null; readonly reason: NoReadyReason | "damp-air" };
};

/** May the outer coat be covered? Times are epoch ms and do not move with the clock. */
export type CoverAnswer = {
  readonly coat: Coat;
  /** "check" from `checkAt` on; "unknown" is that for a coat whose air was never read. */
  readonly state: "dry" | "check" | "drying" | "unknown";
  /** From then on it is perhaps dry: the later of the likely time and the minimum. Null where no time can be given. */
  readonly checkAt: number | null;
  /** When it became dry, or will be by the cautious end; null where no time can be given. */
  readonly dryAt: number | null;
  /** What sets `dryAt`. */
  readonly by: "air" | "minimum" | "touch" | "fire" | MeasuredDry | null;
  /** The cautious end by air and observations alone; null without one. */
  readonly airAt: number | null;
  readonly minimum: DryMinimum;
  /** The newest touch that found it dry and does not count; from `countsFrom` on one does, null: never here. */
  readonly touch: { readonly at: number; readonly countsFrom: number | null } | null;
  readonly reason: NoReadyReason | null;
};

/** The hours a coat dries at the least, until when, and the most specific place they are set in. */
export type DryMinimum = {
  readonly hours: number;
  readonly until: number;
  readonly from: "recipe" | "bucket" | "shop" | "starting";
};

/** May the shell go in the kiln, as far as its water goes? Times are epoch ms and do not move with the clock. */
export type FireAnswer = {
  readonly coat: Coat;
  readonly state: "dry" | "drying" | "unknown";
  /** When it became dry, or will be; null where no time can be given. */
  readonly dryAt: number | null;
  /** What sets `dryAt`: the air's cautious end, the hours of the last drying, the end of damp air, fire, a measurement. */
  readonly by: "air" | "hours" | "damp-air" | "fire" | MeasuredDry | null;
  /** `dryAt` with no fire; for who asks whether it went into one damp. */
  readonly coldAt: number | null;
  /** The cautious end of the slowest place by air and observations; null without one. */
  readonly airAt: number | null;
  readonly wettedAt: number;
  /** Null once fire is over and nobody asks for hours any more. */
  readonly hours: FinalDry["practice"] | null;
  /** The kind of the slowest place. */
  readonly place: GeometryClass;
  /** When a hand last found it dry, where that is the newest word: it never counts here. */
  readonly touchedAt: number | null;
  readonly reason: NoReadyReason | "damp-air" | null;
};

/** Where one piece stands at `now`: the log, the recipe and the room put together. Rules read this, the page shows it. */
export type Standing = {
  readonly piece: Piece;
  readonly now: number;
  readonly recipe: Recipe | null;
  readonly room: Room | null;
  readonly readings: readonly AirReading[];
  readonly shop: Shop;
  readonly drying: readonly CoatDrying[];
  /** The kiln runs it was in that are known, in the order it was in them, and the one it stands in now. */
  readonly runs: readonly Run[];
  /** The buckets its coats came from, each as it was at the dip. */
  readonly dippedFrom: readonly DippedFrom[];
  /** The outermost coat's drying; null before the first coat. */
  readonly outer: CoatDrying | null;
  /** May the outer coat be covered? Null before the first coat. */
  readonly cover: CoverAnswer | null;
  /** May the shell go in the kiln? Null before the first coat. */
  readonly forFire: FireAnswer | null;
  /** How each crack stands, in the order they were found. */
  readonly cracks: readonly CrackState[];
  /** What a coat put on now keeps of what is said of the outer one; null before the first coat. */
  readonly saying: SaidOfBeneath | null;
  /** The coat the recipe wants next; null when the recipe is done or there is none. */
  readonly next: (RecipeCoat & { readonly step: number; readonly number: number }) | null;
  readonly coatsDone: number;
  readonly coatsPlanned: number | null;
  readonly wall: WallStanding;
  /** Null while a coat is to come, and once fire has begun. */
  readonly finalDry: FinalDry | null;
  /** What still stands between this shell and metal; empty when the log knows of nothing. */
  readonly metalBars: readonly MetalBar[];
  readonly action: NextAction;
};
