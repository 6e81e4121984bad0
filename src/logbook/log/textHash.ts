/** FNV-1a of a text, 32 bits. */
export function textHash(text: string, seed: number): number {
  let hash = seed;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
