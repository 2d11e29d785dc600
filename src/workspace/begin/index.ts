/** What begins a box and its cycles: answers, lists and photos in, planned files out. */
export { currenciesMeant, currencyName } from '../../content/currency-names.ts';
export { checkAnswer, dayNear, monthNear } from './check-answer.ts';
export { knownBox } from './known-box.ts';
export { fieldNamed, listThings } from './list.ts';
export { matchPhotos } from './match-photos.ts';
export { bareThing, planBox, planCycle, planNextThing, slugOf } from './plan-records.ts';
export { proposeCaution } from './propose-caution.ts';
export {
  cycleBefore,
  monthInWords,
  nextMonth,
  proposeReveal,
  proposeShipped,
  todayIn,
} from './propose-dates.ts';
export { proposeKinds } from './propose-kind.ts';
export { addPictures, standingCycle } from './standing-cycle.ts';
