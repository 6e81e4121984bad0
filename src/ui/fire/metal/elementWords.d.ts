import type { CompositionLimit } from "../../../physics/metal/chargeVerdict.ts";
import type { Format } from "../../base/format/units.ts";
/** "Si", "Cu + Ni", "Cu and all that is named". */
export declare const limitName: ({ of }: CompositionLimit) => string;
/** "3.5 to 4.5%", "0.25% at most", "the rest". */
export declare function limitWords({ min, max }: CompositionLimit, format: Format): string;
