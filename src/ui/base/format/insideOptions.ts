/** What a look into a shell can find. */
export const insideOptions = [
  { value: "clean", label: "Clean", hint: "Pale inside, no grey, no powder." },
  { value: "residue", label: "Residue", hint: "Grey or black is carbon, white powder is ash." },
] as const;
