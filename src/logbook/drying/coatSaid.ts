import type { ApproachVerdict } from "../../physics/evidence/approachVerdict.ts";
import type { BagVerdict } from "../../physics/evidence/bagEvidence.ts";
import type { ResistanceVerdict } from "../../physics/evidence/resistanceEvidence.ts";
import type { SteadyMass } from "../../physics/evidence/steadyMass.ts";
import type { SurfaceVerdict } from "../../physics/evidence/surfaceEvidence.ts";
import type { TargetMass } from "../../physics/slurry/targetMass.ts";
import type { GeometryClass } from "../../trade/geometryClasses.ts";

type Refused<T extends { readonly kind: string }> = Extract<T, { readonly kind: "refused" }>;

/** What one observation said of a coat, by the method that spoke. Shares are of the water it went on with. */
export type Said =
  | { readonly by: "touch" | "colour"; readonly saw: "dry" | "damp" | "wet" }
  | {
      readonly by: "target-mass";
      readonly waterShare: number;
      readonly sdShare: number;
      readonly targetG: number;
      readonly sdG: number;
      readonly waterG: number;
    }
  | {
      readonly by: "weight-loss";
      readonly lossG: number;
      readonly apartS: number;
      readonly waterG: number;
    }
  | {
      readonly by: "approach";
      readonly lowG: number;
      readonly highG: number;
      readonly tauS: number;
      readonly used: number;
    }
  | {
      readonly by: "surface";
      readonly index: number;
      readonly indexSd: number;
      readonly endIndex: number;
      readonly says: "dry" | "nearly" | "wet";
      /** Its whole error lies past the end of the coat's depth. */
      readonly isSure: boolean;
      readonly place: GeometryClass;
      /** Read where the piece dries sooner than at the place its times are for. */
      readonly outerFaceOnly: boolean;
    }
  | { readonly by: "bag"; readonly says: "wet" | "losing" | "between" | "dry" }
  | {
      readonly by: "resistance";
      readonly ratio: number;
      readonly waterShare: number;
      readonly says: "dry" | "wet";
      readonly place: GeometryClass;
    };

/** Why an observation says nothing, with the numbers of it. */
export type Unsaid =
  | Refused<TargetMass>
  | Refused<ApproachVerdict>
  | Refused<SteadyMass>
  | Refused<SurfaceVerdict>
  | Refused<BagVerdict>
  | Refused<ResistanceVerdict>
  | { readonly code: "lighter-than-dry" | "heavier-than-wet"; readonly waterShare: number }
  /** A later weighing was heavier, and stands. */
  | { readonly code: "lighter-than-later"; readonly gainG: number }
  /** Between two weighings more went than the coat had of water. */
  | { readonly code: "more-than-its-water"; readonly lossG: number; readonly waterG: number }
  /** A face warmer than the air, or colder than a dripping one. */
  | { readonly code: "beyond-air"; readonly isWarmer: boolean }
  | {
      readonly code:
        | "no-air"
        | "no-reference"
        | "out-of-range"
        /** Neither three weighings nor an area: the coat's water is not known in grams. */
        | "no-water"
        /** One weighing alone, with nothing to hold it against. */
        | "nothing-before";
    };
