import type { Attitude } from "../geometry/attitude.ts";
import type { Fill } from "../geometry/fillFromGate.ts";
import type { Tip } from "../geometry/findTips.ts";
import type { FlatSpan } from "../geometry/flatSpans.ts";
import type { FreezeOrder } from "../geometry/freezeOrder.ts";
import type { Feed } from "../geometry/hotSpots.ts";
import type { Mesh } from "../geometry/mesh.ts";
import type { MeshFault } from "../geometry/meshFault.ts";
import type { Recess } from "../geometry/recesses.ts";
import type { RoundSpan } from "../geometry/roundSpans.ts";
import type { Trapped } from "../geometry/trappedVolume.ts";
import type { Vec3 } from "../geometry/vector.ts";
import type { WallThickness } from "../geometry/wallThickness.ts";
import type { OpenedPattern } from "./pattern/openedPattern.ts";
import type { PatternCaps } from "./patternCaps.ts";

/** How finely tips are told from noise: rise mm, volume mm³. */
export type TipLimits = { readonly minRise: number; readonly minVolume: number };

/** Mesh mm: the file's axes, from the middle of its box, in millimetres as the pattern will be dipped. */
type InMm = {
  readonly mmPerUnit: number;
  /** Closed hollows count as metal. */
  readonly isFilled?: boolean | undefined;
};
type Hung = InMm & { readonly up: Vec3 };

/** What the worker is asked; it keeps the mesh between. All but open and restore want a mesh to be there. */
export type PatternAsked = {
  /** `keptIds` are those of patterns kept from files of the same size: large ones may have an id of an older kind. */
  readonly open: {
    readonly file: Blob;
    readonly name: string;
    readonly caps: PatternCaps;
    readonly keptIds?: readonly string[] | undefined;
  };
  /** A kept display copy in place of the file, in file units about the middle. */
  readonly restore: { readonly mesh: Mesh };
  /** Caps every hole however wide, and measures again. */
  readonly "close-holes": { readonly caps: PatternCaps };
  /** Joins open edges that lie a hair apart, and measures again. */
  readonly "join-seams": { readonly caps: PatternCaps };
  readonly tips: Hung & TipLimits;
  readonly trapped: Hung & {
    readonly vents: readonly Vec3[];
    readonly drains: readonly Vec3[];
    readonly columns: number;
  };
  /** For the picture; `openings` let plastic out. */
  readonly skins: Hung & {
    readonly vents: readonly Vec3[];
    readonly openings: readonly Vec3[];
    readonly cells: number;
    readonly minRise: number;
  };
  readonly fill: Hung & { readonly gate: Vec3; readonly vents: readonly Vec3[]; readonly cells: number };
  readonly thickness: InMm & { readonly cells: number };
  readonly spans: InMm & { readonly cells: number };
  readonly recesses: InMm & { readonly cells: number; readonly minDepth: number };
  readonly freeze: InMm & { readonly cells: number; readonly feeds: readonly Feed[] };
  readonly attitudes: InMm & TipLimits;
};

export type PatternAnswers = {
  readonly open: OpenedPattern;
  readonly restore: { readonly triangles: number };
  readonly "close-holes": OpenedPattern["found"];
  readonly "join-seams": OpenedPattern["found"];
  /** Drains are the tips of the piece turned over: their heights run along −up. `low` and `high` along up. */
  readonly tips: {
    readonly tips: readonly Tip[];
    readonly drains: readonly Tip[];
    readonly low: number;
    readonly high: number;
  };
  /** Plastic is what stays when it runs out, turned over: its heights run along −up. */
  readonly trapped: { readonly air: Trapped; readonly plastic: Trapped };
  /** Null where nothing stays, or nearly all. */
  readonly skins: { readonly air: Mesh | null; readonly plastic: Mesh | null };
  readonly fill: Fill;
  /** Its `field` is for each triangle of the display copy. */
  readonly thickness: WallThickness;
  readonly spans: { readonly flats: readonly FlatSpan[]; readonly rounds: readonly RoundSpan[] };
  readonly recesses: readonly Recess[];
  readonly freeze: FreezeOrder;
  readonly attitudes: readonly Attitude[];
};

export type PatternWork = keyof PatternAsked;
type JobOf<W extends PatternWork> = { readonly id: number; readonly do: W; readonly asked: PatternAsked[W] };
export type PatternJob =
  { readonly [W in PatternWork]: JobOf<W> }[PatternWork] | { readonly id: number; readonly do: "cancel" };

export type PatternStage = "hash" | "read" | "measure" | "mend" | "lighten" | PatternWork;
export type PatternProgress = { readonly stage: PatternStage; readonly share: number };

export type FileFault = Pick<MeshFault, "code" | "found" | "expected" | "remedy">;

export type PatternReply =
  | ({ readonly id: number; readonly says: "progress" } & PatternProgress)
  | { readonly id: number; readonly says: "answer"; readonly answer: PatternAnswers[PatternWork] }
  | { readonly id: number; readonly says: "fault"; readonly fault: FileFault }
  /** A point off the solid, or a number out of its range. */
  | { readonly id: number; readonly says: "refused"; readonly message: string }
  | { readonly id: number; readonly says: "no-mesh" | "stopped" }
  | { readonly id: number; readonly says: "failed"; readonly message: string };
