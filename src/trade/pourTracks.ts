import type { PourStep, PourTrack } from "../physics/metal/pourDay.ts";

/** How long each thing of a pour day stays good, min: common practice, no source; starting values. */
export const pourHoldMin = {
  sand: 20,
  metal: 10,
  /** A warm crucible and ingots by the furnace. */
  warm: 30,
} as const;

/** How long things take that nobody measures, min: common practice, no source; starting values. */
export const pourTaskMin = { people: 15, tools: 15, check: 5, skim: 2 } as const;

/** The tracks of a pour day from the shop's own figures; those it does not need are left out. */
export function pourTracks({
  kilnMin,
  sandMin,
  crucibleMin,
  meltMin,
}: {
  /** From the kiln's cold start to the shell's soak being over; null where the shell is hot already. */
  kilnMin: number | null;
  /** Null for no sand, or cold sand. */
  sandMin: number | null;
  crucibleMin: number;
  meltMin: number;
}): readonly PourTrack[] {
  const step = (of: Partial<PourStep> & Pick<PourStep, "id" | "durationMin">): PourStep => ({
    maxHoldMin: null,
    holdAs: "stand-ready",
    ...of,
  });
  const { people, tools, check, skim } = pourTaskMin;
  return [
    ...(kilnMin === null
      ? []
      : [
          {
            id: "kiln",
            steps: [
              step({ id: "shell-preheated", durationMin: kilnMin, holdAs: "keep-in-kiln", uses: ["kiln"] }),
            ],
          },
        ]),
    ...(sandMin === null
      ? []
      : [
          {
            id: "sand",
            steps: [
              step({
                id: "sand-heated",
                durationMin: sandMin,
                maxHoldMin: pourHoldMin.sand,
                holdAs: "keep-sand-hot",
              }),
            ],
          },
        ]),
    {
      id: "metal",
      steps: [
        step({
          id: "crucible-warmed",
          durationMin: crucibleMin,
          maxHoldMin: pourHoldMin.warm,
          holdAs: "keep-hot",
          uses: ["furnace"],
        }),
        step({
          id: "metal-melted",
          durationMin: meltMin,
          maxHoldMin: pourHoldMin.metal,
          holdAs: "hold-metal-skim",
          uses: ["furnace"],
        }),
        step({
          id: "metal-skimmed",
          durationMin: skim,
          maxHoldMin: 3,
          holdAs: "hold-metal-skim",
          people: 1,
          uses: ["furnace"],
        }),
      ],
    },
    {
      id: "people",
      steps: [
        step({ id: "tools-laid-out", durationMin: tools, people: 1 }),
        step({ id: "people-dressed", durationMin: people, maxHoldMin: 30, people: 1 }),
        step({ id: "sheet-checked", durationMin: check, maxHoldMin: 15, people: 1 }),
        // Whoever checks the sheet also skims: they are free again by then.
        step({ id: "all-stand-ready", durationMin: skim }),
      ],
    },
  ];
}
