import type { GatingBar } from "../../../geometry/gatingBars.ts";
import type { Mesh } from "../../../geometry/mesh.ts";
import type { Rotation } from "../../../geometry/rotation.ts";
import type { Vec3 } from "../../../geometry/vector.ts";
import type { Grid } from "../../../geometry/voxels.ts";
import type { Hit } from "./pickPiece.ts";
import type { ColourName } from "./sceneColours.ts";

/** Points, bars and meshes in mesh mm; what is said of heights is along up. */
export type PlaceKind = "air" | "plastic" | "gate" | "vent" | "drain" | "feeder" | "hot" | "thin" | "thick";

export type Place = {
  readonly id: string;
  readonly kind: PlaceKind;
  readonly label: string;
  readonly point: Vec3;
  /** Run of a ridge or round a flat top; empty for a point. */
  readonly ridge: readonly Vec3[];
  /** A suggestion is drawn hollow, what stands there is filled. */
  readonly isPut: boolean;
  /** May be taken by a finger and dragged. */
  readonly canMove: boolean;
  readonly isChosen: boolean;
};

export type Patch = {
  readonly point: Vec3;
  readonly normal: Vec3;
  readonly widthMm: number;
  readonly lengthMm: number;
};

export type Heights = {
  readonly lowMm: number;
  readonly highMm: number;
  /** Null where the cup is not shown. */
  readonly cup: { readonly atMm: number; readonly label: string } | null;
  /** Marks of the ruler, from the lowest place. */
  readonly ticks: readonly { readonly aboveMm: number; readonly label: string }[];
};

export type CutAxis = "side" | "front" | "level";

export type FillLook = {
  readonly grid: Grid;
  /** As `fillVolume` makes it. */
  readonly pairs: Uint16Array;
  /** How far the fill is, 0–1. */
  readonly share: number;
};

export type SceneView = {
  readonly mesh: Mesh;
  readonly rotation: Rotation;
  readonly places: readonly Place[];
  readonly bars: readonly GatingBar[];
  readonly pockets: readonly { readonly colour: ColourName; readonly mesh: Mesh }[];
  readonly patches: readonly Patch[];
  readonly heights: Heights | null;
  /** Seen through, so that what lies inside shows. */
  readonly isGlass: boolean;
  /** A band 0–4 for each triangle, 5 unknown. */
  readonly bands: Uint8Array | null;
  readonly fill: FillLook | null;
  /** Kept is what lies below (behind, left of) the share of the piece. */
  readonly cut: { readonly axis: CutAxis; readonly share: number } | null;
  /** What one finger does: turns the view, taps a place, or turns the piece by its rings. */
  readonly hand: "look" | "tap" | "turn";
};

export type SceneEvents = {
  readonly onTap: (hit: Hit) => void;
  readonly onMove: (id: string, hit: Hit) => void;
  readonly onTurned: (rotation: Rotation) => void;
};

export type ViewName = "front" | "side" | "top" | "slant";
