import { catalogue, params } from "./catalogue.ts";

export const kindsTexts = catalogue("fire-findings/kinds", {
  hairline: "Hairline crack",
  open: "Open crack",
  chip: "Chip",
  lift: "Lifted coat",
});

export const fireFindings = catalogue("fire-findings", {
  "place.whereWhere": params("Where: {where}. "),
  "crack.open.title": params("{crackTitle}, not repaired"),
  "crack.open.says": params("{place}Metal runs out through it."),
  "crack.open.remedy":
    "Repair it with slurry and stucco. If the shell was fired, wire it too. Coat over it, let it dry, and log the repair.",
  "crack.patch-not-dry.title": params("{crackTitle}, repair not yet dry"),
  "crack.patch-not-dry.says": params(
    "{place}Repaired {ageH} ago. Nothing logged since shows that the repair is dry; a dry outer coat does not.",
  ),
  "crack.patch-not-dry.remedy":
    "When the repair is dry right through, tap “Repair is dry”. Or coat over it and let that coat dry.",
  "crack.trimmed-off.title": params("{crackTitle} in a part that is trimmed off"),
  "crack.trimmed-off.says": params("{place}It does not hold the piece up."),
  "crack.trimmed-off.remedy": "After trimming, check that no crack runs on into the shell.",
  "wire.no-wire.title": "Repaired after burnout, no wire",
  "wire.no-wire.says": params(
    "{place}The repair may open again as it heats. Wire holds the pieces together.",
  ),
  "wire.no-wire.remedy": "Wrap wire over the repair and coat over the wire.",
  "fired.firedToPeakCFor": params(
    "Fired to {peakC} for {holdMin}; at least {limitC} for {limitMin} is needed.",
  ),
  "fired.cool.title": "Fired too cool",
  "fired.cool.says": params("{fired} Its strength counts at half."),
  "fired.cool.remedy": "Fire it again, hotter, before the pour.",
  "fired.short.title": "Fired too short",
  "fired.short.says": params("{fired} Its strength counts at half."),
  "fired.short.remedy": "Fire it again, longer, before the pour.",
  "fired.not-bonded.title": "Shell not fired",
  "fired.not-bonded.says": params("{fired} The silica has not bonded: the shell is at its weakest."),
  "fired.not-bonded.remedy": "No metal in it. Fire it again, then log peak and time.",
  "fired.not-logged.title": "No firing in the log",
  "fired.not-logged.says":
    "No firing is logged since the last coat or repair, so the shell's strength is not known.",
  "fired.not-logged.remedy": "Log the firing with its peak and hold, or fire the shell.",
  "misrunRemedy.lookForMisrunsAnd":
    "Look for misruns and cold shuts. Next time preheat hotter, or pour sooner.",
  "coldShell.too-long.title": "Shell was long out of the kiln",
  "coldShell.too-long.says": params(
    "{outMin} from kiln to metal. A wall of {wallMm} that left at {leftC} keeps {leastC} for {limitMin} in still air.",
  ),
  "coldShell.too-long.remedy": "Look for misruns and cold shuts. Next time have the melt ready first.",
  "coldShell.too-long-if.title": "Shell may have been long out of the kiln",
  "coldShell.too-long-if.says": params(
    "{outMin} from kiln to metal. A shell of {wallMm} with a section of {sectionMm} has {limitMin} from {leftC}. Starting values stand in for what is not logged.",
  ),
  "coldShell.too-long-if.remedy":
    "Log the thinnest section and the shell's heat, and the minutes are right for your shell.",
  "coldShell.too-cold.title": "Shell was cold at the pour",
  "coldShell.too-cold.says": params(
    "The shell was at {shellC}; for a section of {sectionMm} in this metal it is usually {leastC} or more.",
  ),
  "coldShell.cold-if-thin.title": "Shell was cold for thin work",
  "coldShell.cold-if-thin.says": params(
    "The shell was at {shellC}. The thinnest section isn't in the log; at {sectionMm} this metal usually has {leastC} or more.",
  ),
  "coldShell.preheat-cold.title": "Preheat is cool for this metal",
  "coldShell.preheat-cold.says": params(
    "The shell is at {shellC}; for a section of {sectionMm} in this metal it is usually {leastC} or more.",
  ),
  "coldShell.preheat-cold.remedy": "Heat it further before metal, thin work hotter still.",
  "coldShell.preheat-cold-if-thin.title": "Preheat is cool for thin work",
  "coldShell.preheat-cold-if-thin.says": params(
    "The shell is at {shellC}. The thinnest section isn't in the log; at {sectionMm} this metal usually has {leastC} or more.",
  ),
  "coldShell.preheat-cold-if-thin.remedy": "Measure the thinnest section, or heat the shell further.",
  "coldShell.not-known.title": "Shell temperature at the pour not known",
  "coldShell.not-known.says":
    "Neither the shell's temperature nor the minutes out of the kiln are in the log.",
  "coldShell.not-known.remedy":
    "Correct the pour if you remember. Next time start the clock when the kiln opens.",
});
