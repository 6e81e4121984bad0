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
 * Surface in m² of the smooth body, times its relief. Plain geometry; a pattern of even thickness has its volume
 * over its thickness on each face. Lengths above 0 mm, mass above 0 g, density above 0 kg/m³.
 */
export function areaM2Of(body: AreaBody, relief: Relief): number {
  return smoothM2(body) * reliefFactors[relief];
}

function smoothM2(body: AreaBody): number {
  switch (body.kind) {
    case "box":
      return (
        (2 * (body.lengthMm * body.widthMm + body.widthMm * body.heightMm + body.heightMm * body.lengthMm)) /
        1e6
      );
    case "cylinder":
      return (Math.PI * body.diameterMm * (body.heightMm + body.diameterMm / 2)) / 1e6;
    case "sphere":
      return (Math.PI * body.diameterMm ** 2) / 1e6;
    case "weighed":
      return (body.faces * (body.massG / 1000 / body.densityKgM3)) / (body.thicknessMm / 1000);
  }
}
