import { catalogue, params, plural } from "./catalogue.ts";

export const refusals = catalogue("refusals", {
  "refusal.no-such-stream": "Not logged: it is not in this log.",
  "refusal.already-started": "Not logged: this has been started already.",
  "refusal.already-logged": params("Coat {number} is in the log already, {ago}."),
  "refusal.coat-out-of-turn": params(
    "Not logged: the next coat is number {expected}, not {found}. Another tab may have logged one.",
  ),
  "refusal.wrong-phase": params("Not logged: the piece is {part}. Allowed while it is {listed}."),
  "refusal.in-future": params("Not logged: {dayTime} has not come yet."),
  "refusal.before-start": params("Not logged: {dayTime} is before the start, {dayTime2}."),
  "refusal.out-of-order": params("Not logged: {dayTime} would put it {orderWords}."),
  "refusal.start-carries-entries": params("The start can't be deleted: {entriesFollow}. {instead}"),
  "refusal.entriesFollow": plural({ one: "an entry follows it", other: "{count} entries follow it" }),
  "refusal.start-carries-entries.archiveThePieceInstead": "Archive the piece instead.",
  "refusal.start-carries-entries.deleteThoseFirstOr": "Delete those first, or end it.",
  "refusal.not-started": "Not logged: it is planned but not started.",
  "refusal.already-ended": params("Not logged: this ended {dayTime}. If it went on, delete the end first."),
  "refusal.no-such-step": params("Not logged: the plan has no step “{part}”."),
  "refusal.uneven-readings": params(
    "Not logged: there are {counted} and {counted2} of {part}. The numbers must match.",
  ),
  "refusal.readings-not-rising": params(
    "Not logged: reading {place} is timed {secondsWords}{clause}. Times are whole seconds, each later than the last.",
  ),
  "refusal.readings-not-rising.theOneBeforeIt": params(", the one before it {secondsWords}"),
  "refusal.readings-too-long": params(
    "Not logged: the readings span {spanS}. One entry takes {mostS}; log the rest separately.",
  ),
  "refusal.out-of-range": params(
    "Not logged: {name} of {show} can't be right. It lies between {show2} and {show3}.",
  ),
  "refusal.missing": params("Not logged: {part} is missing."),
  "refusal.not-found": "That entry is not in this log.",
  "refusal.already-struck": "That entry has been deleted already.",
  "refusal.not-replaceable": "That entry can't be corrected. Delete it and log the right one.",
  "refusal.hold-without-reason": "Write a reason for each hold you override.",
  "refusal.hold-without-reason.some": plural({
    one: "Write a reason for each hold you override; one has none.",
    other: "Write a reason for each hold you override; {count} have none.",
  }),
  "order.outOfOrder": "out of order",
  "order.afterWhatFollowsIt": params("after what follows it, {say}"),
  "order.beforeWhatItFollows": params("before what it follows, {say}"),
  "order.outOfOrderBetween": params("out of order, between {say} and {say2}"),
  "seconds.secondPart": params("second {part}"),
  "seconds.withNoNumber": "with no number",
  "listed.listOrPart": params("{list} or {part}"),
});
