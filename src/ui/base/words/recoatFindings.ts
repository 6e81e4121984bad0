import { catalogue, params } from "./catalogue.ts";

export const recoatFindings = catalogue("recoat-findings", {
  "title.coatCoatHowWhen": params("Coat {coat} {how} when you dipped coat {over}"),
  "title.coatsHowUnderThe": params("{coats} {how} under the next coat"),
  "damp.wasDamp": "was damp",
  "damp.wereDamp": "were damp",
  "hung.theDampestWasCoat": params("The dampest was coat {coat}: it"),
  "hung.andNeededAboutNeededH": params(" and needed about {neededH}"),
  "hung.whichHungStoodHneededThen": params("{which} hung {stoodH}{needed}. {saidThen}"),
  "hung.aboutLeftShareOfIts": params("; about {leftShare} of its water was left"),
  "hung.whichHungStoodHneededleft": params("{which} hung {stoodH}{needed}{left}."),
  "accepted.acceptedAtTheDip": " Accepted at the dip.",
  "accepted.acceptedAtTheDipAgain": params(" Accepted at the dip: {acceptedCoats}."),
  "halved.thatWeakensItIt": params(" That weakens it: it counts with {usedMPa} in place of {fullMPa}."),
  "perhapsHung.theNextCoat": "the next coat",
  "perhapsHung.coatCoat": params("Coat {coat}"),
  "perhapsHung.coatOver": params("coat {over}"),
  "perhapsHung.whichHungStoodHBefore": params("{which} hung {stoodH} before {over}."),
  "perhapsHung.whichHungStoodHBeforeAgain": params(
    "{which} hung {stoodH} before {over}; about {neededH} was needed.",
  ),
  "perhapsHung.whichHungStoodHBeforeAgainAgain": params(
    "{which} hung {stoodH} before {over}; about {neededH} is likely, but it can take longer.",
  ),
  "recoated.wet.remedy": params("No more coats and no fire yet. Let the shell dry through. {weigh}"),
  "recoated.maybe.title": "may have been damp",
  "recoated.maybe.remedy": params("Give the next coat more time. {weigh}"),
  "recoated.weak.title": params("Weak bond under coat {over}"),
  "recoated.weak.title.weakBondsOverCoats": params("Weak bonds over {coats}"),
  "recoated.weak.says": params("{hung} Fire has driven the water out, but the bond stays weak.{halved}"),
  "recoated.weak.remedy":
    "Before the pour, look for flakes and tap for hollow spots. More coats or packed sand back it up.",
  "recoated.dried-since.says": params(
    "{hung}{accepted} The shell has dried since; the bond may be weak.{halved}",
  ),
  "recoated.dried-since.remedy": "Before burnout, tap the shell for hollow spots and look for lifting.",
  "recoated.unknown.title": "Dryness between coats not known",
  "recoated.unknown.says": params(
    "{coats}: no room reading, touch or weight was logged before the next coat.",
  ),
  "recoated.unknown.remedy": "Log temperature and humidity at each dip.",
});
