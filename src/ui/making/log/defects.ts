/** Faults of a casting in the trade's own words; the value is what the log keeps. Common practice, no source. */
export const defects = [
  { value: "run-out", label: "Run-out", hint: "Metal came through the shell." },
  { value: "fin", label: "Fin", hint: "A thin raised line where the shell cracked." },
  { value: "misrun", label: "Misrun", hint: "A part did not fill." },
  { value: "cold-shut", label: "Cold shut", hint: "Two streams met and did not join." },
  { value: "gas-holes", label: "Gas holes", hint: "Round and shiny." },
  { value: "shrinkage", label: "Shrinkage", hint: "Sunk or spongy at a thick part." },
  { value: "inclusion", label: "Inclusion", hint: "Grit or slag in the skin." },
  { value: "rough-face", label: "Rough face", hint: "Sandpaper skin, shell burnt on." },
  { value: "beads", label: "Beads", hint: "Round beads of metal in the corners." },
  { value: "ash-pits", label: "Ash pits", hint: "Lace-like skin where the pattern left ash." },
  { value: "hot-tear", label: "Hot tear", hint: "A jagged crack at a change of section." },
  { value: "bulge", label: "Bulge", hint: "A flat that swelled." },
  { value: "spall", label: "Spall", hint: "The face coat flaked into the metal." },
] as const;
