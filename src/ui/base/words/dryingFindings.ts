import { catalogue, params } from "./catalogue.ts";

export const dryingFindings = catalogue("drying-findings", {
  "lastTitle.lastCoatNotDry": "Last coat not dry for fire",
  "outerFilm.itFeltDryA": " It felt dry: a hand feels the outer film only.",
  "lastCoat.hours.says": params("{shell}: {hours} since the {kind} dip end {dryAt}.{outerFilm}"),
  "lastCoat.hours.remedy": params("Wait, or weigh it. {weigh}"),
  "lastCoat.air.says": params("{when} (slowest place: {place}).{outerFilm}"),
  "lastCoat.air.says.byTheAirIt": params("By the air it is dry {dryAt} at the latest"),
  "lastCoat.air.says.byTheAirItAgain": "By the air it takes more than two weeks",
  "lastCoat.air.remedy": params("Wait, or weigh it. {weigh}"),
  "lastCoat.damp-air.says": params(
    "The room is above {damp} until {dryAt}: the shell keeps water in that air.",
  ),
  "lastCoat.damp-air.says.theRoomStaysAbove": params(
    "The room stays above {damp}: the shell keeps water in that air.",
  ),
  "lastCoat.damp-air.remedy": "Dry the room's air, log a new reading, then wait.",
  "lastCoat.air-too-damp.says": params("The room's air is too damp to dry coat {coat}."),
  "lastCoat.air-too-damp.remedy": "Dry the room's air, log a new reading, then wait.",
  "lastCoat.condensing.says": params("Water condenses on coat {coat}."),
  "lastCoat.condensing.remedy": "Warm the shell or dry the room's air, log a new reading, then wait.",
  "lastCoat.frost.says": params("The room is too cold: coat {coat} would freeze before it is dry."),
  "lastCoat.frost.remedy": "Move it to a warmer room, or heat this one, and log a reading there.",
  "lastCoat.unknown.title": "Last coat not known to be dry for fire",
  "lastCoat.unknown.says": params(
    "No room reading goes with coat {coat} and nothing was measured.{outerFilm}",
  ),
  "lastCoat.unknown.remedy": "Log the room's temperature and humidity, or weigh it twice.",
  "lastCoat.burnout-damp.title": "Burnout began on a damp shell",
  "lastCoat.burnout-damp.says": params("Coat {coat} was not dry when the burnout was started."),
  "lastCoat.burnout-damp.remedy":
    "Keep clear of the kiln's door. When it is cold, look over the whole shell for spalls, cracks and lifted flakes, and log each.",
  "lastCoat.burnout-unknown.title": "Burnout began, dryness not known",
  "lastCoat.burnout-unknown.says": params(
    "The log can't tell whether coat {coat} was dry when the burnout was started.",
  ),
  "lastCoat.burnout-unknown.remedy":
    "When it is cold, look over the whole shell for spalls, cracks and lifted flakes, and log each.",
  "dampAir.drying.title": "Air too damp to dry a coat",
  "dampAir.drying.says": params("The room is at {rh} humidity. Above {limit} a coat stays wet."),
  "dampAir.drying.remedy": "Warm the room or run a dryer, keep it closed, then log a new reading.",
  "dampAir.final.title": "Air too damp for the final drying",
  "dampAir.final.says": params(
    "The room is at {rh} humidity. Above {limit} the shell keeps water in its pores.",
  ),
  "dampAir.final.remedy":
    "Keep it out of the kiln. Dry the air, log a new reading, then let the shell dry and weigh it.",
  "dampAir.final-caution.title": "Damp air for the final drying",
  "dampAir.final-caution.says": params(
    "The room is at {rh} humidity. Above {limit} a shell may keep some water.",
  ),
  "dampAir.final-caution.remedy": params("Finish in drier air if you can. {weigh}"),
  "frost.froze.title": "Coat may have frozen while wet",
  "frost.froze.says": params(
    "Coat {coat} may have frozen while wet: its wet surface fell to {surfaceC}, from {at}. Frozen slurry has no strength.",
  ),
  "frost.froze.remedy":
    "Thaw it in a warm room and look for flaking and lifted edges. Strip what lifts, or recoat.",
  "frost.will-freeze.title": "Frost before this coat is dry",
  "frost.will-freeze.says": params(
    "The room's air will take the wet surface of coat {coat} to {surfaceC}, from {at}. A slurry that freezes wet has no strength.",
  ),
  "frost.will-freeze.remedy": "Move the piece to a warmer room, or heat this one, and log a reading there.",
  "oldReading.old.title": "Room reading is old",
  "oldReading.old.says": params(
    "The last one is {ageH} old and a coat is drying, so its drying time may be off.",
  ),
  "oldReading.old.remedy": "Log temperature and humidity.",
  "oldReading.none.title": "No room reading",
  "oldReading.none.says": "A coat is drying, and the room's temperature and humidity are not known.",
  "oldReading.none.remedy": "Log temperature, humidity and how the air moves.",
});
