import { hollowAreaM2, solidAreaM2 } from "../../geometry/simpleSolids.ts";

/** A body simple enough to measure with a rule or a scale, standing for a piece with its gating. */
export type AreaBody =
  | { readonly kind: "box"; readonly lengthMm: number; readonly widthMm: number; readonly heightMm: number }
  | { readonly kind: "cylinder"; readonly diameterMm: number; readonly heightMm: number }
  | { readonly kind: "sphere"; readonly diameterMm: number }
  | {
      readonly kind: "weighed";
      readonly massG: number;
      readonly densityKgM3: number;
      readonly thicknessMm: number;
      /** Faces that are dipped: 1 for a closed hollow, 2 for a sheet or an open hollow. */
      readonly faces: 1 | 2;
    };

/** How much more skin relief and folds have than the smooth body: judgement, no source. */
export const reliefFactors = { smooth: 1, relief: 1.3, deep: 1.7 } as const;
export type Relief = keyof typeof reliefFactors;

/**
 * Surface in m² of the smooth body, times its relief. Lengths above 0 mm, mass above 0 g, density above 0 kg/m³.
 */
export function areaM2Of(body: AreaBody, relief: Relief): number {
  return smoothM2(body) * reliefFactors[relief];
}

function smoothM2(body: AreaBody): number {
  switch (body.kind) {
    case "box":
      return solidAreaM2({
        kind: "box",
        widthMm: body.widthMm,
        depthMm: body.lengthMm,
        heightMm: body.heightMm,
      });
    case "cylinder":
    case "sphere":
      return solidAreaM2(body);
    case "weighed":
      return hollowAreaM2({
        massKg: body.massG / 1000,
        wallMm: body.thicknessMm,
        densityKgM3: body.densityKgM3,
        faces: body.faces,
      });
  }
}
