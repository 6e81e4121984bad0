/**
 * Heat that passes from metal to a ceramic shell, W/m²K, while the metal lies against it. Measured at 300–660 for a
 * nickel alloy on an aluminosilicate shell: C. H. Konrad et al., J. Mater. Process. Technol. 211 (2011) 181–186
 * (abstract). Bronze and aluminium were not measured, so the high end reaches to 1000 (judgement).
 */
export const metalToShellWM2K = { low: 300, likely: 500, high: 1000 } as const;
