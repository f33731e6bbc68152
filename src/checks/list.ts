import type { Check } from './check.ts'
import { ingressRating } from './box/ingress-rating.ts'
import { lidNotHeld } from './box/lid-not-held.ts'
import { loadRating } from './box/load-rating.ts'
import { lockWithoutKey } from './box/lock-without-key.ts'
import { mountingAgainstSheet } from './box/mounting-against-sheet.ts'
import { noPhoto } from './box/no-photo.ts'
import { noTies } from './box/no-ties.ts'
import { attachmentNotReadable } from './closeout/attachment-not-readable.ts'
import { attachmentNotThere } from './closeout/attachment-not-there.ts'
import { photoNotAPicture } from './box/photo-not-a-picture.ts'
import { photoNotThere } from './box/photo-not-there.ts'
import { backflowRegister } from './closeout/backflow-register.ts'
import { closeoutContacts } from './closeout/contacts.ts'
import { closeoutEstablishment } from './closeout/establishment.ts'
import { noLocation } from './closeout/no-location.ts'
import { numberSkipped } from './closeout/number-skipped.ts'
import { closeoutPhotographs } from './closeout/photographs.ts'
import { recordDrawingCheck } from './closeout/record-drawing.ts'
import { closeoutSignOffs } from './closeout/sign-offs.ts'
import { closeoutSpares } from './closeout/spares.ts'
import { closeoutTestReports } from './closeout/test-reports.ts'
import { closeoutTraining } from './closeout/training.ts'
import { warrantyTerms } from './closeout/warranty-terms.ts'
import { warrantyVisits } from './closeout/warranty-visits.ts'
import { warrantyStart } from './closeout/warranty-start.ts'
import { daysNotOffered } from './controller/days-not-offered.ts'
import { noPlaceToStand } from './controller/no-place-to-stand.ts'
import { notOnItsSheet } from './controller/not-on-its-sheet.ts'
import { programsExceeded } from './controller/programs-exceeded.ts'
import { runTimeOutOfRange } from './controller/run-time-out-of-range.ts'
import { settingNotOffered } from './controller/setting-not-offered.ts'
import { startTimesExceeded } from './controller/start-times-exceeded.ts'
import { startsADayExceeded } from './controller/starts-a-day-exceeded.ts'
import { stationShared } from './controller/station-shared.ts'
import { tooManyStations } from './controller/too-many-stations.ts'
import { danglingReference } from './file/dangling-reference.ts'
import { fileDate } from './file/date.ts'
import { decimalComma } from './file/decimal-comma.ts'
import { duplicateId } from './file/duplicate-id.ts'
import { duplicateKey } from './file/duplicate-key.ts'
import { fileFrontMatter } from './file/front-matter.ts'
import { missingKey } from './file/missing-key.ts'
import { notAVisit } from './file/not-a-visit.ts'
import { notOneOf } from './file/not-one-of.ts'
import { notUnderstood } from './file/not-understood.ts'
import { outOfRange } from './file/out-of-range.ts'
import { filePlanFile } from './file/plan-file.ts'
import { fileRegister } from './file/register.ts'
import { siteCopy } from './file/site-copy.ts'
import { fileTab } from './file/tab.ts'
import { fileTime } from './file/time.ts'
import { fileTooLarge } from './file/too-large.ts'
import { unitMissing } from './file/unit-missing.ts'
import { unitUnknown } from './file/unit-unknown.ts'
import { unitUnlikely } from './file/unit-unlikely.ts'
import { unitWrongKind } from './file/unit-wrong-kind.ts'
import { unknownKey } from './file/unknown-key.ts'
import { visitDay } from './file/visit-day.ts'
import { visitTwice } from './file/visit-twice.ts'
import { wrongShape } from './file/wrong-shape.ts'
import { fileYaml } from './file/yaml.ts'
import { batteryDueSoon } from './power/battery-due-soon.ts'
import { batteryNoDate } from './power/battery-no-date.ts'
import { batteryOverdue } from './power/battery-overdue.ts'
import { cellMismatch } from './power/cell-mismatch.ts'
import { chargeShortensLife } from './power/charge-shortens-life.ts'
import { closesNotWhenEmpty } from './power/closes-not-when-empty.ts'
import { coldShortensLife } from './power/cold-shortens-life.ts'
import { lowUnderLoad } from './power/low-under-load.ts'
import { pulsesShortenLife } from './power/pulses-shorten-life.ts'
import { seasonNotCovered } from './power/season-not-covered.ts'
import { solarDoubtful } from './power/solar-doubtful.ts'
import { privateWordPublic } from './privacy/private-word-public.ts'
import { backflowOverdue } from './safety/backflow-overdue.ts'
import { blowOutPressure } from './safety/blow-out-pressure.ts'
import { boxHazards } from './safety/box-hazards.ts'
import { chemicalInjection } from './safety/chemical-injection.ts'
import { coverShallow } from './safety/cover-shallow.ts'
import { fallEdge } from './safety/fall-edge.ts'
import { mainsPresent } from './safety/mains-present.ts'
import { reclaimedSigns } from './safety/reclaimed-signs.ts'
import { storedPressure } from './safety/stored-pressure.ts'
import { trafficControl } from './safety/traffic-control.ts'
import { trenchEgress } from './safety/trench-egress.ts'
import { trenchProtection } from './safety/trench-protection.ts'
import { crossesMidnight } from './schedule/crosses-midnight.ts'
import { dayNotAllowed } from './schedule/day-not-allowed.ts'
import { hoursNotAllowed } from './schedule/hours-not-allowed.ts'
import { intervalAgainstDates } from './schedule/interval-against-dates.ts'
import { oddEvenTurnover } from './schedule/odd-even-turnover.ts'
import { outsideTheWindow } from './schedule/outside-window.ts'
import { overDailyCap } from './schedule/over-daily-cap.ts'
import { ruleNotJudged } from './schedule/rule-not-judged.ts'
import { startsOverlap } from './schedule/starts-overlap.ts'
import { clockDrift } from './supply/clock-drift.ts'
import { lowHeadDrainage } from './supply/low-head-drainage.ts'
import { overCapacity } from './supply/over-capacity.ts'
import { pressureLow } from './supply/pressure-low.ts'
import { velocityHigh } from './supply/velocity-high.ts'
import { tagDuplicate } from './tag/duplicate.ts'
import { tagIssuedButGone } from './tag/issued-but-gone.ts'
import { tagMalformed } from './tag/malformed.ts'
import { tagMissing } from './tag/missing.ts'
import { tagNoRegister } from './tag/no-register.ts'
import { tagSiteGone } from './tag/site-gone.ts'
import { tagUnregistered } from './tag/unregistered.ts'
import { acCoil } from './valve/ac-coil.ts'
import { answersWrong } from './valve/answers-wrong.ts'
import { coilKindUnknown } from './valve/coil-kind-unknown.ts'
import { coilResistanceOff } from './valve/coil-resistance-off.ts'
import { flowBelowMinimum } from './valve/flow-below-minimum.ts'
import { retrofitNotChecked } from './valve/retrofit-not-checked.ts'
import { climateTwice } from './water/climate-twice.ts'
import { cycleOverIntake } from './water/cycle-over-intake.ts'
import { efficiencyAndUniformity } from './water/efficiency-and-uniformity.ts'
import { needExceedsWindow } from './water/need-exceeds-window.ts'
import { needNotComputed } from './water/need-not-computed.ts'
import { waterOverCapacity } from './water/over-capacity.ts'
import { meterOffProgram } from './water/meter-off-program.ts'
import { overAllowance } from './water/over-allowance.ts'
import { overNeed } from './water/over-need.ts'
import { rainIndoors } from './water/rain-indoors.ts'
import { underNeed } from './water/under-need.ts'
import { coilVoltageLow } from './wire/coil-voltage-low.ts'
import { loopOverLimit } from './wire/loop-over-limit.ts'
import { parallelValves } from './wire/parallel-valves.ts'
import { readingDrifts } from './wire/reading-drifts.ts'
import { readingOff } from './wire/reading-off.ts'
import { runOverLength } from './wire/run-over-length.ts'
import { sizeAmbiguous } from './wire/size-ambiguous.ts'
import { sizeDisagrees } from './wire/size-disagrees.ts'
import { spliceWithoutBox } from './wire/splice-without-box.ts'

/** Every check, sorted by code. A test sees to the order, to the header of each, and to the page of cases beside it. */
export const CHECKS: readonly Check[] = [
  ingressRating,
  lidNotHeld,
  loadRating,
  lockWithoutKey,
  mountingAgainstSheet,
  noPhoto,
  noTies,
  photoNotAPicture,
  photoNotThere,
  attachmentNotReadable,
  attachmentNotThere,
  backflowRegister,
  closeoutContacts,
  closeoutEstablishment,
  noLocation,
  numberSkipped,
  closeoutPhotographs,
  recordDrawingCheck,
  closeoutSignOffs,
  closeoutSpares,
  closeoutTestReports,
  closeoutTraining,
  warrantyStart,
  warrantyTerms,
  warrantyVisits,
  daysNotOffered,
  noPlaceToStand,
  notOnItsSheet,
  programsExceeded,
  runTimeOutOfRange,
  settingNotOffered,
  startTimesExceeded,
  startsADayExceeded,
  stationShared,
  tooManyStations,
  danglingReference,
  fileDate,
  decimalComma,
  duplicateId,
  duplicateKey,
  fileFrontMatter,
  missingKey,
  notAVisit,
  notOneOf,
  notUnderstood,
  outOfRange,
  filePlanFile,
  fileRegister,
  siteCopy,
  fileTab,
  fileTime,
  fileTooLarge,
  unitMissing,
  unitUnknown,
  unitUnlikely,
  unitWrongKind,
  unknownKey,
  visitDay,
  visitTwice,
  wrongShape,
  fileYaml,
  batteryDueSoon,
  batteryNoDate,
  batteryOverdue,
  cellMismatch,
  chargeShortensLife,
  closesNotWhenEmpty,
  coldShortensLife,
  lowUnderLoad,
  pulsesShortenLife,
  seasonNotCovered,
  solarDoubtful,
  privateWordPublic,
  backflowOverdue,
  blowOutPressure,
  boxHazards,
  chemicalInjection,
  coverShallow,
  fallEdge,
  mainsPresent,
  reclaimedSigns,
  storedPressure,
  trafficControl,
  trenchEgress,
  trenchProtection,
  crossesMidnight,
  dayNotAllowed,
  hoursNotAllowed,
  intervalAgainstDates,
  oddEvenTurnover,
  outsideTheWindow,
  overDailyCap,
  ruleNotJudged,
  startsOverlap,
  clockDrift,
  lowHeadDrainage,
  overCapacity,
  pressureLow,
  velocityHigh,
  tagDuplicate,
  tagIssuedButGone,
  tagMalformed,
  tagMissing,
  tagNoRegister,
  tagSiteGone,
  tagUnregistered,
  acCoil,
  answersWrong,
  coilKindUnknown,
  coilResistanceOff,
  flowBelowMinimum,
  retrofitNotChecked,
  climateTwice,
  cycleOverIntake,
  efficiencyAndUniformity,
  meterOffProgram,
  needExceedsWindow,
  needNotComputed,
  overAllowance,
  waterOverCapacity,
  overNeed,
  rainIndoors,
  underNeed,
  coilVoltageLow,
  loopOverLimit,
  parallelValves,
  readingDrifts,
  readingOff,
  runOverLength,
  sizeAmbiguous,
  sizeDisagrees,
  spliceWithoutBox
]
