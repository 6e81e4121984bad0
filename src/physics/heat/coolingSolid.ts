import { requirePositive, requireWithin } from "../stats/range.ts";

/**
 * A simple solid that loses heat through its faces; a length left out means endless, with no ends. mm, mm², mm³.
 * `coveredMm2` is face that touches another part and does not cool.
 */
export type CoolingSolid = (
  | {
      readonly kind: "plate";
      readonly thicknessMm: number;
      readonly widthMm?: number | undefined;
      readonly lengthMm?: number | undefined;
    }
  | {
      readonly kind: "bar";
      readonly widthMm: number;
      readonly thicknessMm: number;
      readonly lengthMm?: number | undefined;
    }
  | { readonly kind: "cube"; readonly sideMm: number }
  | { readonly kind: "sphere"; readonly diameterMm: number }
  | { readonly kind: "cylinder"; readonly diameterMm: number; readonly heightMm?: number | undefined }
  | {
      readonly kind: "tube";
      readonly outerMm: number;
      readonly wallMm: number;
      readonly lengthMm?: number | undefined;
      /** A core that stays cool takes heat too; a thin one soon stops. */
      readonly coreCools: boolean;
    }
  /** Upright round: its top may be covered, its foot may sit on the casting. */
  | {
      readonly kind: "riser";
      readonly diameterMm: number;
      readonly heightMm: number;
      readonly topCools: boolean;
      readonly baseCools: boolean;
    }
  /** What a mesh gives. */
  | { readonly kind?: "measured" | undefined; readonly volumeMm3: number; readonly areaMm2: number }
) & { readonly coveredMm2?: number | undefined };

export type Cooling = {
  /** For an endless solid, of one mm of its length (a bar) or one mm² (a plate). */
  readonly volumeMm3: number;
  readonly areaMm2: number;
  readonly isEndless: boolean;
};

/** Volume and cooling face of a solid. Refuses a covered face as large as the whole, and one on an endless solid. */
export function coolingOf(solid: CoolingSolid): Cooling {
  const { coveredMm2 = 0 } = solid;
  const bare = bareCooling(solid);
  if (coveredMm2 === 0) return bare;
  if (bare.isEndless)
    throw new RangeError("an endless solid has no covered face to take off, give its length");
  requireWithin("coveredMm2", coveredMm2, {
    low: 0,
    high: bare.areaMm2 * 0.999,
    unit: "mm² (less than the whole face)",
  });
  return { ...bare, areaMm2: bare.areaMm2 - coveredMm2 };
}

function bareCooling(solid: CoolingSolid): Cooling {
  switch (solid.kind) {
    case "plate":
      return plate(solid);
    case "bar":
      return box(mm("widthMm", solid.widthMm), mm("thicknessMm", solid.thicknessMm), solid.lengthMm);
    case "cube":
      return box(mm("sideMm", solid.sideMm), solid.sideMm, solid.sideMm);
    case "sphere": {
      const d = mm("diameterMm", solid.diameterMm);
      return { volumeMm3: (Math.PI / 6) * d ** 3, areaMm2: Math.PI * d * d, isEndless: false };
    }
    case "cylinder":
      return round({
        outer: mm("diameterMm", solid.diameterMm),
        inner: 0,
        coreCools: false,
        length: solid.heightMm,
      });
    case "tube": {
      const outer = mm("outerMm", solid.outerMm);
      requirePositive("wallMm", solid.wallMm, { high: outer / 2, unit: "mm (half the outer diameter)" });
      const inner = outer - 2 * solid.wallMm;
      return round({ outer, inner, coreCools: solid.coreCools, length: solid.lengthMm });
    }
    case "riser": {
      const outer = mm("diameterMm", solid.diameterMm);
      const whole = round({ outer, inner: 0, coreCools: false, length: mm("heightMm", solid.heightMm) });
      const off = (solid.topCools ? 0 : 1) + (solid.baseCools ? 0 : 1);
      return { ...whole, areaMm2: whole.areaMm2 - off * (Math.PI / 4) * outer ** 2 };
    }
    case "measured":
    case undefined:
      requirePositive("volumeMm3", solid.volumeMm3, { high: 1e12, unit: "mm³" });
      requirePositive("areaMm2", solid.areaMm2, { high: 1e10, unit: "mm²" });
      return { volumeMm3: solid.volumeMm3, areaMm2: solid.areaMm2, isEndless: false };
    default:
      throw new RangeError(
        `kind must be a plate, bar, cube, sphere, cylinder, tube, riser or measured, found ${said(solid)}`,
      );
  }
}

const said = ({ kind }: { readonly kind: string }): string => kind;

function plate({ thicknessMm, widthMm, lengthMm }: Extract<CoolingSolid, { kind: "plate" }>): Cooling {
  const t = mm("thicknessMm", thicknessMm);
  const span = widthMm ?? lengthMm;
  if (span === undefined) return { volumeMm3: t, areaMm2: 2, isEndless: true };
  return box(t, mm("widthMm", span), widthMm === undefined ? undefined : lengthMm);
}

function box(a: number, b: number, length: number | undefined): Cooling {
  if (length === undefined) return { volumeMm3: a * b, areaMm2: 2 * (a + b), isEndless: true };
  const c = mm("lengthMm", length);
  return { volumeMm3: a * b * c, areaMm2: 2 * (a * b + b * c + c * a), isEndless: false };
}

function round({
  outer,
  inner,
  coreCools,
  length,
}: {
  outer: number;
  inner: number;
  coreCools: boolean;
  length: number | undefined;
}): Cooling {
  const section = (Math.PI / 4) * (outer ** 2 - inner ** 2);
  const girth = Math.PI * (outer + (coreCools ? inner : 0));
  if (length === undefined) return { volumeMm3: section, areaMm2: girth, isEndless: true };
  const long = mm("heightMm", length);
  return { volumeMm3: section * long, areaMm2: girth * long + 2 * section, isEndless: false };
}

function mm(name: string, value: number): number {
  requirePositive(name, value, { high: 20_000, unit: "mm" });
  return value;
}
