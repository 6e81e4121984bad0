/** One beep: when it starts, from the start of the ringing, and how long and how high it is. */
export type Beep = { readonly atS: number; readonly lengthS: number; readonly hertz: number };

/** Two tones apart, so that a fan or a grinder that hides one leaves the other. Our own choice. */
const tones: readonly Beep[] = [
  { atS: 0, lengthS: 0.18, hertz: 880 },
  { atS: 0.24, lengthS: 0.18, hertz: 1320 },
  { atS: 0.48, lengthS: 0.3, hertz: 880 },
];
const roundS = 1.6;

/** The beeps of so many rounds of ringing, in order. */
export function ringing(rounds: number): readonly Beep[] {
  return Array.from({ length: rounds }, (_, round) =>
    tones.map((beep) => ({ ...beep, atS: beep.atS + round * roundS })),
  ).flat();
}

/** Soft edges, s: a tone that starts at full strength clicks. */
const edgeS = 0.012;

/** Puts beeps on an audio clock from `fromS` of that clock. Returns how to take back the ones not yet over. */
export function placeBeeps(
  context: BaseAudioContext,
  {
    beeps,
    fromS,
    loudness = 0.8,
  }: { readonly beeps: readonly Beep[]; readonly fromS: number; readonly loudness?: number },
): () => void {
  const stops = beeps.map(({ atS, lengthS, hertz }) => {
    const startS = fromS + atS;
    const endS = startS + lengthS;
    const gain = context.createGain();
    gain.gain.setValueAtTime(0, startS);
    gain.gain.linearRampToValueAtTime(loudness, startS + edgeS);
    gain.gain.setValueAtTime(loudness, endS - edgeS);
    gain.gain.linearRampToValueAtTime(0, endS);
    const tone = context.createOscillator();
    tone.frequency.value = hertz;
    tone.connect(gain).connect(context.destination);
    tone.start(startS);
    tone.stop(endS);
    return () => {
      tone.stop();
      gain.disconnect();
    };
  });
  return () => {
    for (const stop of stops) stop();
  };
}
