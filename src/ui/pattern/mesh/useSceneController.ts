import { useMemo, useState } from "react";
import { asFiled, upOf, uprightFor, type Rotation } from "../../../geometry/rotation.ts";
import type { Mesh } from "../../../geometry/mesh.ts";
import { dot, length, minus, type Vec3 } from "../../../geometry/vector.ts";
import { useShop } from "../../base/state/shop.tsx";
import { hungWith } from "../scene/hangTurn.ts";
import { marksKey, type UpResults } from "./patternResults.ts";
import {
  displayInMm,
  markDiameterMm,
  movedMark,
  resultsFor,
  turned,
  withMark,
  type PatternStudy,
} from "./patternStudy.ts";
import type { Mark, MarkKind } from "../../../logbook/casting/mark.ts";
import { namedMarks, namedSpots, snapped, type NamedMark } from "./scenePlaces.ts";
import type { PatternController } from "./usePatternController.ts";

/** What a finger on the picture does. */
export type Tool = "look" | MarkKind | "face" | "rings";
type Spot = Pick<Mark, "point" | "normal">;

export type SceneController = {
  readonly door: PatternController;
  readonly study: PatternStudy;
  readonly mmPerUnit: number;
  readonly mesh: Mesh;
  /** The last that were found, even while newer ones are on their way. */
  readonly results: UpResults | null;
  readonly isStale: boolean;
  /** The places listed are those of another way to hang, or of the shape before an answer: nothing is put on them. */
  readonly areSpotsStale: boolean;
  /** Why nothing can be put on a listed place just now; null when it can. */
  readonly placesWait: string | null;
  readonly spots: ReturnType<typeof namedSpots>;
  readonly marks: readonly NamedMark[];
  readonly sizeMm: number;
  readonly rotation: Rotation;
  readonly turnTo: (rotation: Rotation) => void;
  readonly hang: (up: Vec3) => void;
  readonly tool: Tool;
  readonly setTool: (tool: Tool) => void;
  readonly chosen: string | null;
  readonly setChosen: (id: string | null) => void;
  readonly put: (kind: MarkKind, at: Spot) => void;
  readonly move: (id: string, at: Spot) => void;
  readonly act: (change: (study: PatternStudy) => PatternStudy) => void;
  readonly undo: (() => void) | null;
  readonly newId: () => string;
};

export function useSceneController(door: PatternController, mmPerUnit: number): SceneController {
  const { study } = door;
  const { moment } = useShop();
  const { found, hollowsAre, up, marks } = study;
  const mesh = useMemo(() => displayInMm({ found, hollowsAre }, mmPerUnit), [found, hollowsAre, mmPerUnit]);
  const sizeMm = useMemo(() => {
    const { low, high } = found.measures.box;
    return length(minus(high, low)) * mmPerUnit;
  }, [found, mmPerUnit]);
  const { act, undo } = door;
  const [tool, setTool] = useState<Tool>("look");
  const [chosen, setChosen] = useState<string | null>(null);
  const [rotation, setRotation] = useRotation(up);

  const fresh = resultsFor(study);
  const [last, setLast] = useState(fresh);
  if (fresh !== null && fresh !== last) setLast(fresh);
  const results = fresh ?? last;
  const isStale = fresh === null || fresh.held?.key !== marksKey(marks);

  const spots = useMemo(() => namedSpots({ marks, up }, results), [marks, up, results]);
  const named = useMemo(() => namedMarks(marks, spots), [marks, spots]);
  const newId = (): string => moment().newId();
  const snap = (kind: MarkKind, at: Spot): Spot =>
    snapped(kind, at, { results, withinMm: Math.max(6, 0.03 * sizeMm) });

  return {
    door,
    study,
    mmPerUnit,
    mesh,
    results,
    isStale,
    areSpotsStale: fresh === null,
    placesWait: fresh === null ? "Calculating…" : null,
    spots,
    marks: named,
    sizeMm,
    rotation,
    turnTo: (next) => {
      setRotation(next);
      const newUp = cleaned(upOf(next));
      if (dot(newUp, up) < 1 - 1e-12) act((now) => turned(now, newUp));
    },
    hang: (newUp) => act((now) => turned(now, newUp)),
    tool,
    setTool: (next) => {
      setTool(next);
      setChosen(null);
    },
    chosen,
    setChosen,
    put: (kind, at) =>
      act((now) => withMark(now, { id: newId(), kind, ...snap(kind, at), diameterMm: markDiameterMm[kind] })),
    move: (id, at) => {
      const mark = marks.find((one) => one.id === id);
      if (mark !== undefined) act((now) => movedMark(now, id, snap(mark.kind, at)));
      setChosen(null);
    },
    act,
    undo,
    newId,
  };
}

/** The turn of the picture: follows the piece's up the shortest way, and keeps a spin that up does not tell. */
function useRotation(up: Vec3): readonly [Rotation, (next: Rotation) => void] {
  const [rotation, setRotation] = useState<Rotation>(() =>
    dot(up, [0, 0, 1]) > 1 - 1e-12 ? asFiled : uprightFor(up),
  );
  if (length(minus(upOf(rotation), up)) < 1e-6) return [rotation, setRotation];
  const next = hungWith(rotation, up);
  setRotation(next);
  return [next, setRotation];
}

/** Four quarter turns come back to where they began: what rounding has left is taken away. */
function cleaned(up: Vec3): Vec3 {
  const tidy = up.map((value) => (Math.abs(value) < 1e-9 ? 0 : value)) as [number, number, number];
  const size = length(tidy);
  return [tidy[0] / size, tidy[1] / size, tidy[2] / size];
}
