/**
 * Areas and volumes of simple solids, to guess what a slurry has to cover. Closed forms of any table of
 * mensuration. All take mm or kg as named, above 0, and give m² or m³.
 */
export type Solid =
  | { readonly kind: "box"; readonly widthMm: number; readonly depthMm: number; readonly heightMm: number }
  | { readonly kind: "cylinder"; readonly diameterMm: number; readonly heightMm: number }
  | { readonly kind: "sphere"; readonly diameterMm: number };

/** Whole outer face of a solid, ends included, m². */
export function solidAreaM2(solid: Solid): number {
  switch (solid.kind) {
    case "box": {
      const [a, b, c] = [metres("widthMm", solid.widthMm), metres("depthMm", solid.depthMm), height(solid)];
      return 2 * (a * b + b * c + c * a);
    }
    case "cylinder": {
      const d = metres("diameterMm", solid.diameterMm);
      return Math.PI * d * (d / 2 + height(solid));
    }
    case "sphere":
      return Math.PI * metres("diameterMm", solid.diameterMm) ** 2;
  }
}

/**
 * Face of a hollow pattern from its weight, m²: mass over density and wall, once for the outside alone and twice
 * where slurry also coats the inside. The sheet counts as flat; for a wall a tenth of the radius that reads low
 * by a twentieth outside.
 */
export function hollowAreaM2({
  massKg,
  wallMm,
  densityKgM3,
  faces,
}: {
  massKg: number;
  wallMm: number;
  densityKgM3: number;
  faces: 1 | 2;
}): number {
  requirePositive("massKg", massKg);
  if (!(densityKgM3 >= 10 && densityKgM3 <= 25_000))
    throw new RangeError(`densityKgM3 must be 10–25000 kg/m³, found ${densityKgM3}`);
  return (faces * massKg) / densityKgM3 / metres("wallMm", wallMm);
}

const height = ({ heightMm }: { heightMm: number }): number => metres("heightMm", heightMm);

function metres(name: string, mm: number): number {
  requirePositive(name, mm);
  return mm / 1000;
}

function requirePositive(name: string, value: number): void {
  if (!(value > 0 && value < Infinity)) throw new RangeError(`${name} must be above 0, found ${value}`);
}
