import { searchAttitudesSteps } from "../../geometry/attitude.ts";
import { fillFromGateSteps } from "../../geometry/fillFromGate.ts";
import { findTips } from "../../geometry/findTips.ts";
import { flatSpansSteps } from "../../geometry/flatSpans.ts";
import { freezeOrderSteps } from "../../geometry/freezeOrder.ts";
import { heldSkinsSteps } from "../../geometry/heldSkins.ts";
import type { Mesh } from "../../geometry/mesh.ts";
import { recessesSteps } from "../../geometry/recesses.ts";
import { roundSpansSteps } from "../../geometry/roundSpans.ts";
import { between } from "../../geometry/steps.ts";
import { trappedInDexels } from "../../geometry/trappedVolume.ts";
import { times, unit, type Vec3 } from "../../geometry/vector.ts";
import { wallThicknessSteps } from "../../geometry/wallThickness.ts";
import type { PatternAnswers, PatternAsked, PatternWork } from "../patternMessages.ts";
import type { AskedMesh } from "./askedMesh.ts";
import { breathe, drive, type Work } from "./work.ts";

type Question = Exclude<PatternWork, "open" | "restore" | "close-holes" | "join-seams">;
type Answers = {
  readonly [Q in Question]: (
    mesh: AskedMesh,
    asked: PatternAsked[Q],
    work: Work,
  ) => Promise<PatternAnswers[Q]>;
};

const searchTriangles = 20_000;

/** How each question about a mesh is answered; between two steps of one, others are heard. */
export const answers: Answers = {
  tips: async (kept, { mmPerUnit, isFilled, up, minRise, minVolume }, { signal, tell }) => {
    const mesh = kept.as(isFilled).inMm(mmPerUnit);
    const tips = findTips({ mesh, up, minRise, minVolume });
    tell("tips", 0.5);
    await breathe(signal);
    const drains = findTips({ mesh, up: times(up, -1), minRise, minVolume });
    return { tips, drains, ...spanAlong(mesh, unit(up)) };
  },
  trapped: async (kept, { vents, drains, isFilled, ...hung }) => {
    const { upward, downward } = kept.as(isFilled).columns(hung);
    return {
      air: trappedInDexels({ dexels: upward, vents }),
      plastic: trappedInDexels({ dexels: downward, vents: drains }),
    };
  },
  skins: (kept, { mmPerUnit, isFilled, ...asked }, work) =>
    drive(heldSkinsSteps({ mesh: kept.as(isFilled).inMm(mmPerUnit), ...asked }), "skins", work),
  fill: (kept, { mmPerUnit, isFilled, ...asked }, work) =>
    drive(fillFromGateSteps({ mesh: kept.as(isFilled).inMm(mmPerUnit), ...asked }), "fill", work),
  thickness: (kept, { mmPerUnit, isFilled, cells }, work) =>
    drive(
      wallThicknessSteps({
        mesh: kept.as(isFilled).inMm(mmPerUnit),
        on: kept.as(isFilled).displayInMm(mmPerUnit),
        cells,
      }),
      "thickness",
      work,
    ),
  spans: async (kept, { mmPerUnit, isFilled, cells }, work) => {
    const mesh = kept.as(isFilled).inMm(mmPerUnit);
    const flats = await drive(between(0, 0.4, flatSpansSteps(mesh)), "spans", work);
    const rounds = await drive(between(0.4, 1, roundSpansSteps({ mesh, cells })), "spans", work);
    return { flats, rounds };
  },
  recesses: (kept, { mmPerUnit, isFilled, ...asked }, work) =>
    drive(recessesSteps({ mesh: kept.as(isFilled).inMm(mmPerUnit), ...asked }), "recesses", work),
  freeze: (kept, { mmPerUnit, isFilled, ...asked }, work) =>
    drive(freezeOrderSteps({ mesh: kept.as(isFilled).inMm(mmPerUnit), ...asked }), "freeze", work),
  attitudes: async (kept, { mmPerUnit, isFilled, ...limits }, work) => {
    const light = await kept.as(isFilled).lightInMm(mmPerUnit, searchTriangles);
    return drive(
      searchAttitudesSteps({ mesh: kept.as(isFilled).inMm(mmPerUnit), light, ...limits }),
      "attitudes",
      work,
    );
  },
};

function spanAlong({ pos, idx }: Mesh, up: Vec3): { low: number; high: number } {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < idx.length; i++) {
    const at = 3 * idx[i]!;
    const height = pos[at]! * up[0] + pos[at + 1]! * up[1] + pos[at + 2]! * up[2];
    if (height < low) low = height;
    if (height > high) high = height;
  }
  return { low, high };
}
