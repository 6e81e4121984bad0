/** The pages that show a piece of work by hand, by what they are about. */
export const howToNames = {
  weigh: "Weigh a shell",
  cup: "Read a flow cup",
  hygrometer: "Hang a hygrometer",
  bars: "Cut and break test bars",
  caliper: "Caliper a shell",
  phone: "Mount the phone and a foot switch",
  backup: "Make the first backup",
} as const;
export type HowToId = keyof typeof howToNames;
