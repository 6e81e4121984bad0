import { apartShare } from "../../../physics/slurry/cupReading.ts";
import type { HowToId } from "../../base/format/howToNames.ts";
import type { Format } from "../../base/format/units.ts";

export type HowTo = {
  readonly why: string;
  readonly steps: readonly string[];
  /** What is worked out from the numbers taken. */
  readonly sum?: string;
  readonly goesWrong: readonly string[];
  readonly sources: readonly string[];
};

/** A round length in either system: nobody cuts a lath to a converted one. */
const span = (format: Format, metric: string, us: string): string => (format.units === "us" ? us : metric);

const practice = "The rest is common practice, no source.";

const weigh: HowTo = {
  why: "What leaves a drying shell is water, so its weight says how dry it is.",
  steps: [
    "Put the scale on a firm bench, out of any draught.",
    "Set the hook or stand on it and press zero.",
    "Weigh the dry piece before the dip.",
    "Dip, drain, and weigh when the dripping has stopped.",
    "Stucco, brush off loose grains, and weigh again.",
    "While it dries, leave half an hour between two weighings.",
    "It is dry when two weights agree.",
  ],
  goesWrong: [
    "Grains fall off between two weighings: the shell seems drier than it is.",
    "Another hook or tag: all the weights are off by the difference.",
    "A coarse scale can’t see the last water. It should show a twentieth of the coat’s water.",
  ],
  sources: [
    "Dry at constant mass, two weighings compared: EN 1097-5 (from memory).",
    "A twentieth of the coat’s water: calculated from the error of a weighing.",
    practice,
  ],
};

const cup = (format: Format): HowTo => ({
  why: "The same cup, emptied the same way, shows whether today’s slurry is as thick as yesterday’s.",
  steps: [
    "Stir the slurry and let the foam settle.",
    "Look through the hole of the cup: it must be clean.",
    "Hold the cup under for a minute to take the slurry’s temperature.",
    "Lift it straight up. Start as the rim leaves the slurry.",
    `Hold it upright, no more than ${span(format, "15 cm", "6 in")} above the slurry.`,
    "Stop at the first break of the stream below the hole.",
    `Time it twice; a third time if they differ by over ${format.show("percent", apartShare)}.`,
    "Wash the cup at once. Never put wire through the hole.",
  ],
  goesWrong: [
    "Slurry dried in the hole: the reading is too thick.",
    "A hole worn wide by scouring: the reading is too thin.",
    "Two cups of the same number differ. Keep one cup for one bucket.",
    "Warm slurry runs faster. Log its temperature with the seconds.",
  ],
  sources: [
    "Dip cups, their spread and what they are for: ASTM D4212.",
    "The lift, the height over the slurry, start and stop: ASTM D4212 (from memory).",
    `The third time at ${format.show("percent", apartShare)}: judgement, inside the standard’s spread for one person.`,
    practice,
  ],
});

const hygrometer = (format: Format): HowTo => ({
  why: "A shell dries by the air that touches it, not by the air at the door.",
  steps: [
    "Hang it among the pieces, level with their middle.",
    "Keep it an arm’s length from wet shells, walls and windows.",
    "Keep it out of sun, lamps, heaters and the fan’s jet.",
    "Give it half an hour before the first reading.",
    "Log the air at each dip.",
    "Log it again when weather, heating or a fan changes.",
    `Once a year, check it over wet table salt: ${format.show("percent", 0.75)}.`,
  ],
  goesWrong: [
    "Close to a wet shell it reads too damp: the times come out too long.",
    "On an outside wall it reads the wall.",
    "In damp air, three percent too low makes the times about an eighth too short.",
  ],
  sources: [
    `Air over saturated table salt in a closed box, ${format.show("percent", 0.75)} at ${format.show("temp", 25)}: ASTM E104 (from memory).`,
    "Three percent at eighty: calculated with the app’s drying model.",
    practice,
  ],
});

const bars = (format: Format): HowTo => ({
  why: "Slurry, stucco, drying and firing all change the strength; only your own bars show yours.",
  steps: [
    `Dip a wax lath with the batch: ${span(format, "25 × 150 mm", "1 × 6 in")}.`,
    "Give it the same coats as the pieces.",
    "Grind off its edges and melt out the wax: two bars.",
    "Fire the bars with the pieces.",
    "Measure width b and thickness d at the middle.",
    `Lay each bar on two round rods, ${span(format, "100 mm", "4 in")} apart (L).`,
    "Hang a bucket at the middle. Pour in sand until it breaks.",
    "Weigh the bucket. Break five bars and enter the mean strength.",
  ],
  sum: `Strength = 3 F L ÷ (2 b d²). F is the weight of bucket and sand: ${span(format, "in newtons, 9.81 for a kilogram; with millimetres it comes out in MPa", "in pounds; with inches it comes out in psi")}.`,
  goesWrong: [
    "Some bars lie prime face up, some down: they don’t compare. Keep one face down.",
    "Rods that are not parallel twist the bar: it breaks too early.",
    "Sand thrown in breaks the bar by its shock. Pour slowly.",
    "Grinding dust and broken shell hold silica. Wear a mask and glasses.",
  ],
  sources: ["The sum: three-point bending of a beam, as in ASTM C1161 (from memory).", practice],
});

const caliper: HowTo = {
  why: "On a flat part, a shell twice as thick carries about four times the load.",
  steps: [
    "Choose the rim of the pour cup, or a dipped stick.",
    "Break a clean edge through every coat.",
    "Take off wax or plastic and brush off loose grains.",
    "Close the caliper square to the face, with light force.",
    "Measure three places; leave out lumps and drips.",
    "Enter the middle one of the three, and the place.",
  ],
  goesWrong: [
    "An inside corner reads thick: slurry gathers there.",
    "A sharp outer edge reads thin: slurry draws away from it.",
    "Jaws on a loose grain read one grain too much.",
  ],
  sources: [
    "Load of a flat part grows with thickness squared: bending of a plate.",
    "Thick inside corners, thin outer edges: common practice, no source.",
    practice,
  ],
};

const phone: HowTo = {
  why: "With slurry on both hands you can still log a coat as it is done.",
  steps: [
    "Clamp the phone at eye height, beside the bucket, above the splashes.",
    "Slip a thin clear bag over it; touch works through it.",
    "Plug it in. Tick “Keep the screen awake” in Settings.",
    "Turn up the volume and test what rings on this device.",
    "Pair the foot switch as a keyboard.",
    "Set it to send Enter or the space bar.",
    "Lay it where your foot rests, its cable out of the wet.",
    "On a dip screen press once: the big key acts.",
  ],
  goesWrong: [
    "A field is open and takes the press as typing. Leave the field first.",
    "A switch that went to sleep loses its first press. Press twice before you dip.",
    "Two quick presses count as one.",
  ],
  sources: ["The keys and the pause between presses: this app.", practice],
};

const backup: HowTo = {
  why: "The log is kept in this browser on this device, and nowhere else.",
  steps: [
    "Open Shop, then Settings, and find Backup.",
    "Choose “All” and press “Save a backup”.",
    "Pick a place off this device: a stick or another computer.",
    "Wait until the app says that the file was checked.",
    "Open that place and see that the file is there.",
    "On a second device, choose the file under “Restore or check”.",
    "Set “Remind me” to seven days.",
  ],
  goesWrong: [
    "The file stays on this phone: it is lost with the phone.",
    "“Without photos” leaves photos and 3D files behind.",
    "Clearing the browser’s data clears the log. The app can’t prevent it.",
  ],
  sources: ["How this app keeps and checks its log. The rest is judgement."],
};

const all: Readonly<Record<HowToId, (format: Format) => HowTo>> = {
  weigh: () => weigh,
  cup,
  hygrometer,
  bars,
  caliper: () => caliper,
  phone: () => phone,
  backup: () => backup,
};

/** What the page says, with its lengths as the reader's own tools show them. */
export const howToOf = (id: HowToId, format: Format): HowTo => all[id](format);
