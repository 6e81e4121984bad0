import { catalogue, params } from "./catalogue.ts";

export const saidThen = catalogue("said-then", {
  "saidThen.saidThenThenWords": params("Said then: {thenWords}."),
  "saidThen.byNewerCalculations": ", by newer calculations",
  "saidThen.thenWithWhyWordsnewerAnewWords": params("{saidThen} With {whyWords}{newer}: {anewWords}."),
  "then.drynessNotKnownNo": "dryness not known, no room reading",
  "then.dryByTheAir": "dry by the air, minimum drying time not over",
  "then.notDry": "not dry",
  "then.lowToHigh": params(" ({low} to {high})"),
  "then.stateShareOfIts": params("{state}, {share} of its water left{band}"),
  "anew.notKnown": "not known",
  "anew.leftShareOfItsWater": params("{leftShare} of its water left"),
  "oneWhy.theDipsTimeCorrectedclause": params("the dip's time corrected{clause}"),
  "oneWhy.toSoonTime": params(" to {soonTime}"),
  "oneWhy.added": params("{things} of that time logged later"),
  "oneWhy.added.theThingLoggedLater": params("the {thing} logged later for {soonTime}"),
  "oneWhy.struck": params("{things} of that time deleted since"),
  "oneWhy.changed": params("{thing}s of that time changed since"),
});
