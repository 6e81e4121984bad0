/** Between −1 and 1, the same for the same hour. */
export function noise(hour: number): number {
  const x = Math.sin(hour * 12.9898) * 43_758.5453;
  return 2 * (x - Math.floor(x)) - 1;
}

export const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
